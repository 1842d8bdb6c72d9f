package org.ensemblerules.shipped;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.List;
import java.util.Set;
import org.ensemblerules.defect.DefectKind;
import org.ensemblerules.defect.Extent;
import org.ensemblerules.defect.Finding;
import org.ensemblerules.defect.FindingId;
import org.ensemblerules.effect.CleaningKind;
import org.ensemblerules.effect.Doer;
import org.ensemblerules.effect.EntityKind;
import org.ensemblerules.effect.RepairClass;
import org.ensemblerules.gear.Element;
import org.ensemblerules.gear.ElementId;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.Label;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.gear.Part;
import org.ensemblerules.gear.Site;
import org.ensemblerules.gear.Use;
import org.ensemblerules.history.EndEvent;
import org.ensemblerules.history.History;
import org.ensemblerules.history.LookEvent;
import org.ensemblerules.history.Moment;
import org.ensemblerules.history.UseEvent;
import org.ensemblerules.history.WorkEvent;
import org.ensemblerules.inspection.Inspection;
import org.ensemblerules.inspection.InspectionKind;
import org.ensemblerules.inspection.Occasion;
import org.ensemblerules.record.FileAnswer;
import org.ensemblerules.record.FileReport;
import org.ensemblerules.record.RecordDetail;
import org.ensemblerules.record.RecordFile;
import org.ensemblerules.record.RecordFileBuilder;
import org.ensemblerules.record.RecordItem;
import org.ensemblerules.record.RecordNote;
import org.ensemblerules.tables.AssessmentJson;
import org.ensemblerules.tables.ShippedRules;
import org.ensemblerules.verdict.Assessment;
import org.junit.jupiter.api.Test;

/**
 * The eleven items that a state's guide wants recorded of each element have a place: Texas
 * Commission on Fire Protection, guide to complying with NFPA 1851, 2014 edition.
 */
class RecordItemsTest {
  private static final FindingId TEAR = new FindingId("F1");
  private static final FindingId SOIL = new FindingId("F2");
  private static final Doer DEPARTMENT = new Doer("Department", EntityKind.ORGANIZATION, List.of());

  private static Moment on(String day) {
    return Moment.on(MarkedDate.of(LocalDate.parse(day)));
  }

  private static Finding finding(FindingId id, DefectKind defect, String day) {
    return new Finding(
        id, Site.of(Part.FABRIC), "left side", defect, new Extent.NotMeasured(), on(day).date());
  }

  private static Assessment recorded() {
    Label label =
        Label.builder()
            .manufacturer("The maker")
            .model("Model A")
            .identification("Lot 1")
            .manufactured(new MarkedDate.Month(YearMonth.of(2020, 3)))
            .build();
    Inspection atIssue =
        Inspection.builder(
                InspectionKind.ADVANCED, Occasion.ON_ISSUE, on("2020-06-01").date(), DEPARTMENT)
            .build();
    Inspection later =
        Inspection.builder(
                InspectionKind.ADVANCED, Occasion.PERIODIC, on("2021-05-20").date(), DEPARTMENT)
            .build();
    return Assessment.builder(
            Element.builder(new ElementId("HOOD 1"), ElementKind.HOOD, Use.STRUCTURAL)
                .label(label)
                .build())
        .history(
            History.of(
                List.of(
                    new UseEvent.Issued(on("2020-06-01"), "Member 7"),
                    new LookEvent.Inspected(atIssue, 0),
                    new LookEvent.Inspected(later, 0),
                    new LookEvent.Found(finding(TEAR, DefectKind.TEAR, "2021-05-20")),
                    new LookEvent.Found(finding(SOIL, DefectKind.SOILING, "2021-05-20")),
                    WorkEvent.Cleaned.whole(
                        on("2021-05-21"), CleaningKind.ADVANCED, DEPARTMENT, Set.of(SOIL)),
                    new WorkEvent.Repaired(
                        on("2021-05-25"), RepairClass.BASIC, false, DEPARTMENT, Set.of(TEAR)),
                    new EndEvent.Retired(on("2024-01-10"), "worn out"),
                    new EndEvent.Disposed(on("2024-01-12"), "cut up"))))
        .build();
  }

  @Test
  void eachItemIsReadBackFromWhatWasWritten() {
    Assessment read =
        AssessmentJson.read("assessment", AssessmentJson.write(recorded())).orElseThrow();
    History history = read.history();
    Label label = read.element().label().orElseThrow();
    UseEvent.Issued issued = history.events(UseEvent.Issued.class).get(0);
    // 1 person issued to; 2 date and condition when issued
    assertThat(issued.holder()).isEqualTo("Member 7");
    assertThat(issued.when()).isEqualTo(on("2020-06-01"));
    assertThat(history.events(LookEvent.Inspected.class))
        .anyMatch(done -> done.inspection().occasion() == Occasion.ON_ISSUE);
    // 3 maker and model; 4 the maker's identification; 5 month and year of manufacture
    assertThat(label.manufacturer()).contains("The maker");
    assertThat(label.model()).contains("Model A");
    assertThat(label.identification()).contains("Lot 1");
    assertThat(label.manufactured()).hasToString("2020-03");
    // 6 dates and findings of advanced inspections
    assertThat(history.events(LookEvent.Inspected.class))
        .extracting(LookEvent.Inspected::when)
        .contains(on("2021-05-20"));
    assertThat(history.events(LookEvent.Found.class))
        .extracting(found -> found.finding().id())
        .containsExactlyInAnyOrder(TEAR, SOIL);
    // 7 dates of advanced cleaning and what was found; 8 reason, and who cleaned
    WorkEvent.Cleaned cleaned = history.events(WorkEvent.Cleaned.class).get(0);
    assertThat(cleaned.when()).isEqualTo(on("2021-05-21"));
    assertThat(cleaned.answers()).containsExactly(SOIL);
    assertThat(cleaned.by().name()).isEqualTo("Department");
    // 9 repairs: date, by whom, what
    WorkEvent.Repaired repaired = history.events(WorkEvent.Repaired.class).get(0);
    assertThat(repaired.when()).isEqualTo(on("2021-05-25"));
    assertThat(repaired.by().name()).isEqualTo("Department");
    assertThat(repaired.answers()).containsExactly(TEAR);
    // 10 date of retirement; 11 date and method of disposal
    assertThat(history.events(EndEvent.Retired.class))
        .extracting(EndEvent.Retired::when)
        .containsExactly(on("2024-01-10"));
    assertThat(history.events(EndEvent.Disposed.class))
        .containsExactly(new EndEvent.Disposed(on("2024-01-12"), "cut up"));
  }

  private static RecordNote note(RecordItem item, String on, RecordDetail detail) {
    return new RecordNote(item, on(on), detail, "as found");
  }

  private static FileReport report(List<RecordNote> notes) {
    Assessment recorded = recorded();
    RecordFileBuilder file = RecordFile.builder(recorded.element(), recorded.history());
    notes.forEach(file::note);
    return ShippedRules.of(ShippedEditions.EDITION_2014)
        .orElseThrow()
        .file(file.build(), LocalDate.of(2024, 12, 31));
  }

  /** All eleven on record, with what was found at each inspection: complete under that edition. */
  @Test
  void aFileWithTheElevenItemsIsCompleteAndLessIsNot() {
    List<RecordNote> notes =
        List.of(
            note(RecordItem.ISSUE_DATE_AND_CONDITION, "2020-06-01", RecordDetail.CONDITION),
            note(RecordItem.ADVANCED_INSPECTIONS, "2020-06-01", RecordDetail.FINDINGS),
            note(RecordItem.ADVANCED_INSPECTIONS, "2021-05-20", RecordDetail.FINDINGS));
    FileReport whole = report(notes);
    assertThat(whole.answers().values()).hasSize(11).allMatch(FileAnswer.Present.class::isInstance);
    assertThat(whole.complete()).isTrue();
    for (RecordNote left : notes) {
      FileReport less = report(notes.stream().filter(note -> !note.equals(left)).toList());
      assertThat(less.answers().get(left.item())).isInstanceOf(FileAnswer.Missing.class);
      assertThat(less.complete()).isFalse();
    }
  }
}
