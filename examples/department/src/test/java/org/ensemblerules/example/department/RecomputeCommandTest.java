package org.ensemblerules.example.department;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.ensemblerules.example.department.demo.DemoDepartment;
import org.ensemblerules.tables.AssessmentJson;
import org.ensemblerules.tables.ShippedRules;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Stored verdicts, computed again. */
class RecomputeCommandTest {
  private static final List<String> GEAR =
      DemoDepartment.assessments(ShippedRules.standard()).stream()
          .limit(12)
          .map(AssessmentJson::write)
          .toList();

  @TempDir private Path folder;
  private Path gear;
  private Path verdicts;

  @BeforeEach
  void verdictsOfToday() throws IOException {
    gear = Files.write(folder.resolve("gear.jsonl"), GEAR);
    verdicts = folder.resolve("verdicts.jsonl");
    ProgramRun run =
        ProgramRun.of(
            "assess", gear.toString(), "--as-of", "2026-11-25", "--out", verdicts.toString());
    assertThat(run.code()).isZero();
  }

  private ProgramRun recompute(String... more) {
    List<String> args = new ArrayList<>(List.of("recompute", verdicts.toString()));
    args.addAll(List.of("--from", gear.toString()));
    args.addAll(List.of(more));
    return ProgramRun.of(args.toArray(String[]::new));
  }

  @Test
  void verdictsOfTodayAreTheSame() {
    ProgramRun run = recompute();
    assertThat(run.err()).isEmpty();
    assertThat(run.code()).isZero();
    assertThat(run.out().lines())
        .hasSize(GEAR.size())
        .allMatch(line -> line.contains(" as of 2026-11-25: the same verdict: "))
        .contains(
            "1-01-COAT, structural coat, as of 2026-11-25: the same verdict: in service, fit for"
                + " duty");
  }

  @Test
  void otherRulesAreNamed() {
    ProgramRun run = recompute("--edition", "2014");
    assertThat(run.code()).isZero();
    assertThat(run.out())
        .contains("not computed again, the rules differ: edition for ")
        .contains("fingerprint of the rows: then ")
        .doesNotContain("the same verdict");
  }

  @Test
  void theFirstFormAndWhatIsNotAtHandAreNamedAndABadLineIsToo() throws IOException {
    List<String> lines = Files.readAllLines(verdicts);
    Files.write(gear, GEAR.subList(0, 2));
    Files.write(
        verdicts,
        List.of(
            lines.get(0).replaceFirst("\"form\":[0-9]+,", ""),
            lines.get(1).replace("\"service\":\"", "\"service\":\"NOT "),
            lines.get(2)));
    ProgramRun run = recompute();
    assertThat(run.code()).isEqualTo(ExitCodes.BAD_LINES);
    assertThat(run.err()).contains(verdicts + ":2#/service").contains("follows from");
    assertThat(run.out().lines().toList())
        .satisfiesExactly(
            first ->
                assertThat(first)
                    .contains("form of the fingerprint: then 1, now ")
                    .contains("nobody can tell"),
            last -> assertThat(last).endsWith("no assessment of it is at hand"));
  }

  @Test
  void aVerdictThatIsAnotherByNowSaysInWhat() throws IOException {
    List<String> lines = Files.readAllLines(verdicts);
    Files.writeString(gear, GEAR.get(0).replaceFirst(",\"history\":.*$", "}"));
    Files.write(verdicts, lines.subList(0, 1));
    assertThat(recompute().out())
        .contains(
            "another verdict by the same rules: then in service, fit for duty, now out of service,"
                + " ")
        .contains("they differ in reasons, actions");
  }
}
