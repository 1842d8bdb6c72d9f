package org.ensemblerules.example.department;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import org.ensemblerules.example.department.demo.DemoDepartment;
import org.ensemblerules.example.department.demo.DemoElement;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.Use;
import org.ensemblerules.tables.AssessmentJson;
import org.ensemblerules.tables.ShippedRules;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Input that is wrong in one thing only: each line is that of an element in service but for one
 * change. None comes back as in service, and none keeps the lines around it from being judged.
 */
class BadInputTest {
  private static final String COAT = ordinary(ElementKind.COAT);
  private static final String HELMET = ordinary(ElementKind.HELMET);

  /** What contradicts itself can be said, and is judged: the reason, and the change. */
  private static final Map<String, Consumer<ObjectNode>> CONTRADICTORY = new LinkedHashMap<>();

  /** What is impossible in itself cannot be said: where in the line, and the change. */
  private static final Map<String, Consumer<ObjectNode>> IMPOSSIBLE = new LinkedHashMap<>();

  static {
    CONTRADICTORY.put(
        "no manufacture date: AGE_UNKNOWN", coat -> shellLabel(coat).remove("manufactured"));
    CONTRADICTORY.put(
        "a manufacture date to come: CONTRADICTION",
        coat -> shellLabel(coat).put("manufactured", "2027-03"));
    CONTRADICTORY.put(
        "in service in days to come: CONTRADICTION",
        coat -> element(coat).put("inService", "2027-01-01"));
    CONTRADICTORY.put(
        "inspected in days to come: CONTRADICTION",
        coat -> inspection(coat).put("on", "2026-12-24"));
    CONTRADICTORY.put(
        "found in days to come: CONTRADICTION",
        coat -> finding(coat, "TRIM@OUTER_SHELL", "SOILING").put("seen", "2026-11-26"));
    CONTRADICTORY.put(
        "in service before manufacture: CONTRADICTION",
        coat -> element(coat).put("inService", "2001-05-01"));
    CONTRADICTORY.put(
        "a part that a coat does not have: NO_SUCH_PART",
        coat -> finding(coat, "HELMET_SHELL", "CRACKING"));
    CONTRADICTORY.put(
        "an inspector without the role: INSPECTION_DOES_NOT_COUNT",
        coat ->
            ((ObjectNode) inspection(coat).get("by")).put("kind", "INDEPENDENT_SERVICE_PROVIDER"));
    CONTRADICTORY.put(
        "an inspector without a credential: INSPECTION_DOES_NOT_COUNT",
        coat -> ((ObjectNode) inspection(coat).get("by")).remove("credentials"));
    CONTRADICTORY.put(
        "a check listed twice with different outcomes: CONTRADICTION",
        coat -> {
          ArrayNode outcomes = (ArrayNode) inspection(coat).get("outcomes");
          ObjectNode again = outcomes.get(0).deepCopy();
          outcomes.add(again.put("outcome", "NOT_DONE"));
        });
    CONTRADICTORY.put(
        "a criterion of another element: CONTRADICTION",
        coat ->
            ((ArrayNode) inspection(coat).get("outcomes"))
                .addObject()
                .put("criterion", "no-such-criterion/COAT/STRUCTURAL")
                .put("outcome", "CLEAR"));
    CONTRADICTORY.put(
        "found and not said what: CONTRADICTION",
        coat -> ((ObjectNode) inspection(coat).get("outcomes").get(0)).put("outcome", "FOUND"));

    IMPOSSIBLE.put(
        "/findings/0/extent/length",
        coat -> extent(coat).putObject("length").put("value", "-3").put("unit", "in"));
    IMPOSSIBLE.put(
        "/findings/0/extent/area",
        coat -> extent(coat).putObject("area").put("value", -1).put("unit", "mm2"));
    IMPOSSIBLE.put("/findings/0/extent/count", coat -> extent(coat).put("count", -2));
    IMPOSSIBLE.put("/findings/0/site", coat -> finding(coat, "FABRICK@OUTER_SHELL", "TEAR"));
    IMPOSSIBLE.put("/element/inService", coat -> element(coat).put("inService", "2021-02-29"));
    IMPOSSIBLE.put("/element/kind", coat -> element(coat).putNull("kind"));
    IMPOSSIBLE.put("/element/color", coat -> element(coat).put("color", "tan"));
  }

  private static String ordinary(ElementKind kind) {
    return DemoDepartment.elements(ShippedRules.standard()).stream()
        .filter(one -> one.story().contains("all clear"))
        .map(DemoElement::assessment)
        .filter(one -> one.element().kind() == kind && one.element().use() == Use.STRUCTURAL)
        .map(AssessmentJson::write)
        .findFirst()
        .orElseThrow();
  }

  private static ObjectNode element(ObjectNode assessment) {
    return (ObjectNode) assessment.get("element");
  }

  private static ObjectNode shellLabel(ObjectNode coat) {
    return (ObjectNode) coat.at("/element/layers/OUTER_SHELL");
  }

  /** The last advanced inspection on record. */
  private static ObjectNode inspection(ObjectNode assessment) {
    ArrayNode history = (ArrayNode) assessment.get("history");
    for (int i = history.size() - 1; i >= 0; i--) {
      if (history.get(i).at("/inspection/kind").asText().equals("ADVANCED")) {
        return (ObjectNode) history.get(i).get("inspection");
      }
    }
    throw new AssertionError("no inspection on record");
  }

  private static ObjectNode finding(ObjectNode assessment, String site, String defect) {
    return assessment
        .putArray("findings")
        .addObject()
        .put("id", "F1")
        .put("site", site)
        .put("defect", defect)
        .put("seen", "2026-11-20");
  }

  private static ObjectNode extent(ObjectNode assessment) {
    return finding(assessment, "FABRIC@OUTER_SHELL", "TEAR").putObject("extent");
  }

  private static String changed(String line, Consumer<ObjectNode> change) {
    ObjectNode assessment = (ObjectNode) ProgramRun.json(line);
    change.accept(assessment);
    return assessment.toString();
  }

  private static ProgramRun assess(List<String> lines) {
    return ProgramRun.withInput(String.join("\n", lines), "assess", "-", "--as-of", "2026-11-25");
  }

  private static String service(JsonNode verdict) {
    return verdict.get("service").asText();
  }

  @Test
  void theLinesAreInServiceButForTheirChange() {
    assertThat(assess(List.of(COAT, HELMET)).verdicts())
        .extracting(BadInputTest::service)
        .containsExactly("IN", "IN");
  }

  @Test
  void contradictionsAreJudgedAndNamed() {
    CONTRADICTORY.forEach(
        (name, change) -> {
          ProgramRun run = assess(List.of(changed(COAT, change)));
          String kind = name.substring(name.lastIndexOf(' ') + 1);
          assertThat(run.code()).as(name).isZero();
          assertThat(run.verdicts()).as(name).hasSize(1);
          JsonNode verdict = run.verdicts().get(0);
          assertThat(service(verdict)).as(name).isEqualTo("OUT");
          assertThat(verdict.get("reasons").findValuesAsText("kind")).as(name).contains(kind);
          assertThat(verdict.at("/wayBack/kind").asText()).as(name).isEqualTo("STEPS");
        });
  }

  @ParameterizedTest
  @ValueSource(strings = {"LINER_SYSTEM", "MOISTURE_BARRIER", "OUTER_SHELL"})
  void aLayerOnAHelmetIsAContradiction(String layer) {
    String line =
        changed(
            HELMET,
            helmet ->
                element(helmet)
                    .putObject("layers")
                    .putObject(layer)
                    .put("model", "M")
                    .put("size", "L")
                    .put("manufactured", "2022-01")
                    .put("certificationMark", "YES")
                    .put("legibility", "READABLE"));
    JsonNode verdict = assess(List.of(line)).verdicts().get(0);
    assertThat(service(verdict)).isEqualTo("OUT");
    assertThat(verdict.get("reasons").findValuesAsText("kind")).contains("CONTRADICTION");
    assertThat(verdict.get("reasons").findValuesAsText("seen"))
        .anyMatch(seen -> seen.contains("LABEL@" + layer + " on HELMET"));
  }

  @Test
  void impossibleValuesAreRefusedWithTheirPlace() {
    IMPOSSIBLE.forEach(
        (pointer, change) -> {
          ProgramRun run = assess(List.of(COAT, changed(COAT, change), HELMET));
          assertThat(run.code()).as(pointer).isEqualTo(1);
          assertThat(run.verdicts())
              .as(pointer)
              .extracting(BadInputTest::service)
              .containsExactly("IN", "IN");
          assertThat(run.err())
              .as(pointer)
              .contains("standard input:2#" + pointer)
              .contains("found")
              .contains("allowed");
        });
  }

  @Test
  void noneStopsTheBatch() {
    List<String> lines = new ArrayList<>();
    CONTRADICTORY.values().forEach(change -> lines.add(changed(COAT, change)));
    IMPOSSIBLE.values().forEach(change -> lines.add(changed(COAT, change)));
    lines.add(HELMET);
    ProgramRun run = assess(lines);
    assertThat(run.code()).isEqualTo(1);
    assertThat(run.verdicts()).hasSize(CONTRADICTORY.size() + 1);
    assertThat(run.verdicts().subList(0, CONTRADICTORY.size()))
        .allMatch(verdict -> service(verdict).equals("OUT"));
    assertThat(service(run.verdicts().get(CONTRADICTORY.size()))).isEqualTo("IN");
    assertThat(run.err()).contains(IMPOSSIBLE.size() + " lines were bad");
  }
}
