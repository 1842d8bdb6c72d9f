package org.ensemblerules.example.department;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import org.ensemblerules.example.department.demo.DemoDepartment;
import org.ensemblerules.tables.AssessmentJson;
import org.ensemblerules.tables.ShippedRules;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class AssessCommandTest {
  private static final List<String> GEAR =
      DemoDepartment.assessments(ShippedRules.standard()).stream()
          .map(AssessmentJson::write)
          .toList();

  @TempDir private Path folder;
  private Path file;

  @BeforeEach
  void aFile() throws IOException {
    file = folder.resolve("gear.jsonl");
    Files.write(file, GEAR.subList(0, 3));
  }

  private ProgramRun assess(String... more) {
    String[] args = new String[more.length + 2];
    args[0] = "assess";
    args[1] = file.toString();
    System.arraycopy(more, 0, args, 2, more.length);
    return ProgramRun.of(args);
  }

  @Test
  void writesAVerdictForEachLineInTheirOrder() {
    ProgramRun run = assess("--as-of", "2026-11-25");
    assertThat(run.code()).isZero();
    assertThat(run.err()).isEmpty();
    assertThat(run.verdicts())
        .extracting(verdict -> verdict.at("/element/id").asText())
        .containsExactlyElementsOf(
            GEAR.subList(0, 3).stream()
                .map(line -> ProgramRun.json(line).at("/element/id").asText())
                .toList());
  }

  @Test
  void readsTheStandardInput() {
    ProgramRun run =
        ProgramRun.withInput(
            String.join("\n", GEAR.subList(0, 3)), "assess", "-", "--as-of", "2026-11-25");
    assertThat(run.code()).isZero();
    assertThat(run.out()).isEqualTo(assess("--as-of", "2026-11-25").out());
  }

  @Test
  void goesOnPastBadLinesAndSaysWhereTheyAre() throws IOException {
    Files.write(
        file,
        List.of(
            GEAR.get(0),
            "{\"element\":{\"id\":\"X\",\"kind\":\"COTE\",\"use\":\"STRUCTURAL\"}}",
            "",
            GEAR.get(1),
            "not JSON at all",
            GEAR.get(2)));
    ProgramRun run = assess("--as-of", "2026-11-25");
    assertThat(run.code()).isEqualTo(1);
    assertThat(run.verdicts()).hasSize(3);
    assertThat(run.err())
        .contains(file + ":2#/element/kind")
        .contains("COTE")
        .contains("COAT")
        .contains(file + ":5")
        .contains("2 lines were bad")
        .doesNotContain(file + ":3")
        .doesNotContain(file + ":4");
  }

  @Test
  void goesOnPastBytesThatAreNoText() throws IOException {
    byte[] good = (GEAR.get(0) + "\n").getBytes(StandardCharsets.UTF_8);
    Files.write(file, good);
    Files.write(file, new byte[] {(byte) 0xff, (byte) 0xfe, '\n'}, StandardOpenOption.APPEND);
    Files.write(file, good, StandardOpenOption.APPEND);
    ProgramRun run = assess("--as-of", "2026-11-25");
    assertThat(run.code()).isEqualTo(1);
    assertThat(run.verdicts()).hasSize(2);
    assertThat(run.err()).contains(file + ":2");
  }

  @Test
  void judgesForTodayUnlessToldOtherwiseAndSaysSo() {
    ProgramRun run = assess();
    assertThat(run.code()).isZero();
    assertThat(run.err()).contains("2026-11-25");
    assertThat(run.verdicts())
        .allMatch(verdict -> verdict.get("asOf").asText().equals("2026-11-25"));
  }

  @Test
  void givesNobodyServiceBeforeTheEditionTookEffect() throws IOException {
    Files.write(file, GEAR);
    // 25 August 2019, Texas Commission on Fire Protection, compliance standards
    ProgramRun run = assess("--as-of", "2019-08-24");
    assertThat(run.code()).isZero();
    assertThat(run.verdicts())
        .hasSize(GEAR.size())
        .allMatch(verdict -> verdict.get("service").asText().equals("OUT"))
        .allMatch(verdict -> verdict.get("reasons").toString().contains("EDITION_NOT_IN_FORCE"));
  }

  @Test
  void judgesByTheEditionAskedFor() {
    ProgramRun byYear = assess("--as-of", "2026-11-25", "--edition", "2014");
    ProgramRun byName = assess("--as-of", "2026-11-25", "--edition", "NFPA_1851_2014");
    assertThat(byYear.code()).isZero();
    assertThat(byYear.out()).isEqualTo(byName.out());
    assertThat(byYear.verdicts())
        .allMatch(
            verdict -> verdict.at("/rules/editions/INSPECTION").asText().equals("NFPA_1851_2014"));
  }

  @Test
  void refusesAnEditionThatDoesNotExistAndListsThoseThatDo() {
    ProgramRun run = assess("--edition", "2019");
    assertThat(run.code()).isEqualTo(2);
    assertThat(run.out()).isEmpty();
    assertThat(run.err()).contains("--edition").contains("2019").contains("NFPA_1851_2020");
  }

  @Test
  void refusesADayThatDoesNotExist() {
    ProgramRun run = assess("--as-of", "2026-02-30");
    assertThat(run.code()).isEqualTo(2);
    assertThat(run.err()).contains("--as-of").contains("2026-02-30");
  }

  @Test
  void saysWhichFileCannotBeRead() {
    ProgramRun missing = ProgramRun.of("assess", folder.resolve("nothing.jsonl").toString());
    assertThat(missing.code()).isEqualTo(3);
    assertThat(missing.err()).contains("nothing.jsonl").contains("no such file");
    ProgramRun aFolder = ProgramRun.of("assess", folder.toString());
    assertThat(aFolder.code()).isEqualTo(3);
    assertThat(aFolder.err()).contains("it is a folder");
  }

  @Test
  void doesNotOverwriteWhatItReads() throws IOException {
    ProgramRun run = assess("--out", file.toString());
    assertThat(run.code()).isEqualTo(2);
    assertThat(Files.readAllLines(file)).isEqualTo(GEAR.subList(0, 3));
  }

  @Test
  void readsAnEmptyFile() throws IOException {
    Files.writeString(file, "");
    ProgramRun run = assess("--as-of", "2026-11-25");
    assertThat(run.code()).isZero();
    assertThat(run.out()).isEmpty();
  }

  @Test
  void saysTheServiceInEveryVerdict() {
    for (JsonNode verdict : assess("--as-of", "2026-11-25").verdicts()) {
      assertThat(verdict.get("service").asText()).isIn("IN", "OUT");
    }
  }
}
