package org.ensemblerules.example.department;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DemoCommandTest {
  @TempDir private Path folder;

  private String path(String name) {
    return folder.resolve(name).toString();
  }

  @Test
  void runsWithoutACommandAsWithIt() throws IOException {
    ProgramRun without = ProgramRun.of("--out", path("a.jsonl"));
    ProgramRun with = ProgramRun.of("demo", "--out", path("b.jsonl"));
    assertThat(without.code()).isZero();
    assertThat(with.code()).isZero();
    assertThat(folder.resolve("a.jsonl")).hasSameBinaryContentAs(folder.resolve("b.jsonl"));
    assertThat(without.out().replace("a.jsonl", "b.jsonl")).isEqualTo(with.out());
    assertThat(with.err()).isEmpty();
  }

  @Test
  void writesTheDepartmentSoThatAssessGivesTheSameVerdicts() throws IOException {
    ProgramRun.of("demo", "--out", path("a.jsonl"), "--write", path("gear.jsonl"));
    ProgramRun assess =
        ProgramRun.of(
            "assess", path("gear.jsonl"), "--as-of", "2026-11-25", "--out", path("b.jsonl"));
    assertThat(assess.code()).isZero();
    assertThat(assess.err()).isEmpty();
    assertThat(folder.resolve("b.jsonl")).hasSameBinaryContentAs(folder.resolve("a.jsonl"));
  }

  @Test
  void reportsCountsThenEveryElementThatIsOut() throws IOException {
    ProgramRun run = ProgramRun.of("demo", "--out", path("a.jsonl"));
    assertThat(run.out())
        .contains("SERVICEABLE  CLEAN  REPAIR  REPLACE_PART  EVALUATE  RETIRE  PRESERVE")
        .contains("OUT OF SERVICE")
        .contains("CAUTIONS FOR ALL OF THE ABOVE");
    List<JsonNode> verdicts = ProgramRun.verdicts(Files.readString(folder.resolve("a.jsonl")));
    List<String> lines = run.out().lines().toList();
    for (JsonNode verdict : verdicts) {
      String heading = verdict.at("/element/id").asText() + "   ";
      boolean told = lines.stream().anyMatch(line -> line.startsWith(heading));
      assertThat(told).as(heading).isEqualTo(verdict.get("service").asText().equals("OUT"));
    }
  }

  @Test
  void staysWithinAHundredColumns() {
    ProgramRun run = ProgramRun.of("demo", "--out", path("a.jsonl"));
    // Only the last line names a file, whose path can be as long as it likes.
    assertThat(run.out().lines().filter(line -> !line.contains(path("a.jsonl"))))
        .isNotEmpty()
        .allMatch(line -> line.length() <= 100);
  }

  @Test
  void saysWhenTheVerdictsCannotBeWritten() {
    ProgramRun run = ProgramRun.of("demo", "--out", path("no/such/folder.jsonl"));
    assertThat(run.code()).isEqualTo(3);
    assertThat(run.err()).contains("cannot write").contains("folder.jsonl");
  }
}
