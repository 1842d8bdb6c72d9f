package org.ensemblerules.inspection;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.ensemblerules.gear.Element;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.gear.YesNoUnknown;
import org.ensemblerules.source.Checked;
import org.ensemblerules.source.TableFault;
import org.ensemblerules.testkit.FitGear;
import org.ensemblerules.testkit.FrozenRules;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** By when the next inspection is due. */
class IntervalTableTest {
  private static final IntervalTable TABLE = FrozenRules.rules().tables().intervals();

  private static Optional<LocalDate> due(String inService, YesNoUnknown cbrn, String last) {
    Element coat =
        FitGear.element(ElementKind.COAT)
            .inService(MarkedDate.parse(inService))
            .cbrnOption(cbrn)
            .build();
    IntervalRow row = TABLE.row(InspectionKind.COMPLETE_LINER, coat).orElseThrow();
    return IntervalTable.dueBy(row, coat, Optional.ofNullable(last).map(LocalDate::parse));
  }

  /** The frozen row: 36 months to the first, 24 with the CBRN option, then every 12. */
  @ParameterizedTest
  @CsvSource({
    "2020-06-01, NO, , 2023-06-01",
    "2020-06-01, YES, , 2022-06-01",
    "2020-06-01, UNKNOWN, , 2022-06-01",
    "2020-06, NO, , 2023-06-01",
    "2020, NO, , 2023-01-01",
    "2020-02-29, NO, , 2023-02-28",
    "2020-06-01, NO, 2023-05-31, 2024-05-31",
    "2020-06-01, NO, 2020-07-01, 2023-06-01",
    "2020-06-01, YES, 2021-07-01, 2022-07-01",
    "UNKNOWN, NO, 2021-07-01, 2022-07-01"
  })
  void theFirstAndThenEachOne(String inService, YesNoUnknown cbrn, String last, LocalDate due) {
    assertThat(due(inService, cbrn, last)).contains(due);
  }

  @Test
  void withoutADateNothingCanBeSaid() {
    assertThat(due("UNKNOWN", YesNoUnknown.NO, null)).isEmpty();
  }

  @Test
  void aLaterInspectionNeverMovesTheDueDateBack() {
    LocalDate last = FitGear.IN_SERVICE;
    LocalDate due = due("2020-06-01", YesNoUnknown.NO, null).orElseThrow();
    for (int months = 0; months < 60; months++) {
      LocalDate next =
          due("2020-06-01", YesNoUnknown.NO, last.plusMonths(months).toString()).orElseThrow();
      assertThat(next).isAfterOrEqualTo(due);
      due = next;
    }
  }

  @Test
  void elementsWithoutARowHaveNone() {
    Element helmet = FitGear.element(ElementKind.HELMET).build();
    assertThat(TABLE.row(InspectionKind.COMPLETE_LINER, helmet)).isEmpty();
    assertThat(TABLE.row(InspectionKind.ADVANCED, helmet)).isPresent();
  }

  @Test
  void anIntervalTwiceIsAFault() {
    IntervalRow row = TABLE.rows().get(0);
    Checked<IntervalTable, TableFault> result = IntervalTable.of(List.of(row, row));
    assertThat(((Checked.Refused<IntervalTable, TableFault>) result).faults().get(0).toString())
        .startsWith(row.key() + ", elements: found ")
        .endsWith("allowed: each inspection once per element and use");
  }
}
