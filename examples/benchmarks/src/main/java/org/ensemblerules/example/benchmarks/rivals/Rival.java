package org.ensemblerules.example.benchmarks.rivals;

/**
 * One way to answer the question.
 *
 * @param <I> what it must be handed
 */
public interface Rival<I> extends AutoCloseable {
  /**
   * Builds what it must be handed.
   *
   * @param asked the question; not null
   * @return the input; never null
   */
  I input(Asked asked);

  /**
   * Answers.
   *
   * @param input the input; not null
   * @return the key of the row that says what is called for; empty if none covers it; never null
   */
  String answer(I input);

  /** Lets go of what it holds. */
  @Override
  default void close() {}
}
