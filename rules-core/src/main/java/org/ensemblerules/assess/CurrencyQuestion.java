package org.ensemblerules.assess;

import java.time.LocalDate;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import org.ensemblerules.effect.Check;
import org.ensemblerules.effect.Effect;
import org.ensemblerules.effect.Scope;
import org.ensemblerules.gear.Part;
import org.ensemblerules.gear.Site;
import org.ensemblerules.history.Event;
import org.ensemblerules.history.ExposureEvent;
import org.ensemblerules.history.Judgment;
import org.ensemblerules.history.LookEvent;
import org.ensemblerules.history.Moment;
import org.ensemblerules.history.UseEvent;
import org.ensemblerules.inspection.InspectionKind;
import org.ensemblerules.inspection.IntervalRow;
import org.ensemblerules.inspection.IntervalTable;
import org.ensemblerules.inspection.Occasion;
import org.ensemblerules.source.Row;
import org.ensemblerules.verdict.Reason;
import org.ensemblerules.verdict.ReasonKind;

/** Are the inspections that must be current current, and was it inspected since it was used? */
final class CurrencyQuestion {
  private CurrencyQuestion() {}

  static void ask(CaseFile file, Consumer<Reason> reasons) {
    current(file, InspectionKind.ADVANCED, true, reasons);
    current(file, InspectionKind.COMPLETE_LINER, false, reasons);
    if (!CareQuestion.neverReturns(file)) {
      usedSince(file, reasons);
    }
  }

  private static void current(
      CaseFile file, InspectionKind kind, boolean always, Consumer<Reason> reasons) {
    List<IntervalRow> rows = file.tables().intervals().rows(kind, file.element());
    boolean criteria =
        !file.tables()
            .criteria()
            .required(kind, file.element().kind(), file.element().use())
            .isEmpty();
    // Rows beside the table add to what it asks; they do not fill its gap.
    boolean ruled = file.tables().intervals().row(kind, file.element()).isPresent();
    if (!ruled && (always || criteria)) {
      reasons.accept(
          reason(
              ReasonKind.NO_RULE,
              Optional.empty(),
              "no row says how often " + kind + " inspection is due",
              new Effect.Evaluate(Check.EXPERT_EVALUATION, Scope.ELEMENT)));
    }
    Optional<LocalDate> last = last(file, kind);
    for (IntervalRow row : rows) {
      current(file, row, last).ifPresent(reasons);
    }
  }

  /** Whether rows say how often it is due, and none of them that it is overdue. */
  static boolean isInTime(CaseFile file, InspectionKind kind) {
    List<IntervalRow> rows = file.tables().intervals().rows(kind, file.element());
    Optional<LocalDate> last = last(file, kind);
    return !rows.isEmpty()
        && rows.stream()
            .allMatch(row -> isInTime(file, IntervalTable.dueBy(row, file.element(), last)));
  }

  private static boolean isInTime(CaseFile file, Optional<LocalDate> dueBy) {
    return dueBy.isPresent() && !file.asOf().isAfter(dueBy.get());
  }

  private static Optional<Reason> current(
      CaseFile file, IntervalRow row, Optional<LocalDate> last) {
    Optional<LocalDate> dueBy = IntervalTable.dueBy(row, file.element(), last);
    if (isInTime(file, dueBy)) {
      return Optional.empty();
    }
    return Optional.of(
        reason(
            ReasonKind.INSPECTION_NOT_CURRENT,
            Optional.of(row),
            row.inspection()
                + " inspection: "
                + last.map(day -> "last one that counts " + day).orElse("none on record counts")
                + dueBy
                    .map(day -> ", due by " + day)
                    .orElse(", and nobody knows since when it has been in service")
                + notCounting(file, row.inspection()),
            new Effect.Evaluate(row.inspection().check(), Scope.ELEMENT)));
  }

  /** The day of the last inspection that counts; an imprecise one discharges at its earliest. */
  private static Optional<LocalDate> last(CaseFile file, InspectionKind kind) {
    return file.evidence()
        .inspections()
        .last(inspection -> inspection.kind() == kind)
        .flatMap(when -> when.date().earliest());
  }

  private static String notCounting(CaseFile file, InspectionKind kind) {
    List<Judgment> since =
        file.evidence()
            .notCounting(
                event ->
                    event instanceof LookEvent.Inspected done && done.inspection().kind() == kind);
    return Judgment.text(since).map(text -> "; " + text).orElse("");
  }

  /** The newest that was made, if not before, and that does not count. */
  private static String notCounting(Event used, Optional<Judgment> newest) {
    return newest
        .filter(each -> !used.when().certainlyAfter(each.event().when()))
        .flatMap(each -> Judgment.text(List.of(each)))
        .map(text -> "; " + text)
        .orElse("");
  }

  private static void usedSince(CaseFile file, Consumer<Reason> reasons) {
    Set<Event> unseen = new LinkedHashSet<>();
    unseen(file, UseEvent.Used.class, unseen);
    unseen(file, ExposureEvent.Exposed.class, unseen);
    if (!unseen.isEmpty()) {
      Optional<Judgment> newest =
          file.evidence().notCounting(LookEvent.Inspected.class::isInstance).stream().findFirst();
      unseen.forEach(event -> reasons.accept(unseen(file, event, newest)));
    }
  }

  private static void unseen(CaseFile file, Class<? extends Event> kind, Set<Event> unseen) {
    List<? extends Event> events = file.history().events(kind);
    if (events.isEmpty()) {
      return;
    }
    Optional<Moment> last = file.evidence().inspections().last(inspection -> true);
    Optional<Moment> lastAfterUse =
        file.evidence()
            .inspections()
            .last(inspection -> inspection.occasion() == Occasion.AFTER_USE);
    for (Event event : events) {
      if (!follows(last, event, false)
          && !(file.evidence().order().namesOne(Occasion.AFTER_USE, event.when())
              && follows(lastAfterUse, event, true))) {
        unseen.add(event);
      }
    }
  }

  private static boolean follows(Optional<Moment> inspected, Event event, boolean namesIt) {
    return inspected.isPresent() && inspected.get().follows(event.when(), namesIt);
  }

  private static Reason unseen(CaseFile file, Event event, Optional<Judgment> newest) {
    String what =
        event instanceof ExposureEvent.Exposed exposed ? "exposed to " + exposed.to() : "used";
    return reason(
        ReasonKind.USED_SINCE_INSPECTION,
        Optional.empty(),
        what
            + " "
            + event.when()
            + ", and no inspection that counts is recorded after it"
            + file.evidence().order().howToTell(event.when(), LookEvent.Inspected.class::isInstance)
            + notCounting(event, newest),
        new Effect.Evaluate(Check.ROUTINE_INSPECTION, Scope.ELEMENT));
  }

  private static Reason reason(ReasonKind kind, Optional<Row> row, String seen, Effect effect) {
    return Reasons.of(
        kind, row, Site.of(Part.WHOLE_ELEMENT), Optional.empty(), seen, effect, List.of());
  }
}
