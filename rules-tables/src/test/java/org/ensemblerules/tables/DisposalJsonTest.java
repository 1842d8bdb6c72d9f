package org.ensemblerules.tables;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.Use;
import org.ensemblerules.ruleset.RuleSet;
import org.ensemblerules.source.Checked;
import org.ensemblerules.source.OriginId;
import org.ensemblerules.tables.message.DisposalRequest;
import org.ensemblerules.tables.message.JsonFault;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Questions of disposal as they are asked and answered in JSON, by the shipped tables. */
class DisposalJsonTest {
  private static final ObjectMapper MAPPER = new ObjectMapper();
  private static final String COAT = "{'element':{'id':'E-1','kind':'COAT','use':'STRUCTURAL'}";
  private static final String OLD = "{'reason':'OVER_AGE_LIMIT','firstDayOut':'2026-03-01'}";
  private static final String SOUND_AND_MARKED =
      ",'underCustody':'NO','markedForTraining':'YES','damaged':'NO','contaminated':'NO'}";
  private static final List<String> CAUSES =
      List.of(
          OLD,
          "{'reason':'BEYOND_REPAIR','what':'shell worn through'}",
          "{'reason':'CANNOT_BE_CLEANED','with':'fuel'}",
          "{'reason':'CBRN_AGENT'}",
          "{'reason':'NEVER_COMPLIED','edition':'NFPA 1971, 2007'}",
          "{'reason':'ORIGIN_NOT_SHOWN'}",
          "{'reason':'OWN_DECISION','why':'a size nobody wears'}");

  private static String quoted(String json) {
    return json.replace('\'', '"');
  }

  private static String asked(List<String> causes, String rest) {
    return quoted(COAT + ",'causes':[" + String.join(",", causes) + "]" + rest);
  }

  private static String answer(RuleSet rules, String text) {
    DisposalRequest request = DisposalJson.read("disposal request", text).orElseThrow();
    return DisposalJson.write(
        request, rules.tables().records().disposalRoutes().routes(request.gear()));
  }

  @ParameterizedTest
  @ValueSource(strings = {"NFPA_1851_2008", "NFPA_1851_2014", "NFPA_1851_2020", "NFPA_1850_2026"})
  void questionsAndAnswersAreAsTheSchemasHaveThem(String edition) {
    RuleSet rules = ShippedRules.of(new OriginId(edition)).orElseThrow().rules();
    for (ElementKind kind : ElementKind.values()) {
      for (Use use : Use.values()) {
        for (List<String> causes :
            Stream.concat(Stream.of(CAUSES), CAUSES.stream().map(List::of)).toList()) {
          for (String rest : List.of("}", SOUND_AND_MARKED, ",'underCustody':'YES'}")) {
            String text =
                asked(causes, rest).replace("COAT", kind.name()).replace("STRUCTURAL", use.name());
            assertThat(TableSchemas.objections("disposal-request", text)).as(text).isEmpty();
            String answer = answer(rules, text);
            assertThat(TableSchemas.objections("disposal-answer", answer)).as(answer).isEmpty();
          }
        }
      }
    }
  }

  /** The routes that are open, by what is known. */
  private static String open(List<String> causes, String rest) throws IOException {
    JsonNode tree = MAPPER.readTree(answer(ShippedRules.standard().rules(), asked(causes, rest)));
    return Stream.iterate(0, i -> i < tree.get("routes").size(), i -> i + 1)
        .map(i -> tree.get("routes").get(i))
        .filter(route -> route.get("answer").textValue().equals("OPEN"))
        .map(route -> route.get("route").textValue())
        .collect(Collectors.joining(" "));
  }

  @Test
  void trainingIsOpenOnlyToWhatIsKnownToBeSoundAndMarked() throws IOException {
    assertThat(open(List.of(OLD), SOUND_AND_MARKED)).contains("NON_LIVE_FIRE_TRAINING", "DESTROY");
    assertThat(open(List.of(OLD), ",'underCustody':'NO'}"))
        .contains("DESTROY")
        .doesNotContain("TRAINING");
    assertThat(open(List.of(OLD, CAUSES.get(3)), SOUND_AND_MARKED)).doesNotContain("TRAINING");
    assertThat(open(List.of(OLD), "}")).isEqualTo("CUSTODY");
    assertThat(
            answer(ShippedRules.standard().rules(), asked(List.of(OLD), ",'underCustody':'NO'}")))
        .contains("not known to be marked for training", "\"basis\"");
  }

  @Test
  void allFaultsAreNamedAtOnceWithTheirPlaces() {
    assertThat(
            faults(
                asked(
                    List.of(
                        "{'reason':'OLD'}",
                        "{'reason':'OVER_AGE_LIMIT'}",
                        "{'reason':'BEYOND_REPAIR','what':' '}",
                        "{'reason':'CBRN_AGENT','what':'x'}"),
                    ",'damaged':'MAYBE','worn':true}")))
        .hasSize(6)
        .anyMatch(fault -> fault.contains("#/causes/0/reason: found \"OLD\""))
        .anyMatch(fault -> fault.contains("#/causes/1: found no field \"firstDayOut\""))
        .anyMatch(fault -> fault.contains("#/causes/2/what: found \" \""))
        .anyMatch(fault -> fault.contains("#/causes/3/what: found unknown field"))
        .anyMatch(fault -> fault.contains("#/damaged: found \"MAYBE\""))
        .anyMatch(fault -> fault.contains("#/worn: found unknown field"));
    assertThat(faults(asked(List.of(), "}")))
        .singleElement()
        .asString()
        .contains("#/causes: found an empty list");
    assertThat(faults(asked(List.of(OLD, OLD), "}")))
        .singleElement()
        .asString()
        .contains("each entry once");
  }

  private static List<String> faults(String json) {
    Checked<DisposalRequest, JsonFault> loaded = DisposalJson.read("asked", json);
    assertThat(loaded).isInstanceOf(Checked.Refused.class);
    return ((Checked.Refused<DisposalRequest, JsonFault>) loaded)
        .faults().stream().map(JsonFault::toString).toList();
  }
}
