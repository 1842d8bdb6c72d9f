package org.ensemblerules.schedule;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Optional;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.ensemblerules.effect.CleaningKind;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.inspection.InspectionKind;
import org.ensemblerules.source.Checked;
import org.ensemblerules.source.InvalidValueException;
import org.ensemblerules.source.TableFault;
import org.junit.jupiter.api.Test;

/** Rows that cannot be, and tables that say a thing twice. */
class TaskRowsTest {
  private static final Discharge CLEANED = new Discharge.Cleaned(CleaningKind.ADVANCED);

  private static void refused(ThrowingCallable making, String field, String given) {
    assertThatThrownBy(making)
        .isInstanceOf(InvalidValueException.class)
        .hasMessageContaining(field)
        .hasMessageContaining(given);
  }

  @Test
  void numbersOutOfRange() {
    refused(() -> new Timing.Every(Start.ISSUE, 0, 1, 6), "Timing.firstMonths", "0");
    refused(() -> new Timing.Every(Start.ISSUE, 601, 1, 6), "Timing.firstMonths", "1 to 600");
    refused(() -> new Timing.Every(Start.ISSUE, 6, 0, 6), "Timing.times", "0");
    refused(() -> new Timing.Every(Start.ISSUE, 6, 13, 6), "Timing.times", "1 to 12");
    refused(() -> new Timing.Every(Start.ISSUE, 6, 1, 0), "Timing.withinMonths", "0");
    refused(() -> new Timing.Every(Start.ISSUE, 6, 1, 601), "Timing.withinMonths", "601");
    refused(() -> new Timing.After(Trigger.USE, Optional.of(-1)), "Timing.withinDays", "-1");
    refused(() -> new Timing.After(Trigger.USE, Optional.of(3661)), "Timing.withinDays", "3661");
    assertThat(new Timing.Every(Start.ISSUE, 600, 12, 600).times()).isEqualTo(12);
    assertThat(new Timing.After(Trigger.USE, Optional.of(3660)).text())
        .isEqualTo("after each USE within 3660 days");
  }

  @Test
  void namesOfTasks() {
    for (String name : List.of("", "Cleaning", "a--b", "-a", "a b")) {
      refused(() -> new TaskKey(name), "TaskKey.value", name);
    }
    assertThat(new TaskKey("a-1")).hasToString("a-1").isLessThan(new TaskKey("b"));
  }

  @Test
  void onlyInspectionsHaveIntervalsAndReserve() {
    refused(
        () -> Kept.row(ElementKind.HELMET, "a", CLEANED, new Timing.ByInterval()),
        "TaskRow.timing",
        "interval");
    refused(
        () ->
            Kept.inReserve(
                Kept.cleaning(ElementKind.HELMET, new Timing.Every(Start.ISSUE, 6, 1, 6))),
        "TaskRow.exemptInReserve",
        "true");
    refused(
        () -> Kept.inReserve(Kept.routine(ElementKind.HELMET, Trigger.USE)),
        "TaskRow.exemptInReserve",
        "true");
  }

  @Test
  void saidTwice() {
    TaskRow row = Kept.advanced(ElementKind.HELMET);
    Checked<TaskTable, TableFault> twice = TaskTable.of(List.of(row, row));
    assertThat(faults(twice)).singleElement().asString().contains("each key once");
    TaskRow other =
        new TaskRow(
            Kept.liner().provenance(),
            row.task(),
            row.element(),
            row.use(),
            row.doneBy(),
            row.timing(),
            false);
    assertThat(faults(TaskTable.of(List.of(row)).orElseThrow().with(List.of(other))))
        .singleElement()
        .asString()
        .contains("each timing once per task, element and use");
  }

  private static List<TableFault> faults(Checked<TaskTable, TableFault> result) {
    assertThat(result).isInstanceOf(Checked.Refused.class);
    return ((Checked.Refused<TaskTable, TableFault>) result).faults();
  }

  @Test
  void rowsSayWhatTheyAsk() {
    assertThat(Kept.inReserve(Kept.advanced(ElementKind.HELMET)).canonical())
        .containsExactly(
            "advanced-inspection",
            "HELMET",
            "STRUCTURAL",
            "ADVANCED inspection",
            "as the table of intervals has it",
            "exempt in reserve");
    assertThat(
            Kept.cleaning(ElementKind.HELMET, new Timing.Every(Start.ISSUE, 12, 2, 12)).canonical())
        .containsExactly(
            "advanced-cleaning",
            "HELMET",
            "STRUCTURAL",
            "ADVANCED cleaning",
            "2 times in every 12 months, first by 12 months from ISSUE",
            "");
    assertThat(new Discharge.Inspected(InspectionKind.ROUTINE).text())
        .isEqualTo("ROUTINE inspection");
    TaskTable table = TaskTable.of(List.of(Kept.advanced(ElementKind.HELMET))).orElseThrow();
    assertThat(table.rows(Kept.of(ElementKind.COAT).element())).isEmpty();
    assertThat(table.rows(Kept.of(ElementKind.HELMET).element())).hasSize(1);
  }
}
