package org.ensemblerules.example.department;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DemoCommandTest {
  @TempDir private static Path all;
  private static ProgramRun run;

  @TempDir private Path folder;

  /** Told once; what the tests look at is the same run. */
  @BeforeAll
  static void tell() {
    run =
        ProgramRun.of(
            "demo",
            "--out",
            all.resolve("a.jsonl").toString(),
            "--write",
            all.resolve("gear.jsonl").toString());
  }

  private String path(String name) {
    return folder.resolve(name).toString();
  }

  @Test
  void runsWithoutACommandAsWithIt() throws IOException {
    ProgramRun without = ProgramRun.of("--out", path("b.jsonl"));
    assertThat(without.code()).isZero();
    assertThat(run.code()).isZero();
    assertThat(folder.resolve("b.jsonl")).hasSameBinaryContentAs(all.resolve("a.jsonl"));
    assertThat(without.out().replace(path("b.jsonl"), all.resolve("a.jsonl").toString()))
        .isEqualTo(run.out());
    assertThat(run.err()).isEmpty();
  }

  @Test
  void writesTheDepartmentSoThatAssessGivesTheSameVerdicts() throws IOException {
    ProgramRun assess =
        ProgramRun.of(
            "assess",
            all.resolve("gear.jsonl").toString(),
            "--as-of",
            "2026-11-25",
            "--out",
            path("b.jsonl"));
    assertThat(assess.code()).isZero();
    assertThat(assess.err()).isEmpty();
    assertThat(folder.resolve("b.jsonl")).hasSameBinaryContentAs(all.resolve("a.jsonl"));
  }

  @Test
  void reportsCountsAndTheMostUrgentOnOnePage() {
    assertThat(run.out())
        .contains("fit for duty  clean  repair  replace a part  evaluate  retire  hold as found")
        .contains("condition    overdue  paperwork        all")
        .containsSubsequence("THE 10 MOST URGENT", "2-03-COAT", "hold as found", "retire")
        .contains("CAUTIONS FOR ALL OF THE ABOVE")
        .contains("The rest: demo --out-of-service");
    assertThat(run.out().lines()).hasSizeLessThanOrEqualTo(60);
  }

  @Test
  void listsEveryElementThatIsOutWhereAskedTo() throws IOException {
    ProgramRun listed = ProgramRun.of("demo", "--out", path("b.jsonl"), "--out-of-service");
    List<JsonNode> verdicts = ProgramRun.verdicts(Files.readString(all.resolve("a.jsonl")));
    List<String> lines = listed.out().lines().toList();
    for (JsonNode verdict : verdicts) {
      String heading = "  " + verdict.at("/element/id").asText() + " ";
      boolean told = lines.stream().anyMatch(line -> line.startsWith(heading));
      assertThat(told).as(heading).isEqualTo(verdict.get("service").asText().equals("OUT"));
    }
  }

  @Test
  void staysWithin120Columns() {
    // Only the last line names a file, whose path can be as long as it likes.
    assertThat(run.out().lines().filter(line -> !line.contains(all.resolve("a.jsonl").toString())))
        .isNotEmpty()
        .allMatch(line -> line.length() <= 120);
  }

  @Test
  void saysWhenTheVerdictsCannotBeWritten() {
    ProgramRun failed = ProgramRun.of("demo", "--out", path("no/such/folder.jsonl"));
    assertThat(failed.code()).isEqualTo(3);
    assertThat(failed.err()).contains("cannot write").contains("folder.jsonl");
  }
}
