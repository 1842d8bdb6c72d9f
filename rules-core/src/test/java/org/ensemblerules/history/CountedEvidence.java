package org.ensemblerules.history;

import java.time.LocalDate;
import java.util.function.Consumer;
import org.ensemblerules.gear.Element;

/** Evidence whose judgements are told as they are made. */
public final class CountedEvidence {
  private CountedEvidence() {}

  /**
   * Decides what of a history counts.
   *
   * @param tables by what it is decided
   * @param element the element
   * @param history what happened to it
   * @param asOf the day asked about
   * @param judged told of each event that is judged, each time
   * @return the evidence
   */
  public static Evidence of(
      EvidenceTables tables,
      Element element,
      History history,
      LocalDate asOf,
      Consumer<Event> judged) {
    EventJudge judge = new EventJudge(tables, element, asOf);
    Judging counted =
        event -> {
          judged.accept(event);
          return judge.judge(event);
        };
    return Evidence.of(counted, tables, element, history, asOf);
  }
}
