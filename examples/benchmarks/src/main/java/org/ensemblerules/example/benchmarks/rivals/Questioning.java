package org.ensemblerules.example.benchmarks.rivals;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;

/**
 * Puts questions to a rival one after another, in an order that is mixed and always the same.
 *
 * @param <I> what the rival must be handed
 */
public final class Questioning<I> implements AutoCloseable {
  private final Rival<I> rival;
  private final List<Asked> questions;
  private final List<I> inputs = new ArrayList<>();
  private int next;

  private Questioning(Rival<I> rival, List<Asked> questions) {
    this.rival = rival;
    this.questions = new ArrayList<>(questions);
    Collections.shuffle(this.questions, new Random(1));
    this.questions.forEach(asked -> inputs.add(rival.input(asked)));
  }

  /**
   * Prepares the inputs.
   *
   * @param rival who answers; not null
   * @param questions at least one; not null
   * @param <I> what the rival must be handed
   * @return the questioning; never null
   */
  public static <I> Questioning<I> of(Rival<I> rival, List<Asked> questions) {
    return new Questioning<>(rival, questions);
  }

  /**
   * Builds the input of the next question and answers it.
   *
   * @return the answer; never null
   */
  public String ask() {
    return rival.answer(rival.input(questions.get(turn())));
  }

  /**
   * Answers the next question, whose input was built before.
   *
   * @return the answer; never null
   */
  public String answer() {
    return rival.answer(inputs.get(turn()));
  }

  private int turn() {
    int turn = next;
    next = turn + 1 == questions.size() ? 0 : turn + 1;
    return turn;
  }

  @Override
  public void close() {
    rival.close();
  }
}
