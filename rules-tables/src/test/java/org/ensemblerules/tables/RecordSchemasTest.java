package org.ensemblerules.tables;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.StreamSupport;
import org.ensemblerules.care.MachineType;
import org.ensemblerules.defect.Demand;
import org.ensemblerules.defect.ExtentKind;
import org.ensemblerules.effect.EffectKind;
import org.ensemblerules.fleet.Clearing;
import org.ensemblerules.fleet.Levelled;
import org.ensemblerules.gear.LayerKind;
import org.ensemblerules.gear.Legibility;
import org.ensemblerules.gear.YesNoUnknown;
import org.ensemblerules.history.CheckResult;
import org.ensemblerules.history.Contradiction;
import org.ensemblerules.inspection.EvidenceGrade;
import org.ensemblerules.inspection.Occasion;
import org.ensemblerules.inspection.Outcome;
import org.ensemblerules.issue.Join;
import org.ensemblerules.issue.ObjectionKind;
import org.ensemblerules.issue.SafetyNotice;
import org.ensemblerules.issue.SetGap;
import org.ensemblerules.measure.Dimension;
import org.ensemblerules.measure.Ties;
import org.ensemblerules.measure.Unit;
import org.ensemblerules.repair.CostView;
import org.ensemblerules.repair.MayDo;
import org.ensemblerules.retirement.AgeAnswer;
import org.ensemblerules.retirement.CustodyAnswer;
import org.ensemblerules.retirement.RetirementReason;
import org.ensemblerules.retirement.RouteAnswer;
import org.ensemblerules.source.FaultCode;
import org.ensemblerules.strength.FailureMode;
import org.ensemblerules.strength.NoResultReason;
import org.ensemblerules.strength.Remark;
import org.ensemblerules.strength.SpecimenOrigin;
import org.ensemblerules.tables.message.CostEntry;
import org.ensemblerules.tables.message.SetEntry;
import org.ensemblerules.testkit.EventKinds;
import org.ensemblerules.verdict.Headline;
import org.ensemblerules.verdict.OutBecause;
import org.ensemblerules.verdict.ReasonKind;
import org.ensemblerules.verdict.Service;
import org.ensemblerules.verdict.WayBack;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The schemas of assessments and verdicts say what the code says, name by name. */
class RecordSchemasTest {
  private static final Map<String, List<String>> ENUMERATIONS =
      Map.ofEntries(
          Map.entry("assessment#/$defs/legibility", names(Legibility.class)),
          Map.entry(
              "record#/$defs/event/properties/event",
              texts(TableSchemas.text("record").at("/$defs/event/properties/event/enum"))),
          Map.entry("record#/$defs/known", names(YesNoUnknown.class)),
          Map.entry("record#/$defs/occasion", names(Occasion.class)),
          Map.entry("record#/$defs/outcome", names(Outcome.class)),
          Map.entry("record#/$defs/checkResult", names(CheckResult.class)),
          Map.entry("record#/$defs/lengthUnit", units(Dimension.LENGTH)),
          Map.entry("record#/$defs/areaUnit", units(Dimension.AREA)),
          Map.entry("record#/$defs/machine", names(MachineType.class)),
          Map.entry("test-case#/$defs/origin", names(SpecimenOrigin.class)),
          Map.entry("test-case#/$defs/failureMode", names(FailureMode.class)),
          Map.entry("test-case#/$defs/ties", names(Ties.class)),
          Map.entry("repair-answer#/$defs/demandKind", names(Demand.Kind.class)),
          Map.entry("repair-answer#/$defs/extentKind", names(ExtentKind.class)),
          Map.entry("repair-answer#/$defs/may", formsOf(MayDo.class)),
          Map.entry("repair-answer#/$defs/view", formsOf(CostView.class)),
          Map.entry("file-answer#/$defs/contradictionKind", names(Contradiction.Kind.class)),
          Map.entry(
              "test-answer#/$defs/outcome", names(org.ensemblerules.strength.TestOutcome.class)),
          Map.entry("test-answer#/$defs/reason", names(NoResultReason.class)),
          Map.entry("test-answer#/$defs/remark", names(Remark.class)),
          Map.entry("department#/$defs/joinPlace", names(Join.Place.class)),
          Map.entry("department#/$defs/noticeAsks", names(SafetyNotice.Asks.class)),
          Map.entry("department#/$defs/objectionKind", names(ObjectionKind.class)),
          Map.entry("department#/$defs/whyLate", names(Levelled.Why.class)),
          Map.entry("department#/$defs/gap", formsOf(SetGap.class)),
          Map.entry("department#/$defs/clearing", formsOf(Clearing.class)),
          Map.entry("set-entry#/properties/entry", formsOf(SetEntry.class)),
          Map.entry("cost#/properties/of", formsOf(CostEntry.class)),
          Map.entry("line#/$defs/code", names(FaultCode.class)),
          Map.entry("verdict#/properties/outBecause/items", names(OutBecause.class)),
          Map.entry("verdict#/$defs/service", names(Service.class)),
          Map.entry("verdict#/$defs/evidenceGrade", names(EvidenceGrade.class)),
          Map.entry("verdict#/$defs/headline", names(Headline.class)),
          Map.entry("verdict#/$defs/reasonKind", names(ReasonKind.class)));

  static List<String> files() {
    return List.of(
        "assessment",
        "doers",
        "file",
        "record",
        "test-case",
        "verdict",
        "care-request",
        "care-answer",
        "repair-request",
        "repair-answer",
        "custody-request",
        "custody-answer",
        "disposal-request",
        "disposal-answer",
        "due-answer",
        "file-answer",
        "test-answer",
        "criteria-answer",
        "rules-answer",
        "line",
        "department",
        "member",
        "whereabouts",
        "set-entry",
        "fitting",
        "order",
        "notice",
        "cost",
        "morning-answer",
        "clearing-answer",
        "ready-answer",
        "issue-answer",
        "delivery-answer",
        "notice-answer",
        "plan-answer",
        "figures-answer");
  }

  @ParameterizedTest
  @MethodSource("files")
  void everyEnumerationIsThatOfTheCode(String file) {
    Map<String, List<String>> known = new HashMap<>(ENUMERATIONS);
    known.keySet().removeIf(name -> !name.startsWith(file + "#"));
    assertThat(TableSchemas.enumerations(file)).isEqualTo(known);
  }

  @Test
  void eachLayerCanHaveALabel() {
    JsonNode layers =
        TableSchemas.text("assessment").at("/$defs/element/properties/layers/properties");

    assertThat(fieldNames(layers)).isEqualTo(names(LayerKind.class));
  }

  @Test
  void eachLayerCanHaveALabelOnFile() {
    JsonNode layers = TableSchemas.text("file").at("/$defs/filed/properties/layers/properties");

    assertThat(fieldNames(layers)).isEqualTo(names(LayerKind.class));
  }

  @Test
  void eachEventHasItsForm() {
    JsonNode event = TableSchemas.text("record").at("/$defs/event");
    List<String> names = texts(event.at("/properties/event/enum"));
    assertThat(names).containsExactlyInAnyOrderElementsOf(forms(EventKinds.all()));
    assertThat(event.findValues("if")).hasSameSizeAs(names);
    for (int i = 0; i < names.size(); i++) {
      JsonNode form = event.at("/allOf/" + i);
      assertThat(form.at("/if/properties/event/const").textValue()).isEqualTo(names.get(i));
      assertThat(form.at("/then/properties/event/const").textValue()).isEqualTo(names.get(i));
    }
  }

  /** The form is that of its own event, and no other event's form objects to it. */
  @Test
  void aWrongFieldOfAnEventIsTheOnlyObjection() {
    String line =
        "{\"element\":{\"id\":\"X\",\"kind\":\"COAT\",\"use\":\"STRUCTURAL\"},"
            + "\"history\":[{\"event\":\"USED\",\"on\":\"2026-01-01\",\"holder\":\"me\"}]}";
    assertThat(TableSchemas.objections("assessment", line))
        .singleElement()
        .asString()
        .contains("/history/0", "'holder'");
    assertThat(TableSchemas.objections("assessment", line.replace("USED", "WORN")))
        .singleElement()
        .asString()
        .contains("/history/0/event");
  }

  @Test
  void eachAnswerOfAgeHasItsForm() {
    assertThat(constants(TableSchemas.text("verdict").at("/$defs/age/oneOf"), "answer"))
        .containsExactlyInAnyOrderElementsOf(formsOf(AgeAnswer.class));
  }

  @Test
  void eachReasonOfRetirementHasItsForm() {
    assertThat(constants(TableSchemas.text("disposal-request").at("/$defs/cause/oneOf"), "reason"))
        .isEqualTo(names(RetirementReason.class));
  }

  @Test
  void eachAnswerOfDisposalAndCustodyHasItsForm() {
    assertThat(constants(TableSchemas.text("disposal-answer").at("/$defs/route/oneOf"), "answer"))
        .containsExactlyInAnyOrderElementsOf(formsOf(RouteAnswer.class));
    assertThat(constants(TableSchemas.text("custody-answer").at("/$defs/step/oneOf"), "answer"))
        .containsExactlyInAnyOrderElementsOf(formsOf(CustodyAnswer.class));
  }

  @Test
  void eachWayBackHasItsForm() {
    assertThat(constants(TableSchemas.text("verdict").at("/$defs/wayBack/oneOf"), "kind"))
        .containsExactlyInAnyOrderElementsOf(formsOf(WayBack.class));
  }

  @Test
  void eachEffectHasItsForm() {
    assertThat(constants(TableSchemas.text("common").at("/$defs/effect/oneOf"), "kind"))
        .isEqualTo(names(EffectKind.class));
  }

  @ParameterizedTest
  @MethodSource("files")
  void noObjectIsLeftOpen(String file) {
    assertThat(TableSchemas.openObjects(file)).isEmpty();
  }

  @ParameterizedTest
  @MethodSource("files")
  void theSchemasAreSchemas(String file) {
    assertThat(TableSchemas.objectionsToItsForm(file)).isEmpty();
  }

  private static List<String> constants(JsonNode forms, String field) {
    return StreamSupport.stream(forms.spliterator(), false)
        .map(form -> form.at("/properties/" + field + "/const").textValue())
        .toList();
  }

  /** The records of a sealed interface, in the spelling of JSON: LeavesOn is LEAVES_ON. */
  private static List<String> formsOf(Class<?> sealed) {
    return forms(List.of(sealed.getPermittedSubclasses()));
  }

  private static List<String> forms(List<? extends Class<?>> records) {
    return records.stream()
        .map(type -> type.getSimpleName().replaceAll("(?<=[a-z])(?=[A-Z])", "_"))
        .map(name -> name.toUpperCase(Locale.ROOT))
        .toList();
  }

  private static List<String> names(Class<? extends Enum<?>> type) {
    return Arrays.stream(type.getEnumConstants()).map(Enum::name).toList();
  }

  private static List<String> units(Dimension dimension) {
    return Arrays.stream(Unit.values())
        .filter(unit -> unit.dimension() == dimension)
        .map(Unit::symbol)
        .toList();
  }

  private static List<String> texts(JsonNode list) {
    return StreamSupport.stream(list.spliterator(), false).map(JsonNode::textValue).toList();
  }

  private static List<String> fieldNames(JsonNode object) {
    return object.properties().stream().map(Map.Entry::getKey).toList();
  }
}
