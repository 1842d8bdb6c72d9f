package org.ensemblerules.example.department;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.ensemblerules.example.department.demo.DemoDepartment;
import org.ensemblerules.tables.AssessmentJson;
import org.ensemblerules.tables.ShippedRules;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ExplainCommandTest {
  @TempDir private Path folder;

  @Test
  void tellsWhyAnElementIsOutAndWhatBringsItBack() {
    ProgramRun run = ProgramRun.of("explain", "1-02-TROUSERS");
    assertThat(run.code()).isZero();
    assertThat(run.out())
        .contains("1-02-TROUSERS   structural trousers   REPAIR (OUT)")
        .contains("broken stitching at Major A seam of the outer shell (seat), 20 mm")
        .contains("credential basic")
        .contains("basis")
        .contains("Way back")
        .contains("basic repair: Major A seam of the outer shell")
        .contains("last day of service")
        .contains("CAUTIONS")
        .contains("Judged for 2026-11-25.");
  }

  @Test
  void explainsAnElementOfAFile() throws IOException {
    Path file = folder.resolve("gear.jsonl");
    Files.write(
        file,
        DemoDepartment.assessments(ShippedRules.standard()).stream()
            .map(AssessmentJson::write)
            .toList());
    ProgramRun run = ProgramRun.of("explain", "1-02-TROUSERS", "--from", file.toString());
    assertThat(run.code()).isZero();
    assertThat(run.out()).contains("REPAIR (OUT)").contains("Judged for 2026-11-25.");
  }

  @Test
  void refusesANameThatNobodyHas() {
    ProgramRun run = ProgramRun.of("explain", "9-99-CAPE");
    assertThat(run.code()).isEqualTo(2);
    assertThat(run.err()).contains("9-99-CAPE");
  }

  @Test
  void saysWhichFileCannotBeRead() {
    ProgramRun run = ProgramRun.of("explain", "X", "--from", folder.resolve("none").toString());
    assertThat(run.code()).isEqualTo(3);
  }
}
