package org.ensemblerules.tables;

import static org.assertj.core.api.Assertions.assertThat;
import static org.ensemblerules.tables.AnswersJsonTest.valid;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.ensemblerules.audit.AuditReport;
import org.ensemblerules.audit.ChangeKind;
import org.ensemblerules.audit.RowChange;
import org.ensemblerules.audit.RuleSetDifference;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.Use;
import org.ensemblerules.inspection.InspectionKind;
import org.ensemblerules.record.PlaceCode;
import org.ensemblerules.ruleset.RuleSet;
import org.ensemblerules.ruleset.Subject;
import org.ensemblerules.source.Checked;
import org.ensemblerules.source.OriginId;
import org.junit.jupiter.api.Test;

/**
 * Answers about the rules themselves, as they are written in JSON: as the schemas have them, by a
 * validator of another project; read back as they were; written again to the same text.
 */
class AnswersReadBackTest {
  private static final RuleSet RULES = ShippedRules.standard();
  private static final LocalDate DAY = LocalDate.of(2026, 11, 25);

  private static <T> T sound(Checked<T, JsonFault> read) {
    return read.orElseThrow();
  }

  /** The faults of a text, each as its place, what kind it is, what was found and what may be. */
  private static List<String> faults(Checked<?, JsonFault> read) {
    return ((Checked.Refused<?, JsonFault>) read)
        .faults().stream()
            .map(
                fault ->
                    fault.pointer()
                        + " "
                        + fault.code()
                        + ": "
                        + fault.found()
                        + "; "
                        + fault.allowed())
            .toList();
  }

  @Test
  void whatEachInspectionLooksAt() throws IOException {
    for (InspectionKind inspection : InspectionKind.values()) {
      for (ElementKind kind : ElementKind.values()) {
        for (Use use : Use.values()) {
          CriteriaJson.Answer answer = CriteriaJson.Answer.of(RULES, inspection, kind, use);
          assertThat(answer.criteria())
              .hasSameSizeAs(RULES.tables().criteria().required(inspection, kind, use));
          String text = CriteriaJson.write(answer);
          valid("criteria-answer", text);
          CriteriaJson.Answer read = sound(CriteriaJson.read("kept", text));
          assertThat(read).isEqualTo(answer);
          assertThat(CriteriaJson.write(read)).isEqualTo(text);
        }
      }
    }
  }

  @Test
  void badCriteriaAreRefused() {
    String text =
        CriteriaJson.write(
            CriteriaJson.Answer.of(
                RULES, InspectionKind.ADVANCED, ElementKind.HELMET, Use.STRUCTURAL));
    assertThat(faults(CriteriaJson.read("kept", text.replace("\"HELMET\"", "\"HELMT\""))))
        .hasSize(1)
        .first()
        .asString()
        .startsWith("/kind NOT_ALLOWED: \"HELMT\"; ")
        .contains("HELMET");
    assertThat(
            faults(
                CriteriaJson.read(
                    "kept", text.replaceFirst("\"criterion\":\"", "\"criterion\":\"other-"))))
        .hasSize(1)
        .first()
        .asString()
        .startsWith("/criteria/0/criterion NOT_ALLOWED: \"other-")
        .contains("what follows from the other fields");
    assertThat(faults(CriteriaJson.read("kept", text.replaceFirst("\"way\"", "\"ways\""))))
        .anyMatch(fault -> fault.startsWith("/criteria/0 MISSING: no field \"way\""))
        .anyMatch(fault -> fault.startsWith("/criteria/0/ways UNKNOWN_FIELD"));
  }

  @Test
  void whatTheLawOfAPlaceAsks() throws IOException {
    LoadedTables tables = ShippedTables.load().orElseThrow();
    boolean known = false;
    boolean notKnown = false;
    for (String place : List.of("US-WA", "US-CA", "US-OR", "CA-ON", "GB-ENG")) {
      for (Optional<LocalDate> bought :
          List.of(Optional.<LocalDate>empty(), Optional.of(LocalDate.of(2019, 5, 1)))) {
        AdoptionJson.Answer answer =
            AdoptionJson.Answer.of(
                tables, tables.adoptions().orElseThrow(), new PlaceCode(place), DAY, bought);
        String text = AdoptionJson.write(answer);
        JsonNode tree = valid("rules-answer", text);
        assertThat(tree.get("subjects")).hasSize(Subject.values().length);
        AdoptionJson.Answer read = sound(AdoptionJson.read("kept", text));
        assertThat(read).isEqualTo(answer);
        assertThat(AdoptionJson.write(read)).isEqualTo(text);
        known |= answer.subjects().values().stream().anyMatch(rules -> !rules.isEmpty());
        notKnown |= answer.subjects().values().stream().anyMatch(List::isEmpty);
      }
    }
    assertThat(known && notKnown).isTrue();
  }

  @Test
  void badRulesOfAPlaceAreRefused() {
    String subject = "{\"subject\":\"INSPECTION\",\"answer\":\"NOT_KNOWN\"}";
    String text =
        "{\"place\":\"washington\",\"asOf\":\"2026-11-25\",\"subjects\":["
            + subject
            + ","
            + subject
            + ",{\"subject\":\"AGE\",\"answer\":\"RULES\",\"rules\":[]}]}";
    assertThat(faults(AdoptionJson.read("kept", text)))
        .anyMatch(fault -> fault.startsWith("/place NOT_ALLOWED: \"washington\"; a code of ISO"))
        .anyMatch(
            fault ->
                fault.equals("/subjects/1/subject DUPLICATE: INSPECTION again; each subject once"))
        .anyMatch(fault -> fault.startsWith("/subjects/2/rules NOT_ALLOWED: an empty list"));
    assertThat(
            faults(
                AdoptionJson.read(
                    "kept", text.replace("\"NOT_KNOWN\"}", "\"NOT_KNOWN\",\"rules\":[]}"))))
        .anyMatch(fault -> fault.startsWith("/subjects/0/rules UNKNOWN_FIELD"));
  }

  @Test
  void whetherRulesAreSound() throws IOException {
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
        SetAudit.of(TableFiles.in(Path.of("..", "examples", "department", "broken-tables")), DAY);
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
      JsonNode tree = valid("audit-answer", text);
      AuditReport report = answer.report();
      assertThat(tree.get("sound").booleanValue()).isEqualTo(report.isSound());
      AuditJson.Answer read = sound(AuditJson.read("kept", text));
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
    assertThat(faults(AuditJson.read("kept", text)))
        .containsExactlyInAnyOrder(
            "/rows NOT_ALLOWED: -1; a whole number from 0 on",
            "/proved/x NOT_ALLOWED: 0.5; a whole number from 0 on",
            "/notes/0/kind NOT_ALLOWED: \"GAP\"; a kind of note",
            "/sound NOT_ALLOWED: true; what follows from the other fields, false");
  }

  @Test
  void whatAnotherEditionChanges() throws IOException {
    RuleSet then = ShippedRules.of(new OriginId("NFPA_1851_2014")).orElseThrow();
    RuleSetDifference difference = RuleSetDifference.between(then, RULES);
    List<DifferenceLine> lines = new ArrayList<>();
    lines.add(DifferenceLine.Rules.of(difference));
    List<RowChange> changes = difference.changes();
    Set<ChangeKind> kinds = EnumSet.noneOf(ChangeKind.class);
    for (int i = 0; i < changes.size(); i++) {
      if (kinds.add(changes.get(i).kind()) || i % 50 == 0) {
        lines.add(DifferenceLine.ChangedRow.of(changes.get(i)));
      }
    }
    assertThat(kinds).hasSizeGreaterThan(2);
    for (DifferenceLine line : lines) {
      String text = DifferenceJson.write(line);
      valid("difference-answer", text);
      DifferenceLine read = sound(DifferenceJson.read("kept", text));
      assertThat(read).isEqualTo(line);
      assertThat(DifferenceJson.write(read)).isEqualTo(text);
    }
  }

  @Test
  void badDifferencesAreRefused() {
    assertThat(faults(DifferenceJson.read("kept", "{\"difference\":\"ROWS\"}")))
        .hasSize(1)
        .first()
        .asString()
        .startsWith("/difference NOT_ALLOWED: \"ROWS\"; ")
        .contains("ROW");
    assertThat(
            faults(
                DifferenceJson.read(
                    "kept",
                    "{\"difference\":\"ROW\",\"kind\":\"ADDED\",\"table\":\"T\",\"topic\":[],"
                        + "\"strictness\":\"STRICTER\"}")))
        .containsExactly(
            "/kind NOT_ALLOWED: \"ADDED\"; ADDED with only a row after, REMOVED with only a row"
                + " before, or both rows");
    assertThat(
            faults(
                DifferenceJson.read(
                    "kept",
                    "{\"difference\":\"FLEET\",\"asOf\":\"2026-11-25\",\"elements\":1,"
                        + "\"inServiceBefore\":1,\"inServiceAfter\":\"one\",\"changed\":0,"
                        + "\"effects\":{\"GAINS_ACTION\":0},\"gainedFor\":{\"No key\":1},"
                        + "\"lostWith\":{},\"serviceBefore\":\"IN\"}")))
        .anyMatch(fault -> fault.startsWith("/inServiceAfter NOT_ALLOWED: \"one\""))
        .anyMatch(fault -> fault.startsWith("/effects/GAINS_ACTION NOT_ALLOWED: 0"))
        .anyMatch(fault -> fault.startsWith("/gainedFor/No key NOT_ALLOWED"))
        .anyMatch(fault -> fault.startsWith("/serviceBefore UNKNOWN_FIELD"));
  }
}
