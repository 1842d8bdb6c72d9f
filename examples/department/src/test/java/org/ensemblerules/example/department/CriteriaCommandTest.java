package org.ensemblerules.example.department;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.Use;
import org.ensemblerules.inspection.CriterionRow;
import org.ensemblerules.inspection.InspectionKind;
import org.ensemblerules.tables.ShippedRules;
import org.junit.jupiter.api.Test;

class CriteriaCommandTest {
  @Test
  void printsEveryCriterionInTheOrderOfTheInspection() {
    ProgramRun run = ProgramRun.of("criteria", "coat", "structural");
    assertThat(run.code()).isZero();
    List<CriterionRow> rows =
        ShippedRules.standard()
            .rules()
            .tables()
            .criteria()
            .required(InspectionKind.ADVANCED, ElementKind.COAT, Use.STRUCTURAL);
    assertThat(run.out())
        .containsSubsequence(rows.stream().map(row -> "row       " + row.key()).toList());
    assertThat(run.out()).contains("At hand").contains("focused flashlight").contains("Who may");
    assertThat(run.out().lines()).allMatch(line -> line.length() <= 120);
  }

  @Test
  void printsAnotherInspectionAndEdition() {
    ProgramRun run =
        ProgramRun.of(
            "criteria", "HOOD", "PROXIMITY", "--inspection", "ROUTINE", "--edition", "2008");
    assertThat(run.code()).isZero();
    assertThat(run.out()).contains("routine inspection").contains("NFPA 1851, 2008 edition");
  }

  @Test
  void refusesWhatNobodyInspectsAndListsWhatIs() {
    ProgramRun run = ProgramRun.of("criteria", "SHROUD", "STRUCTURAL");
    assertThat(run.code()).isEqualTo(2);
    assertThat(run.err()).contains("SHROUD STRUCTURAL").contains("SHROUD PROXIMITY");
    ProgramRun liner =
        ProgramRun.of("criteria", "HELMET", "STRUCTURAL", "--inspection", "COMPLETE_LINER");
    assertThat(liner.code()).isEqualTo(2);
    assertThat(liner.err()).contains("COAT STRUCTURAL");
  }

  @Test
  void refusesAKindThatDoesNotExist() {
    ProgramRun run = ProgramRun.of("criteria", "CAPE", "STRUCTURAL");
    assertThat(run.code()).isEqualTo(2);
    assertThat(run.err()).contains("CAPE").contains("HELMET_COVER");
  }
}
