package org.ensemblerules.audit.json;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.ensemblerules.audit.soundness.AuditReport;
import org.ensemblerules.audit.soundness.SetAudit;
import org.ensemblerules.tables.ReadFaults;
import org.ensemblerules.tables.ShippedRules;
import org.ensemblerules.tables.ShippedTables;
import org.ensemblerules.tables.TableSchemas;
import org.ensemblerules.tables.set.TableFiles;
import org.junit.jupiter.api.Test;

/**
 * Reports as they are written in JSON: as the schema has them, by a validator of another project;
 * read back as they were; written again to the same text.
 */
class AuditJsonTest {
  private static final LocalDate DAY = LocalDate.of(2026, 11, 25);

  @Test
  void whetherRulesAreSound() {
    List<AuditJson.Answer> answers = new ArrayList<>();
    SetAudit.Audited shipped =
        SetAudit.of(
            ShippedTables.files(), List.of(), DAY, id -> id.equals(ShippedRules.DEFAULT_EDITION));
    assertThat(shipped.editions()).hasSize(1);
    shipped
        .editions()
        .forEach(
            (edition, report) ->
                answers.add(
                    new AuditJson.Answer(Optional.of(edition), List.of("EXAMPLETON"), report)));
    SetAudit.Audited broken =
        SetAudit.of(
            TableFiles.in(Path.of("..", "..", "examples", "department", "broken-tables")), DAY);
    broken
        .refused()
        .ifPresent(
            report -> answers.add(new AuditJson.Answer(Optional.empty(), List.of(), report)));
    broken
        .editions()
        .forEach(
            (edition, report) ->
                answers.add(new AuditJson.Answer(Optional.of(edition), List.of(), report)));
    for (AuditJson.Answer answer : answers) {
      String text = AuditJson.write(answer);
      assertThat(TableSchemas.objections("audit-answer", text)).as(text).isEmpty();
      AuditReport report = answer.report();
      assertThat(text).contains("\"sound\":" + report.isSound()).doesNotContain("\n");
      AuditJson.Answer read = AuditJson.read("kept", text).orElseThrow();
      assertThat(read.edition()).isEqualTo(answer.edition());
      assertThat(read.overlays()).isEqualTo(answer.overlays());
      assertThat(read.report().faults()).isEqualTo(report.faults());
      assertThat(read.report().notes()).isEqualTo(report.notes());
      assertThat(read.report().proved()).isEqualTo(report.proved());
      assertThat(AuditJson.write(read)).isEqualTo(text);
    }
    assertThat(answers.stream().map(answer -> answer.report().isSound())).contains(true, false);
  }

  @Test
  void badReportsAreRefused() {
    String gap =
        "{\"kind\":\"GAP\",\"rows\":[],\"places\":[],\"found\":\"nothing\",\"expected\":\"a row\"}";
    String text =
        "{\"overlays\":[],\"asOf\":\"2026-11-25\",\"sound\":true,\"rows\":-1,\"proved\":{\"x\":0.5},"
            + "\"faults\":["
            + gap
            + "],\"notes\":["
            + gap
            + "]}";
    assertThat(ReadFaults.of(AuditJson.read("kept", text)))
        .containsExactlyInAnyOrder(
            "/rows NOT_ALLOWED: -1; a whole number from 0 on",
            "/proved/x NOT_ALLOWED: 0.5; a whole number from 0 on",
            "/notes/0/kind NOT_ALLOWED: \"GAP\"; a kind of note",
            "/sound NOT_ALLOWED: true; what follows from the other fields, false");
  }
}
