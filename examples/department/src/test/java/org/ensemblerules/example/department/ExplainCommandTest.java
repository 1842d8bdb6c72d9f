package org.ensemblerules.example.department;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.ensemblerules.example.department.demo.DemoDepartment;
import org.ensemblerules.source.SourceId;
import org.ensemblerules.tables.AssessmentJson;
import org.ensemblerules.tables.ShippedRules;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ExplainCommandTest {
  @TempDir private Path folder;

  @Test
  void tellsWhyAnElementIsOutAndWhatBringsItBack() {
    ProgramRun run = ProgramRun.of("explain", "1-02-TROUSERS", "--full");
    assertThat(run.code()).isZero();
    assertThat(run.out())
        .contains("1-02-TROUSERS   structural trousers   REPAIR (OUT)")
        .contains("broken stitching at Major A seam of the outer shell (seat), 20 mm")
        .contains("credential basic")
        .contains("BASIS")
        .contains("Way back")
        .contains("basic repair: Major A seam of the outer shell")
        .contains("last day of service")
        .contains("CAUTIONS")
        .contains("Judged for 2026-11-25.");
  }

  /**
   * Each page that a basis names stands below with its title, or its kind, so that one can go on.
   */
  @Test
  void namesThePagesOnWhichItsRulesWereSeen() {
    String out = ProgramRun.of("explain", "1-02-TROUSERS", "--full").out().replaceAll("\\s+", " ");
    List<String> named =
        ShippedRules.sources().values().stream()
            .filter(page -> !page.restates().isEmpty())
            .map(page -> page.id().value())
            .filter(id -> out.matches(".*on page ([a-z0-9-]+ and )*" + id + "[ ;,].*"))
            .toList();
    assertThat(named).isNotEmpty();
    assertThat(named)
        .allSatisfy(
            id ->
                assertThat(out.substring(out.indexOf(" PAGES ")))
                    .contains(id + ": " + ShippedRules.sources().get(new SourceId(id)).citation()));
  }

  @Test
  void explainsAnElementOfAFile() throws IOException {
    Path file = folder.resolve("gear.jsonl");
    Files.write(
        file,
        DemoDepartment.assessments(ShippedRules.standard()).stream()
            .map(AssessmentJson::write)
            .toList());
    ProgramRun run = ProgramRun.of("explain", "1-02-TROUSERS", "--full", "--from", file.toString());
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
