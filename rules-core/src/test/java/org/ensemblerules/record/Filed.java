package org.ensemblerules.record;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import org.ensemblerules.defect.FindingId;
import org.ensemblerules.effect.CleaningKind;
import org.ensemblerules.effect.RepairClass;
import org.ensemblerules.gear.Element;
import org.ensemblerules.gear.ElementBuilder;
import org.ensemblerules.gear.ElementId;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.Label;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.gear.Use;
import org.ensemblerules.history.EndEvent;
import org.ensemblerules.history.Event;
import org.ensemblerules.history.History;
import org.ensemblerules.history.LookEvent;
import org.ensemblerules.history.Moment;
import org.ensemblerules.history.UseEvent;
import org.ensemblerules.history.WorkEvent;
import org.ensemblerules.inspection.Inspection;
import org.ensemblerules.inspection.InspectionKind;
import org.ensemblerules.inspection.Occasion;
import org.ensemblerules.inspection.Outcome;
import org.ensemblerules.source.RowKey;
import org.ensemblerules.testkit.FrozenProvenance;
import org.ensemblerules.testkit.FrozenRules;
import org.ensemblerules.testkit.People;

/** Files of one helmet, and a frozen table that asks for everything. */
final class Filed {
  static final LocalDate AS_OF = LocalDate.of(2026, 6, 30);
  static final Label LABEL =
      Label.builder()
          .manufacturer("The maker")
          .model("Model A")
          .identification("Lot 1")
          .manufactured(MarkedDate.parse("2020-03"))
          .build();

  private Filed() {}

  static RecordItemTable everything() {
    List<RecordItemRow> rows = new ArrayList<>();
    for (RecordItem item : RecordItem.values()) {
      rows.add(row(item, item.details()));
    }
    return RecordItemTable.of(rows).orElseThrow();
  }

  static RecordItemRow row(RecordItem item, Set<RecordDetail> details) {
    return new RecordItemRow(
        FrozenProvenance.of(item), ElementKind.HELMET, Use.STRUCTURAL, item, details);
  }

  static Element helmet(UnaryOperator<ElementBuilder> known) {
    return known
        .apply(Element.builder(new ElementId("HELMET 1"), ElementKind.HELMET, Use.STRUCTURAL))
        .build();
  }

  static Moment on(String date) {
    return Moment.on(MarkedDate.parse(date));
  }

  static LookEvent.Inspected inspected(Occasion occasion, String date, Outcome outcome) {
    return new LookEvent.Inspected(
        Inspection.builder(
                InspectionKind.ADVANCED, occasion, MarkedDate.parse(date), People.DEPARTMENT)
            .outcome(new RowKey("shell"), outcome)
            .build(),
        0);
  }

  static WorkEvent.Cleaned cleaned(String date, String... findings) {
    return WorkEvent.Cleaned.whole(
        on(date), CleaningKind.ADVANCED, People.DEPARTMENT, ids(findings));
  }

  static WorkEvent.Repaired repaired(String date, String... findings) {
    return new WorkEvent.Repaired(
        on(date), RepairClass.BASIC, true, People.DEPARTMENT, ids(findings));
  }

  private static Set<FindingId> ids(String... findings) {
    return Arrays.stream(findings).map(FindingId::new).collect(Collectors.toSet());
  }

  /** Everything that can be recorded of a helmet from issue to disposal. */
  static List<Event> wholeLife() {
    return List.of(
        new UseEvent.Issued(on("2020-06-01"), "Member 7"),
        inspected(Occasion.ON_ISSUE, "2020-06-01", Outcome.CLEAR),
        inspected(Occasion.PERIODIC, "2021-05-20", Outcome.FOUND),
        cleaned("2021-05-21", "F1"),
        repaired("2021-05-25", "F2"),
        new EndEvent.Retired(on("2024-01-10"), "worn out"),
        new EndEvent.Disposed(on("2024-01-12"), "cut up"));
  }

  static RecordFileBuilder file(List<? extends Event> events) {
    return RecordFile.builder(helmet(known -> known.label(LABEL)), History.of(events));
  }

  static FileReport check(RecordFileBuilder file) {
    return everything().check(file.build(), FrozenRules.rules().evidenceTables(), AS_OF);
  }
}
