package org.ensemblerules.record;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.ensemblerules.effect.CleaningKind;
import org.ensemblerules.gear.Label;
import org.ensemblerules.gear.LayerKind;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.gear.YesNoUnknown;
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
import org.ensemblerules.retirement.DisposalRoute;
import org.ensemblerules.testkit.FrozenRules;
import org.ensemblerules.testkit.People;
import org.junit.jupiter.api.Test;

/** What a file holds of each item, on a frozen table. */
class RecordCheckTest {
  private static FileAnswer answer(RecordItem item, RecordFileBuilder file) {
    return Filed.check(file).answers().get(item);
  }

  private static List<String> missing(RecordItem item, RecordFileBuilder file) {
    return ((FileAnswer.Missing) answer(item, file)).what();
  }

  private static List<String> contradictions(RecordItem item, RecordFileBuilder file) {
    return ((FileAnswer.Inconsistent) answer(item, file)).contradictions();
  }

  @Test
  void aWholeLifeIsComplete() {
    FileReport report = Filed.check(Filed.file(Filed.wholeLife()));
    assertThat(report.answers().keySet()).containsExactly(RecordItem.values());
    assertThat(report.answers().values()).allMatch(FileAnswer.Present.class::isInstance);
    assertThat(report.complete()).isTrue();
  }

  @Test
  void whatHasNotHappenedIsNotDueYet() {
    FileReport report =
        Filed.check(
            Filed.file(
                List.of(
                    new UseEvent.Issued(Filed.on("2020-06-01"), "Member 7"),
                    Filed.inspected(Occasion.ON_ISSUE, "2020-06-01", Outcome.CLEAR))));
    for (RecordItem item :
        List.of(
            RecordItem.ADVANCED_CLEANINGS,
            RecordItem.CLEANING_REASON_AND_DOER,
            RecordItem.REPAIRS,
            RecordItem.RETIREMENT_DATE,
            RecordItem.DISPOSAL)) {
      assertThat(report.answers().get(item)).as("%s", item).isInstanceOf(FileAnswer.NotYet.class);
    }
    assertThat(report.complete()).isTrue();
  }

  @Test
  void anEmptyFileLacksWhatWasThereFromTheFirstDay() {
    RecordFileBuilder file = RecordFile.builder(Filed.helmet(known -> known), History.empty());
    assertThat(missing(RecordItem.ISSUED_TO, file)).containsExactly("the person issued to");
    assertThat(missing(RecordItem.MAKER_AND_MODEL, file))
        .containsExactly(
            "the maker: no label is known", "the model name or design: no label is known");
    assertThat(missing(RecordItem.IDENTIFICATION, file)).hasSize(1);
    assertThat(missing(RecordItem.MANUFACTURE_DATE, file)).hasSize(1);
    assertThat(Filed.check(file).complete()).isFalse();
  }

  @Test
  void whatNoRuleAsksForIsNeverComplete() {
    FileReport report =
        RecordItemTable.of(List.of())
            .orElseThrow()
            .check(
                Filed.file(Filed.wholeLife()).build(),
                FrozenRules.rules().evidenceTables(),
                Filed.AS_OF);
    assertThat(report.answers().values()).allMatch(FileAnswer.NoRule.class::isInstance);
    assertThat(report.complete()).isFalse();
  }

  @Test
  void onlyStockNeedsNoHolder() {
    RecordFileBuilder stock = Filed.file(List.of()).inStock(YesNoUnknown.YES);
    assertThat(answer(RecordItem.ISSUED_TO, stock)).isInstanceOf(FileAnswer.NotYet.class);
    RecordFileBuilder unknown = Filed.file(List.of());
    assertThat(answer(RecordItem.ISSUED_TO, unknown)).isInstanceOf(FileAnswer.Missing.class);
    RecordFileBuilder used =
        Filed.file(List.of(new UseEvent.Used(Filed.on("2021-01-01")))).inStock(YesNoUnknown.YES);
    assertThat(contradictions(RecordItem.ISSUED_TO, used))
        .containsExactly("the file says that it was never issued; it was in use");
    RecordFileBuilder issued = Filed.file(Filed.wholeLife()).inStock(YesNoUnknown.YES);
    assertThat(contradictions(RecordItem.ISSUED_TO, issued))
        .containsExactly("the file says that it was never issued; it was, 2020-06-01");
  }

  @Test
  void aDateCountsToTheDayAndOfManufactureToTheMonth() {
    RecordFileBuilder month =
        Filed.file(List.of(new EndEvent.Retired(Filed.on("2024-01"), "worn")));
    assertThat(missing(RecordItem.RETIREMENT_DATE, month))
        .containsExactly("the day when retired on 2024-01");
    Label year = Label.builder().manufactured(MarkedDate.parse("2020")).build();
    RecordFileBuilder toTheYear =
        RecordFile.builder(Filed.helmet(known -> known.label(year)), History.empty());
    assertThat(missing(RecordItem.MANUFACTURE_DATE, toTheYear))
        .containsExactly("month and year of manufacture of its own label");
  }

  @Test
  void theFileMaySayWhatALabelDoesNot() {
    Label unreadable = Label.builder().build();
    RecordFileBuilder file =
        RecordFile.builder(Filed.helmet(known -> known.label(unreadable)), History.empty())
            .label(Filed.LABEL);
    assertThat(answer(RecordItem.MAKER_AND_MODEL, file)).isInstanceOf(FileAnswer.Present.class);
    assertThat(answer(RecordItem.MANUFACTURE_DATE, file)).isInstanceOf(FileAnswer.Present.class);
  }

  @Test
  void eachLabeledLayerIsAskedFor() {
    RecordFileBuilder file =
        RecordFile.builder(
            Filed.helmet(
                known ->
                    known
                        .layer(LayerKind.OUTER_SHELL, Filed.LABEL)
                        .layer(LayerKind.LINER_SYSTEM, Label.builder().model("B").build())),
            History.empty());
    assertThat(missing(RecordItem.MAKER_AND_MODEL, file))
        .containsExactly("the maker of LINER_SYSTEM");
  }

  @Test
  void labelAndFileThatDifferContradict() {
    Label filed =
        Label.builder()
            .manufacturer("The maker")
            .model("Model B")
            .identification("Lot 2")
            .manufactured(MarkedDate.parse("2019-03-01"))
            .build();
    RecordFileBuilder file = Filed.file(Filed.wholeLife()).label(filed);
    assertThat(contradictions(RecordItem.MANUFACTURE_DATE, file))
        .containsExactly("manufacture of its own label: label 2020-03, file 2019-03-01");
    assertThat(contradictions(RecordItem.MAKER_AND_MODEL, file))
        .containsExactly("model of its own label: label Model A, file Model B");
    assertThat(contradictions(RecordItem.IDENTIFICATION, file)).hasSize(1);
    Label later = Label.builder().manufactured(MarkedDate.parse("2021")).build();
    assertThat(contradictions(RecordItem.MANUFACTURE_DATE, Filed.file(List.of()).label(later)))
        .containsExactly("manufacture of its own label: label 2020-03, file 2021");
    Label finer = Label.builder().manufactured(MarkedDate.parse("2020-03-14")).build();
    assertThat(answer(RecordItem.MANUFACTURE_DATE, Filed.file(List.of()).label(finer)))
        .isInstanceOf(FileAnswer.Present.class);
  }

  @Test
  void aNoteTellsWhatTheHistoryDoesNot() {
    List<Event> bare =
        List.of(
            new UseEvent.Issued(Filed.on("2020-06-01"), "Member 7"),
            Filed.inspected(Occasion.PERIODIC, "2021-05-20", Outcome.NOT_DONE),
            Filed.cleaned("2021-05-21"),
            Filed.repaired("2021-05-25"));
    assertThat(missing(RecordItem.ISSUE_DATE_AND_CONDITION, Filed.file(bare)))
        .containsExactly("the condition when issued on 2020-06-01");
    assertThat(missing(RecordItem.ADVANCED_INSPECTIONS, Filed.file(bare)))
        .containsExactly("what was found when inspected on 2021-05-20");
    assertThat(missing(RecordItem.ADVANCED_CLEANINGS, Filed.file(bare))).hasSize(1);
    assertThat(missing(RecordItem.CLEANING_REASON_AND_DOER, Filed.file(bare)))
        .containsExactly("the reason when cleaned on 2021-05-21");
    assertThat(missing(RecordItem.REPAIRS, Filed.file(bare))).hasSize(1);
    RecordFileBuilder noted =
        Filed.file(bare)
            .note(note(RecordItem.ISSUE_DATE_AND_CONDITION, "2020-06-01", RecordDetail.CONDITION))
            .note(note(RecordItem.ADVANCED_INSPECTIONS, "2021-05-20", RecordDetail.FINDINGS))
            .note(note(RecordItem.ADVANCED_CLEANINGS, "2021-05-21", RecordDetail.FINDINGS))
            .note(note(RecordItem.CLEANING_REASON_AND_DOER, "2021-05-21", RecordDetail.REASON))
            .note(note(RecordItem.REPAIRS, "2021-05-25", RecordDetail.DESCRIPTION));
    assertThat(Filed.check(noted).complete()).isTrue();
  }

  private static RecordNote note(RecordItem item, String on, RecordDetail detail) {
    return new RecordNote(item, Filed.on(on), detail, "as written");
  }

  @Test
  void aNoteTellsOfItsOwnEventOnly() {
    List<Event> twice = List.of(Filed.cleaned("2021-05-21"), Filed.cleaned("2022-05-21"));
    RecordFileBuilder file =
        Filed.file(twice)
            .note(note(RecordItem.ADVANCED_CLEANINGS, "2021-05-21", RecordDetail.FINDINGS));
    assertThat(missing(RecordItem.ADVANCED_CLEANINGS, file))
        .containsExactly("what was found when cleaned on 2022-05-21");
    assertThat(missing(RecordItem.CLEANING_REASON_AND_DOER, file)).hasSize(2);
  }

  @Test
  void aNoteOfWhatNeverHappenedContradicts() {
    RecordFileBuilder file =
        Filed.file(Filed.wholeLife())
            .note(note(RecordItem.REPAIRS, "2022-01-01", RecordDetail.DESCRIPTION));
    assertThat(contradictions(RecordItem.REPAIRS, file))
        .containsExactly("a note of DESCRIPTION on 2022-01-01, and no such event");
  }

  @Test
  void exposureReductionAndRoutineLooksAreNotOfTheseItems() {
    Moment when = Filed.on("2021-01-01");
    Event rinsed =
        WorkEvent.Cleaned.whole(when, CleaningKind.EXPOSURE_REDUCTION, People.WEARER, Set.of());
    Event looked =
        new LookEvent.Inspected(
            Inspection.builder(
                    InspectionKind.ROUTINE, Occasion.AFTER_USE, when.date(), People.WEARER)
                .build(),
            0);
    FileReport report = Filed.check(Filed.file(List.of(rinsed, looked)));
    for (RecordItem item :
        List.of(
            RecordItem.ADVANCED_CLEANINGS,
            RecordItem.CLEANING_REASON_AND_DOER,
            RecordItem.ADVANCED_INSPECTIONS)) {
      assertThat(report.answers().get(item)).as("%s", item).isInstanceOf(FileAnswer.NotYet.class);
    }
  }

  @Test
  void aContradictionOfNoItemLeavesNoFileComplete() {
    List<Event> events = new ArrayList<>(Filed.wholeLife());
    events.add(new UseEvent.BackInService(Filed.on("2022-01-01")));
    FileReport report = Filed.check(Filed.file(events));
    assertThat(report.answers().values()).allMatch(FileAnswer.Present.class::isInstance);
    assertThat(report.contradictions()).hasSize(1);
    assertThat(report.complete()).isFalse();
  }

  @Test
  void retirementBeforeManufactureContradicts() {
    RecordFileBuilder file =
        Filed.file(List.of(new EndEvent.Retired(Filed.on("2019-05-01"), "worn out")));
    assertThat(contradictions(RecordItem.RETIREMENT_DATE, file))
        .containsExactly(
            "BEFORE_MADE, 2019-05-01; possible: a date not before its manufacture, 2020-03-01");
    assertThat(answer(RecordItem.MANUFACTURE_DATE, file))
        .isInstanceOf(FileAnswer.Inconsistent.class);
  }

  @Test
  void aRepairAfterDisposalContradicts() {
    List<Event> events = new ArrayList<>(Filed.wholeLife());
    events.add(Filed.repaired("2025-01-01", "F3"));
    assertThat(contradictions(RecordItem.REPAIRS, Filed.file(events)).get(0))
        .startsWith("AFTER_DISPOSAL, 2025-01-01");
  }

  @Test
  void disposalWithoutRetirementContradicts() {
    RecordFileBuilder file =
        Filed.file(List.of(new EndEvent.Disposed(Filed.on("2024-01-12"), "cut up")));
    assertThat(contradictions(RecordItem.RETIREMENT_DATE, file))
        .containsExactly("disposed of, and no retirement on record");
    assertThat(answer(RecordItem.DISPOSAL, file)).isInstanceOf(FileAnswer.Present.class);
  }

  @Test
  void retirementAfterDisposalContradicts() {
    RecordFileBuilder file =
        Filed.file(
            List.of(
                new EndEvent.Disposed(Filed.on("2024-01-12"), "cut up"),
                new EndEvent.Retired(Filed.on("2024-01-13"), "worn out")));
    assertThat(contradictions(RecordItem.DISPOSAL, file))
        .contains("disposed of 2024-01-12, retired later, 2024-01-13");
  }

  @Test
  void holdersThatOverlapContradict() {
    RecordFileBuilder file =
        Filed.file(
            List.of(
                new UseEvent.Issued(Filed.on("2020-06-01"), "Member 7"),
                new UseEvent.Issued(Filed.on("2021-06-01"), "Member 8")));
    assertThat(contradictions(RecordItem.ISSUED_TO, file).get(0)).startsWith("SECOND_HOLDER");
  }

  @Test
  void whatIsKeptForTrainingIsMarked() {
    RecordFileBuilder file = Filed.file(Filed.wholeLife());
    DisposalRoute training = DisposalRoute.NON_LIVE_FIRE_TRAINING;
    file.disposal(new DisposalNote(training, YesNoUnknown.UNKNOWN));
    assertThat(missing(RecordItem.DISPOSAL, file))
        .containsExactly("whether it was marked for training");
    file.disposal(new DisposalNote(training, YesNoUnknown.NO));
    assertThat(contradictions(RecordItem.DISPOSAL, file))
        .containsExactly("kept for training, and not marked");
    file.disposal(new DisposalNote(training, YesNoUnknown.YES));
    assertThat(answer(RecordItem.DISPOSAL, file)).isInstanceOf(FileAnswer.Present.class);
  }

  @Test
  void aRouteAloneIsNoDisposalOnRecord() {
    RecordFileBuilder file =
        Filed.file(List.of())
            .disposal(new DisposalNote(DisposalRoute.DESTROY, YesNoUnknown.UNKNOWN));
    assertThat(missing(RecordItem.DISPOSAL, file)).containsExactly("the day", "the method");
    assertThat(answer(RecordItem.RETIREMENT_DATE, file))
        .isInstanceOf(FileAnswer.Inconsistent.class);
  }

  @Test
  void whatCertainlyComesLaterIsLeftOut() {
    RecordFile file = Filed.file(Filed.wholeLife()).build();
    FileReport before =
        Filed.everything()
            .check(file, FrozenRules.rules().evidenceTables(), LocalDate.of(2024, 1, 9));
    assertThat(before.answers().get(RecordItem.RETIREMENT_DATE))
        .isInstanceOf(FileAnswer.NotYet.class);
    FileReport on =
        Filed.everything()
            .check(file, FrozenRules.rules().evidenceTables(), LocalDate.of(2024, 1, 10));
    assertThat(on.answers().get(RecordItem.RETIREMENT_DATE)).isInstanceOf(FileAnswer.Present.class);
  }

  @Test
  void aRowMayAskForLess() {
    RecordItemTable dates =
        RecordItemTable.of(
                List.of(Filed.row(RecordItem.ADVANCED_CLEANINGS, Set.of(RecordDetail.DATE))))
            .orElseThrow();
    RecordFile file = Filed.file(List.of(Filed.cleaned("2021-05-21"))).build();
    assertThat(
            dates
                .check(file, FrozenRules.rules().evidenceTables(), Filed.AS_OF)
                .answers()
                .get(RecordItem.ADVANCED_CLEANINGS))
        .isInstanceOf(FileAnswer.Present.class);
  }
}
