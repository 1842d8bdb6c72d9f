package org.ensemblerules.tables;

import static org.assertj.core.api.Assertions.assertThat;
import static org.ensemblerules.tables.AnswersJsonTest.valid;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.ensemblerules.GearRules;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.Use;
import org.ensemblerules.inspection.InspectionKind;
import org.ensemblerules.record.PlaceCode;
import org.ensemblerules.ruleset.RecordKinds;
import org.ensemblerules.ruleset.RuleSet;
import org.ensemblerules.ruleset.Subject;
import org.ensemblerules.source.Checked;
import org.ensemblerules.tables.message.CriteriaAnswer;
import org.ensemblerules.tables.message.JsonFault;
import org.ensemblerules.tables.message.PlaceRules;
import org.ensemblerules.tables.set.LoadedTables;
import org.junit.jupiter.api.Test;

/**
 * Answers about the rules themselves, as they are written in JSON: as the schemas have them, by a
 * validator of another project; read back as they were; written again to the same text.
 */
class AnswersReadBackTest {
  private static final RuleSet RULES = ShippedRules.standard().rules();
  private static final LocalDate DAY = LocalDate.of(2026, 11, 25);

  private static <T> T sound(Checked<T, JsonFault> read) {
    return read.orElseThrow();
  }

  @Test
  void whatEachInspectionLooksAt() throws IOException {
    for (InspectionKind inspection : InspectionKind.values()) {
      for (ElementKind kind : ElementKind.values()) {
        for (Use use : Use.values()) {
          CriteriaAnswer answer = CriteriaAnswer.of(GearRules.of(RULES), inspection, kind, use);
          assertThat(answer.criteria())
              .hasSameSizeAs(RULES.tables().criteria().required(inspection, kind, use));
          String text = CriteriaJson.write(answer);
          valid("criteria-answer", text);
          CriteriaAnswer read = sound(CriteriaJson.read("kept", text));
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
            CriteriaAnswer.of(
                GearRules.of(RULES), InspectionKind.ADVANCED, ElementKind.HELMET, Use.STRUCTURAL));
    assertThat(ReadFaults.of(CriteriaJson.read("kept", text.replace("\"HELMET\"", "\"HELMT\""))))
        .hasSize(1)
        .first()
        .asString()
        .startsWith("/kind NOT_ALLOWED: \"HELMT\"; ")
        .contains("HELMET");
    assertThat(
            ReadFaults.of(
                CriteriaJson.read(
                    "kept", text.replaceFirst("\"criterion\":\"", "\"criterion\":\"other-"))))
        .hasSize(1)
        .first()
        .asString()
        .startsWith("/criteria/0/criterion NOT_ALLOWED: \"other-")
        .contains("what follows from the other fields");
    assertThat(ReadFaults.of(CriteriaJson.read("kept", text.replaceFirst("\"way\"", "\"ways\""))))
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
        PlaceRules answer =
            PlaceRules.of(
                tables::editions,
                tables.find(RecordKinds.ADOPTIONS).orElseThrow(),
                new PlaceCode(place),
                DAY,
                bought);
        String text = AdoptionJson.write(answer);
        JsonNode tree = valid("rules-answer", text);
        assertThat(tree.get("subjects")).hasSize(Subject.values().length);
        PlaceRules read = sound(AdoptionJson.read("kept", text));
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
    assertThat(ReadFaults.of(AdoptionJson.read("kept", text)))
        .anyMatch(fault -> fault.startsWith("/place NOT_ALLOWED: \"washington\"; a code of ISO"))
        .anyMatch(
            fault ->
                fault.equals("/subjects/1/subject DUPLICATE: INSPECTION again; each subject once"))
        .anyMatch(fault -> fault.startsWith("/subjects/2/rules NOT_ALLOWED: an empty list"));
    assertThat(
            ReadFaults.of(
                AdoptionJson.read(
                    "kept", text.replace("\"NOT_KNOWN\"}", "\"NOT_KNOWN\",\"rules\":[]}"))))
        .anyMatch(fault -> fault.startsWith("/subjects/0/rules UNKNOWN_FIELD"));
  }
}
