package org.ensemblerules.history;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.ensemblerules.effect.Permission;
import org.ensemblerules.gear.Element;
import org.ensemblerules.gear.LayerKind;

/** Evidence whose decisions are told as they are made. */
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
   * @param held told of each event that is held against what findings call for, each time
   * @return the evidence
   */
  public static Evidence of(
      EvidenceTables tables,
      Element element,
      History history,
      LocalDate asOf,
      Consumer<Event> judged,
      Consumer<Event> held) {
    EventJudge judge = new EventJudge(tables, element, history, asOf);
    Judging counted =
        new Judging() {
          @Override
          public List<Optional<LayerKind>> labeledLayers() {
            return judge.labeledLayers();
          }

          @Override
          public Optional<Judgment> judge(Event event) {
            judged.accept(event);
            return judge.judge(event);
          }

          @Override
          public Optional<Permission.Permitted> onTheWordOf(Event event) {
            return judge.onTheWordOf(event);
          }

          @Override
          public Optional<Attempt> hold(Event event, Asked asked, Evidence evidence) {
            held.accept(event);
            return judge.hold(event, asked, evidence);
          }
        };
    return Evidence.of(counted, tables, element, history, asOf);
  }
}
