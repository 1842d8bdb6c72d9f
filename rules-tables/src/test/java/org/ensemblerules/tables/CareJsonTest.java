package org.ensemblerules.tables;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.ensemblerules.care.CareRoutes;
import org.ensemblerules.care.Exposure;
import org.ensemblerules.effect.PermissionTable;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.Use;
import org.ensemblerules.ruleset.CareKinds;
import org.ensemblerules.ruleset.InspectionKinds;
import org.ensemblerules.source.Checked;
import org.ensemblerules.source.OriginId;
import org.ensemblerules.tables.message.CareRequest;
import org.ensemblerules.tables.message.JsonFault;
import org.ensemblerules.tables.set.EditionTables;
import org.ensemblerules.tables.set.LoadedTables;
import org.ensemblerules.testkit.ShippedLoad;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Questions of care as they are asked and answered in JSON, by the shipped tables. */
class CareJsonTest {
  private static final LoadedTables TABLES = ShippedLoad.tables();
  private static final ObjectMapper MAPPER = new ObjectMapper();

  private static String quoted(String json) {
    return json.replace('\'', '"');
  }

  private static String asked(ElementKind kind, Use use, Set<Exposure> met) {
    return quoted(
        "{'element':{'id':'E-1','kind':'"
            + kind
            + "','use':'"
            + use
            + "'},'exposures':['"
            + String.join("','", met.stream().map(Enum::name).toList())
            + "']}");
  }

  private static CareRoutes routes(String edition) {
    EditionTables tables = TABLES.tables(new OriginId(edition));
    return CareRoutes.of(
        tables.find(CareKinds.CARE_ROUTES).orElseThrow(),
        tables
            .find(InspectionKinds.PERMISSIONS)
            .orElseGet(() -> PermissionTable.of(List.of()).orElseThrow()),
        tables.find(InspectionKinds.CHECKS));
  }

  private static String answer(String edition, String text) {
    CareRequest request = CareJson.read("care request", text).orElseThrow();
    return CareJson.write(request, routes(edition).route(request.element(), request.exposures()));
  }

  /** Every exposure alone and all at once, of all elements and editions, against the schemas. */
  @ParameterizedTest
  @ValueSource(strings = {"NFPA_1851_2001", "NFPA_1851_2008", "NFPA_1851_2014", "NFPA_1851_2020"})
  void questionsAndAnswersAreAsTheSchemasHaveThem(String edition) throws IOException {
    for (ElementKind kind : ElementKind.values()) {
      for (Use use : Use.values()) {
        for (Set<Exposure> met :
            List.of(
                EnumSet.allOf(Exposure.class),
                EnumSet.of(Exposure.UNKNOWN),
                EnumSet.of(Exposure.PRODUCTS_OF_COMBUSTION, Exposure.ASBESTOS))) {
          String text = asked(kind, use, met);
          assertThat(TableSchemas.objections("care-request", text)).isEmpty();
          String answer = answer(edition, text);
          assertThat(TableSchemas.objections("care-answer", answer)).as(answer).isEmpty();
          assertThat(answer).doesNotContain("\n");
          JsonNode tree = MAPPER.readTree(answer);
          assertThat(tree.get("mayReturn").booleanValue() && met.contains(Exposure.CBRN_AGENT))
              .isFalse();
        }
      }
    }
  }

  @Test
  void anAnswerCarriesItsText() throws IOException {
    JsonNode tree =
        MAPPER.readTree(
            answer(
                "NFPA_1851_2020",
                asked(
                    ElementKind.COAT, Use.PROXIMITY, EnumSet.of(Exposure.PRODUCTS_OF_COMBUSTION))));
    assertThat(tree.get("answer").textValue()).isEqualTo("STEPS");
    assertThat(tree.at("/steps/0/action").textValue()).isEqualTo("EXPOSURE_REDUCTION");
    assertThat(tree.at("/steps/0/by/0/entity").textValue()).isEqualTo("MEMBER");
    assertThat(tree.at("/steps/5/text").textValue())
        .isEqualTo("advanced cleaning, gently by hand, never by machine (OUTER_SHELL)");
    assertThat(tree.at("/steps/5/entries").toString())
        .isEqualTo(quoted("['DATE','DOER','REASON','FINDINGS']"));
    assertThat(tree.at("/steps/5/rows/0/key").textValue())
        .isEqualTo("reflective-shell-coat-combustion/COAT/PROXIMITY/OUTER_SHELL");
    assertThat(tree.at("/steps/5/rows/0/wording").textValue()).contains("never by machine");
    assertThat(tree.at("/steps/5/rows/0/basis/seen").textValue()).isEqualTo("RESTATED");
    assertThat(
            answer(
                "NFPA_1851_2001",
                asked(ElementKind.SHROUD, Use.PROXIMITY, EnumSet.of(Exposure.ASBESTOS))))
        .isEqualTo(
            quoted(
                "{'element':{'id':'E-1','kind':'SHROUD','use':'PROXIMITY'},"
                    + "'exposures':['ASBESTOS'],'answer':'NO_RULE','mayReturn':false,"
                    + "'text':'no rule covers SHROUD PROXIMITY: isolate it and have it evaluated',"
                    + "'by':[]}"));
  }

  @Test
  void allFaultsAreNamedAtOnceWithTheirPlaces() {
    assertThat(
            faults(
                "{'element':{'id':'E-1','kind':'COT','use':'STRUCTURAL'},"
                    + "'exposures':['SMOKE'],'asOf':'2025-01-01'}"))
        .hasSize(3)
        .anyMatch(fault -> fault.contains("#/element/kind: found \"COT\""))
        .anyMatch(fault -> fault.contains("#/exposures/0: found \"SMOKE\""))
        .anyMatch(fault -> fault.contains("#/asOf: found unknown field"));
    assertThat(faults("{'element':{'id':'E-1','kind':'COAT','use':'STRUCTURAL'}}"))
        .singleElement()
        .asString()
        .contains("no field \"exposures\"");
    assertThat(faults("{'element':{'id':'E-1','kind':'COAT','use':'STRUCTURAL'},'exposures':[]}"))
        .singleElement()
        .asString()
        .contains("#/exposures: found an empty list");
    assertThat(
            faults(
                "{'element':{'id':'E-1','kind':'COAT','use':'STRUCTURAL'},"
                    + "'exposures':['UNKNOWN','UNKNOWN']}"))
        .singleElement()
        .asString()
        .contains("each entry once");
    assertThat(faults("null")).hasSize(1);
  }

  private static List<String> faults(String json) {
    Checked<CareRequest, JsonFault> loaded = CareJson.read("asked", quoted(json));
    assertThat(loaded).isInstanceOf(Checked.Refused.class);
    return ((Checked.Refused<CareRequest, JsonFault>) loaded)
        .faults().stream().map(JsonFault::toString).toList();
  }
}
