package org.ensemblerules.example.department;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The questions about the whole department: today, who is ready, what to replace and when. */
@Tag("slow")
class FleetCommandsTest {
  private static String words(ProgramRun run) {
    assertThat(run.err()).isEmpty();
    assertThat(run.code()).isEqualTo(ExitCodes.ALL_READ);
    return run.out().replaceAll("\\s+", " ");
  }

  @ParameterizedTest
  @ValueSource(strings = {"morning", "ready", "delivery", "notice", "plan", "figures"})
  void eachFitsOnOneScreen(String command) {
    ProgramRun run = ProgramRun.of(command);
    assertThat(words(run)).isNotEmpty();
    assertThat(run.out().lines()).hasSizeLessThanOrEqualTo(50);
    assertThat(run.out().lines()).allMatch(line -> line.length() <= 120);
  }

  @Test
  void theMorningTellsWhatGoesWhereAndWhatIsLate() {
    assertThat(words(ProgramRun.of("morning")))
        .containsSubsequence(
            "elements:",
            "wash:",
            "gear room:",
            "disposal:",
            "AWAY: 1",
            "promised for 2026-11-23, 2 days late",
            "THE NEXT MONTHS");
    assertThat(words(ProgramRun.of("morning", "--list", "evidence_hold")))
        .contains("EVIDENCE HOLD: 1", "2-03-COAT K. Imagined, Station 2");
    assertThat(words(ProgramRun.of("morning", "--by", "Exampleton gear room, X. Instance")))
        .contains("may bring")
        .contains("1-02-HOOD, B. Specimen, Station 1: wash it");
    assertThat(words(ProgramRun.of("morning", "--by", "A. Sample"))).doesNotContain("wash it");
  }

  @Test
  void aCapacityOfNothingLeavesAllLate() {
    assertThat(words(ProgramRun.of("morning", "--per-day", "0")))
        .contains("planned nothing")
        .doesNotContain(" 0 with no time left");
  }

  @Test
  void aMembersSetIsToldWithWhatSpeaksAgainstIt() {
    assertThat(words(ProgramRun.of("ready", "--member", "A. Sample")))
        .contains("complete and usable together");
    assertThat(words(ProgramRun.of("ready", "--member", "D. Figment")))
        .contains("complete, not usable", "coat over trousers: they do not meet as they must")
        .contains("weakest", "spares");
    assertThat(words(ProgramRun.of("ready", "--member", "Ee. Newly-Made")))
        .contains("not complete", "coat: none issued");
    assertThat(words(ProgramRun.of("ready", "--member", "Bb. Fabled")))
        .contains("is not shown to fit: a size is not known");
  }

  @Test
  void aDeliveryAndANoticeAreToldBeforeAndAfter() {
    assertThat(words(ProgramRun.of("delivery")))
        .contains("before: 6 to come; after: 2 accepted of 6 delivered")
        .contains("N-5 not accepted: certification mark not seen");
    assertThat(words(ProgramRun.of("notice")))
        .contains("NOTICE Maker Two 2026-4: stop using it")
        .contains("TOUCHED:", "POSSIBLY TOUCHED", "in service before, now out");
  }

  @Test
  void whetherAnElementMayBeIssuedIsToldWithReasons() {
    assertThat(words(ProgramRun.of("issue", "--element", "10-02-COAT", "--to", "A. Sample")))
        .isEqualTo("10-02-COAT to A. Sample: it may be issued ");
    assertThat(words(ProgramRun.of("issue", "--element", "1-03-COAT", "--to", "A. Sample")))
        .contains("not to be issued", "out of service", "issued to C. Example");
  }

  @Test
  void aLargerBudgetLeavesFewerWithoutAndNoneCostsNothing() {
    String small = words(ProgramRun.of("plan", "--budget", "30000"));
    String large = words(ProgramRun.of("plan", "--budget", "60000"));
    assertThat(small).contains("without gear at the end");
    assertThat(large).doesNotContain("without gear at the end");
    assertThat(words(ProgramRun.of("plan", "--budget", "0"))).contains("total 0.00");
    assertThat(words(ProgramRun.of("plan", "--budget", "60000", "--smooth")))
        .contains("without a price");
  }

  @Test
  void noGearHasAnAnswerToo(@TempDir Path folder) throws Exception {
    Path none = Files.writeString(folder.resolve("none.jsonl"), "");
    for (String command : new String[] {"morning", "ready", "plan", "figures", "notice"}) {
      assertThat(words(ProgramRun.of(command, none.toString()))).isNotEmpty();
    }
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "plan --budget -1 | Budget.perYear: given -1",
        "plan --growth -2 | Prices.growthPercent: given -2",
        "plan --years 0 | Budget.years: given 0",
        "morning --per-day -1 | Capacity.perDay: given -1",
        "morning --months 0 | Levelled.through",
        "morning --by Nobody | --by: found Nobody",
        "ready --member Nobody | --member: found Nobody",
        "issue --element X --to Nobody | --to: found Nobody",
      })
  void whatCannotBeIsRefused(String line, String message) {
    ProgramRun run = ProgramRun.of(line.split(" "));
    assertThat(run.code()).isEqualTo(ExitCodes.USAGE);
    assertThat(run.err()).contains(message);
    assertThat(run.out()).isEmpty();
  }
}
