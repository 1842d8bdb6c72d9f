package org.ensemblerules.example.benchmarks.rivals;

/** What the written program answers to. */
public interface SwitchCode {
  /**
   * Answers.
   *
   * @param place the number of the place
   * @param defect the number of the defect
   * @param by the number of that by which the size is told
   * @param size the size
   * @return the key of the row; empty if none covers it; never null
   */
  String answer(int place, int defect, int by, long size);
}
