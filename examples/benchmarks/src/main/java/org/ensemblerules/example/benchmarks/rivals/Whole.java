package org.ensemblerules.example.benchmarks.rivals;

/**
 * The question in whole numbers.
 *
 * @param place the number of the place
 * @param defect the number of the defect
 * @param by the number of that by which its size is told
 * @param size the size
 */
public record Whole(int place, int defect, int by, long size) {
  static Whole of(Asked asked) {
    return new Whole(
        asked.placeNumber(),
        asked.defect().ordinal(),
        asked.told().by().ordinal(),
        asked.told().whole());
  }
}
