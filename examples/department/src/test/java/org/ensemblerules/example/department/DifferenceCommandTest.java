package org.ensemblerules.example.department;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.ensemblerules.GearRules;
import org.ensemblerules.example.department.demo.DemoDepartment;
import org.ensemblerules.source.Edition;
import org.ensemblerules.source.OriginId;
import org.ensemblerules.tables.AssessmentJson;
import org.ensemblerules.tables.ShippedRules;
import org.ensemblerules.verdict.Assessment;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

@Tag("slow")
class DifferenceCommandTest {
  @Test
  void tellsWhatTheNextEditionChangesInTheRulesAndForTheGear() {
    ProgramRun run = ProgramRun.of("difference", "--from", "2014", "--to", "NFPA_1851_2020");
    assertThat(run.err()).isEmpty();
    assertThat(run.code()).isEqualTo(ExitCodes.ALL_READ);
    assertThat(run.out())
        .contains("What NFPA 1851, 2020 edition changes in the rules of NFPA 1851, 2014 edition")
        .contains("tightened", "loosened", "only reworded", "TIGHTENED\n")
        .contains("WHAT IT CHANGES FOR THE GEAR, judged for 2026-11-25")
        .contains(" elements: ", " in service now, ", "ELEMENTS\n")
        .matches("(?s).*\\ncare-limits +.*")
        // Reserve stock is inspected before it is used, no longer in intervals.
        .containsPattern(
            "- tasks: advanced-inspection .* more like it\\n"
                + " +now +nothing more\\n"
                + " +then +exempt in reserve\\n")
        // Once a year became twice a year.
        .containsPattern("- tasks: advanced-cleaning .*\\n +now .*\\n +then  2 times in every 12");
    assertThat(run.out().lines().map(String::length)).allMatch(length -> length <= 140);
  }

  @Test
  void theSameEditionChangesNothing() {
    ProgramRun run = ProgramRun.of("difference", "--from", "2020", "--to", "2020");
    assertThat(run.code()).isEqualTo(ExitCodes.ALL_READ);
    assertThat(run.out())
        .contains("Nothing: every row says the same.", "something changes for 0\n")
        .doesNotContain("ELEMENTS");
  }

  @Test
  void withoutEditionsItSetsTheLastTwoAgainstEachOther() {
    List<Edition> known =
        ShippedRules.editions().stream()
            .filter(edition -> RulesOption.known().contains(edition.id()))
            .sorted()
            .toList();
    String last = known.get(known.size() - 1).title();
    String before = known.get(known.size() - 2).title();
    assertThat(ProgramRun.of("difference").out())
        .startsWith("What " + last + " changes in the rules of " + before);
  }

  @Test
  void everyRowIsListedWhereAskedFor() {
    String some = ProgramRun.of("difference", "--from", "2014", "--to", "2020").out();
    String all = ProgramRun.of("difference", "--from", "2014", "--to", "2020", "--rows").out();
    assertThat(some).doesNotContainPattern("\\n[a-z-]+( +-)+\\n");
    assertThat(all).contains("REWORDED\n").doesNotContain("--rows has them all");
    assertThat(some).doesNotContain("REWORDED\n");
    assertThat(all.length()).isGreaterThan(some.length());
  }

  @Test
  void aFileIsReadBesideItsBadLines() {
    GearRules rules = ShippedRules.of(new OriginId("NFPA_1851_2014")).orElseThrow();
    Assessment first = DemoDepartment.assessments(rules).get(0);
    ProgramRun run =
        ProgramRun.withInput(
            AssessmentJson.write(first) + "\nno json\n",
            "difference",
            "-",
            "--from",
            "2014",
            "--to",
            "2020",
            "--as-of",
            "2026-11-25");
    assertThat(run.code()).isEqualTo(ExitCodes.BAD_LINES);
    assertThat(run.err()).contains("standard input:2");
    assertThat(run.out()).contains("1 elements: ");
  }

  @Test
  void anEditionThatIsNotThereIsNamed() {
    ProgramRun run = ProgramRun.of("difference", "--to", "1851");
    assertThat(run.code()).isEqualTo(ExitCodes.USAGE);
    assertThat(run.err()).contains("--to: found 1851, allowed: [");
  }

  /** The edition carried over says the same on a weaker basis, but of spares that none asks for. */
  @Test
  void onlyHotterWashesAndStoredGearChangeWhereAnEditionIsCarriedOver() {
    ProgramRun run = ProgramRun.of("difference", "--from", "2020", "--to", "NFPA_1850_2026");
    assertThat(run.code()).isEqualTo(ExitCodes.ALL_READ);
    assertThat(run.out())
        .contains("668 elements: ", "; something changes for 57\n")
        .contains("now   exempt in reserve\n", "water temperature maximum and 17 more like it\n")
        .contains("overheated-in-washing/COAT/STRUCTURAL");
  }
}
