package org.ensemblerules.tables;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.util.List;
import org.ensemblerules.GearRules;
import org.ensemblerules.source.Checked;
import org.ensemblerules.source.OriginId;
import org.ensemblerules.tables.message.JsonFault;
import org.ensemblerules.tables.message.RepairRequest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Questions of repair as they are asked and answered in JSON, by the shipped tables. */
class RepairJsonTest {
  private static final ObjectMapper MAPPER = new ObjectMapper();
  private static final String COAT =
      "{'element':{'id':'E-1','kind':'COAT','use':'STRUCTURAL'},'findings':[";
  private static final String LINER =
      "{'element':{'id':'E-1','kind':'COAT','use':'STRUCTURAL'},'linerOpened':true";
  private static final String SEAM =
      "{'id':'F1','site':'SEAM_MAJOR_A@OUTER_SHELL','defect':'BROKEN_STITCHING',"
          + "'extent':{'length':{'value':'2','unit':'in'}},'seen':'2025-05-01'}";
  private static final String TRIM =
      "{'id':'F2','site':'TRIM@OUTER_SHELL','defect':'MELTING','seen':'2025-05-01'}";
  private static final String HIDE = "{'id':'F3','site':'FABRIC','defect':'TEAR','seen':'2025-05'}";
  private static final String MEMBER =
      "'doer':{'name':'Member 7','kind':'MEMBER'},'on':'2025-06-01'";

  private static String quoted(String json) {
    return json.replace('\'', '"');
  }

  private static String cost(String repair, String policy) {
    return "'cost':{'repair':" + repair + ",'replacement':'1000'," + policy + "}";
  }

  private static final String HALF = "'against':'REPLACEMENT_VALUE','mostPercent':50";

  private static GearRules rules(String edition) {
    return ShippedRules.of(new OriginId(edition)).orElseThrow();
  }

  private static String answer(String edition, String text) {
    RepairRequest request = RepairJson.read("repair request", quoted(text)).orElseThrow();
    return RepairJson.write(request, request.plan(rules(edition)));
  }

  @ParameterizedTest
  @ValueSource(strings = {"NFPA_1851_2008", "NFPA_1851_2014", "NFPA_1851_2020"})
  void questionsAndAnswersAreAsTheSchemasHaveThem(String edition) {
    for (String findings : List.of(SEAM, TRIM, HIDE, SEAM + "," + TRIM + "," + HIDE)) {
      for (String rest :
          List.of(
              "",
              "," + MEMBER,
              "," + cost("400", HALF),
              "," + MEMBER + "," + cost("'600.5'", HALF))) {
        String text = COAT + findings + "]" + rest + "}";
        assertThat(TableSchemas.objections("repair-request", quoted(text))).as(text).isEmpty();
        String answer = answer(edition, text);
        assertThat(TableSchemas.objections("repair-answer", answer)).as(answer).isEmpty();
      }
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"NFPA_1851_2008", "NFPA_1851_2014", "NFPA_1851_2020"})
  void aLinerThatWasOpenedIsAskedAboutByItself(String edition) throws IOException {
    for (String kind : List.of("COAT", "HOOD")) {
      for (String rest : List.of("", "," + MEMBER)) {
        String text = LINER.replace("COAT", kind) + rest + "}";
        assertThat(TableSchemas.objections("repair-request", quoted(text))).as(text).isEmpty();
        String answer = answer(edition, text);
        assertThat(TableSchemas.objections("repair-answer", answer)).as(answer).isEmpty();
        assertThat(MAPPER.readTree(answer).get("level").textValue())
            .isEqualTo(kind.equals("COAT") ? "BASIC_REPAIR" : "DECIDE_FIRST");
      }
    }
  }

  @Test
  void eitherDamageOrALinerIsAskedAbout() {
    assertThat(faults(LINER + ",'findings':[" + SEAM + "]}"))
        .singleElement()
        .asString()
        .contains("#/linerOpened: found findings and a liner opened");
    assertThat(faults(LINER.replace(",'linerOpened':true", "}")))
        .singleElement()
        .asString()
        .contains("#: found neither findings nor a liner");
    assertThat(faults(LINER.replace("true", "false") + "}"))
        .singleElement()
        .asString()
        .contains("#/linerOpened: found false");
  }

  @Test
  void anAnswerSaysWhoMayAndWhyNot() throws IOException {
    JsonNode tree = MAPPER.readTree(answer("NFPA_1851_2020", COAT + SEAM + "]," + MEMBER + "}"));
    assertThat(tree.get("level").textValue()).isEqualTo("ADVANCED_REPAIR");
    assertThat(tree.get("granted").booleanValue()).isFalse();
    assertThat(tree.at("/orders/0/may/answer").textValue()).isEqualTo("WHY_NOT");
    assertThat(tree.at("/orders/0/may/text").textValue())
        .isEqualTo("may not do ADVANCED_REPAIR: MEMBER may not do ADVANCED_REPAIR");
    assertThat(tree.at("/orders/0/text").textValue())
        .isEqualTo("BROKEN_STITCHING at SEAM_MAJOR_A@OUTER_SHELL, 2 in: advanced repair");
    assertThat(tree.at("/orders/0/by").findValuesAsText("entity"))
        .containsExactly(
            "VERIFIED_ORGANIZATION", "VERIFIED_INDEPENDENT_SERVICE_PROVIDER", "MANUFACTURER");
    assertThat(tree.at("/orders/0/before/0/check").textValue()).isEqualTo("CLEANLINESS");
    assertThat(tree.at("/orders/0/afterward/0/check").textValue()).isEqualTo("SEAM_PULL");
    assertThat(tree.at("/orders/0/demand/row/basis/seen").textValue()).isEqualTo("RESTATED");
    assertThat(tree.at("/orders/0/limits/0/wording").textValue()).contains("outer shell");
    assertThat(tree.has("cost")).isFalse();
  }

  /** Whatever it costs and whatever the policy, everything but the advice is the same. */
  @Test
  void costIsAdviceAndChangesNothingElse() throws IOException {
    String asked = COAT + SEAM + "," + TRIM + "," + HIDE + "]," + MEMBER;
    JsonNode plain = MAPPER.readTree(answer("NFPA_1851_2020", asked + "}"));
    for (String repair : List.of("0", "500", "'500.01'", "99999")) {
      var dear =
          (ObjectNode)
              MAPPER.readTree(answer("NFPA_1851_2020", asked + "," + cost(repair, HALF) + "}"));
      JsonNode advice = dear.remove("cost");
      assertThat(dear).isEqualTo(plain);
      assertThat(advice.get("advisory").booleanValue()).isTrue();
      assertThat(advice.get("view").textValue())
          .isEqualTo(repair.equals("0") || repair.equals("500") ? "WITHIN" : "ABOVE");
      assertThat(advice.get("text").textValue()).startsWith("advice: ");
    }
  }

  @Test
  void allFaultsAreNamedAtOnceWithTheirPlaces() {
    assertThat(faults(COAT + "]}"))
        .singleElement()
        .asString()
        .contains("#/findings: found an empty list")
        .contains("at least one");
    assertThat(faults(COAT + SEAM + "],'doer':{'name':'Member 7','kind':'MEMBER'}}"))
        .singleElement()
        .asString()
        .contains("#/doer: found a doer without a day");
    assertThat(faults(COAT + SEAM + "],'on':'2025-06-01'}"))
        .singleElement()
        .asString()
        .contains("#/on: found a day without a doer");
    assertThat(
            faults(
                COAT
                    + SEAM.replace("TITCHING", "TICHING")
                    + "],"
                    + cost("-1", "'against':'VALUE','mostPercent':'x'")
                    + "}"))
        .hasSize(3)
        .anyMatch(fault -> fault.contains("#/findings/0/defect"))
        .anyMatch(fault -> fault.contains("#/cost/against"))
        .anyMatch(fault -> fault.contains("#/cost/mostPercent"));
    assertThat(faults(COAT + SEAM + "]," + cost("-1", HALF) + "}"))
        .singleElement()
        .asString()
        .contains("#/cost/repair: found -1")
        .contains("0 or more");
  }

  private static List<String> faults(String json) {
    Checked<RepairRequest, JsonFault> loaded = RepairJson.read("asked", quoted(json));
    assertThat(loaded).isInstanceOf(Checked.Refused.class);
    return ((Checked.Refused<RepairRequest, JsonFault>) loaded)
        .faults().stream().map(JsonFault::toString).toList();
  }
}
