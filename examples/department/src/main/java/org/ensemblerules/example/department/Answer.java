package org.ensemblerules.example.department;

import java.util.function.Consumer;
import java.util.function.Supplier;
import java.util.stream.Collector;
import org.ensemblerules.issue.JudgedElement;

/** A question whose answer grows as elements come, so that one reading serves several. */
final class Answer<R> implements Consumer<JudgedElement>, Supplier<R> {
  private final Consumer<JudgedElement> adding;
  private final Supplier<R> finishing;

  private Answer(Consumer<JudgedElement> adding, Supplier<R> finishing) {
    this.adding = adding;
    this.finishing = finishing;
  }

  static <A, R> Answer<R> of(Collector<JudgedElement, A, R> question) {
    A so = question.supplier().get();
    return new Answer<>(
        judged -> question.accumulator().accept(so, judged), () -> question.finisher().apply(so));
  }

  @Override
  public void accept(JudgedElement judged) {
    adding.accept(judged);
  }

  @Override
  public R get() {
    return finishing.get();
  }
}
