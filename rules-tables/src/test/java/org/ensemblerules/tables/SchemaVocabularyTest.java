package org.ensemblerules.tables;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.ensemblerules.care.CareAction;
import org.ensemblerules.care.CareEntry;
import org.ensemblerules.care.CareManner;
import org.ensemblerules.care.CareStanding;
import org.ensemblerules.care.Contaminant;
import org.ensemblerules.care.Exposure;
import org.ensemblerules.care.WashBoundRow;
import org.ensemblerules.care.WashMeasure;
import org.ensemblerules.care.WashPractice;
import org.ensemblerules.defect.DefectKind;
import org.ensemblerules.defect.ExtentKind;
import org.ensemblerules.defect.Grade;
import org.ensemblerules.effect.Check;
import org.ensemblerules.effect.CleaningKind;
import org.ensemblerules.effect.CredentialScope;
import org.ensemblerules.effect.Destination;
import org.ensemblerules.effect.EffectKind;
import org.ensemblerules.effect.EntityKind;
import org.ensemblerules.effect.HandlingDuty;
import org.ensemblerules.effect.RepairClass;
import org.ensemblerules.effect.Scope;
import org.ensemblerules.effect.Task;
import org.ensemblerules.fieldcheck.Condition;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.LayerKind;
import org.ensemblerules.gear.Part;
import org.ensemblerules.gear.Presence;
import org.ensemblerules.gear.Use;
import org.ensemblerules.history.Transfer;
import org.ensemblerules.inspection.Equipment;
import org.ensemblerules.inspection.InspectionKind;
import org.ensemblerules.measure.Bound;
import org.ensemblerules.measure.Unit;
import org.ensemblerules.record.PfasContent;
import org.ensemblerules.record.RecordDetail;
import org.ensemblerules.record.RecordItem;
import org.ensemblerules.record.SaleParty;
import org.ensemblerules.repair.CostPolicy;
import org.ensemblerules.repair.RepairLevel;
import org.ensemblerules.retirement.CustodyStep;
import org.ensemblerules.retirement.DisposalRoute;
import org.ensemblerules.retirement.RetirementReason;
import org.ensemblerules.retirement.RouteCondition;
import org.ensemblerules.ruleset.AdoptionKind;
import org.ensemblerules.ruleset.Subject;
import org.ensemblerules.schedule.Start;
import org.ensemblerules.schedule.Trigger;
import org.ensemblerules.source.Confidence;
import org.ensemblerules.source.HowSeen;
import org.ensemblerules.source.SourceKind;
import org.ensemblerules.strength.Construction;
import org.ensemblerules.strength.Direction;
import org.ensemblerules.strength.Property;
import org.ensemblerules.strength.Statistic;
import org.junit.jupiter.api.Test;

/** The names in the schemas are those of the enumerations, all of them and in their order. */
class SchemaVocabularyTest {
  private final JsonNode vocabulary = TableSchemas.text("vocabulary").get("$defs");
  private final JsonNode common = TableSchemas.text("common").get("$defs");

  private static Map<String, List<String>> enumerations() {
    Map<String, List<String>> names = new LinkedHashMap<>();
    for (Class<? extends Enum<?>> type :
        List.of(
            Subject.class,
            HowSeen.class,
            Confidence.class,
            SourceKind.class,
            ElementKind.class,
            Use.class,
            LayerKind.class,
            Presence.class,
            DefectKind.class,
            Grade.class,
            Check.class,
            Task.class,
            EntityKind.class,
            CredentialScope.class,
            Destination.class,
            RepairClass.class,
            Scope.class,
            CleaningKind.class,
            HandlingDuty.class,
            EffectKind.class,
            InspectionKind.class,
            Equipment.class,
            Bound.class,
            Condition.class,
            WashMeasure.class,
            WashBoundRow.Reach.class,
            WashPractice.class,
            Contaminant.class,
            Exposure.class,
            CareAction.class,
            CareManner.class,
            CareEntry.class,
            CareStanding.class,
            RepairLevel.class,
            CostPolicy.Against.class,
            Start.class,
            Trigger.class,
            Transfer.class,
            Property.class,
            Direction.class,
            Statistic.class,
            Construction.class,
            RecordItem.class,
            RecordDetail.class,
            RetirementReason.class,
            DisposalRoute.class,
            RouteCondition.class,
            CustodyStep.class,
            SaleParty.class,
            AdoptionKind.class,
            PfasContent.class)) {
      String name = type.getSimpleName();
      names.put(Character.toLowerCase(name.charAt(0)) + name.substring(1), names(type));
    }
    names.put("unit", Arrays.stream(Unit.values()).map(Unit::symbol).toList());
    return names;
  }

  private static List<String> names(Class<? extends Enum<?>> type) {
    return Arrays.stream(type.getEnumConstants()).map(Enum::name).toList();
  }

  @Test
  void enumerationsAreThoseOfTheCode() {
    Map<String, List<String>> given = new LinkedHashMap<>();
    for (Map.Entry<String, JsonNode> field : vocabulary.properties()) {
      if (field.getValue().has("enum")) {
        given.put(field.getKey(), texts(field.getValue().get("enum")));
      }
    }
    assertThat(given).isEqualTo(enumerations());
  }

  @Test
  void sitesArePartsWithOrWithoutALayer() {
    String parts = String.join("|", names(Part.class));
    String layers = String.join("|", names(LayerKind.class));
    assertThat(vocabulary.get("site").get("pattern").textValue())
        .isEqualTo("^(" + parts + ")(@(" + layers + "))?$");
  }

  @Test
  void effectsAndExtentsHaveEveryKind() {
    assertThat(kinds("effect")).isEqualTo(names(EffectKind.class));
    assertThat(kinds("extent")).isEqualTo(names(ExtentKind.class));
    assertThat(kinds("basis")).containsExactly("PUBLISHED", "COMMON_PRACTICE", "MEMORY");
  }

  @Test
  void subjectsOfAnEditionAreThoseOfTheCode() {
    List<String> subjects = new ArrayList<>();
    TableSchemas.text("edition")
        .at("/properties/tables/properties")
        .fieldNames()
        .forEachRemaining(subjects::add);
    assertThat(subjects).isEqualTo(names(Subject.class));
  }

  @Test
  void noOtherSchemaListsNamesOfItsOwn() {
    assertThat(
            TableSchemas.names().stream()
                .filter(name -> !name.equals("vocabulary"))
                .filter(name -> !TableSchemas.text(name).findValues("enum").isEmpty())
                .collect(Collectors.toList()))
        .isEmpty();
  }

  @Test
  void everyObjectRefusesUnknownFields() {
    for (String name : TableSchemas.names()) {
      List<JsonNode> open = new ArrayList<>();
      TableSchemas.text(name).findParents("properties").stream()
          .filter(object -> !object.path("additionalProperties").isBoolean())
          .filter(object -> object.has("type"))
          .forEach(open::add);
      assertThat(open).as(name).isEmpty();
    }
  }

  private List<String> kinds(String definition) {
    List<String> kinds = new ArrayList<>();
    for (JsonNode form : common.get(definition).get("oneOf")) {
      kinds.add(form.at("/properties/kind/const").textValue());
    }
    return kinds;
  }

  private static List<String> texts(JsonNode list) {
    List<String> texts = new ArrayList<>();
    list.forEach(text -> texts.add(text.textValue()));
    return texts;
  }
}
