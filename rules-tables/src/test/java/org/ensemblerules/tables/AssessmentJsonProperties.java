package org.ensemblerules.tables;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.NullNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.ensemblerules.GearRules;
import org.ensemblerules.source.Checked;
import org.ensemblerules.tables.message.JsonFault;
import org.ensemblerules.testkit.ArbitrariesOfAssessments;
import org.ensemblerules.testkit.InventedRules;
import org.ensemblerules.verdict.Assessment;
import org.ensemblerules.verdict.Verdict;

/** What holds for every assessment that can be written, and for every text that can be read. */
class AssessmentJsonProperties {
  private static final ObjectMapper MAPPER = new ObjectMapper();

  @Provide
  Arbitrary<Assessment> assessments() {
    return ArbitrariesOfAssessments.assessments(InventedRules.criteria());
  }

  @Provide
  Arbitrary<LocalDate> days() {
    return Arbitraries.longs()
        .between(LocalDate.of(2010, 1, 1).toEpochDay(), LocalDate.of(2035, 1, 1).toEpochDay())
        .map(LocalDate::ofEpochDay);
  }

  @Property(edgeCases = EdgeCasesMode.NONE)
  void whatIsWrittenReadsTheSame(@ForAll("assessments") Assessment assessment) {
    String json = AssessmentJson.write(assessment);

    assertThat(AssessmentJson.read("assessment", json)).isEqualTo(new Checked.Sound<>(assessment));
    assertThat(AssessmentJson.write(AssessmentJson.read("assessment", json).orElseThrow()))
        .isEqualTo(json);
  }

  @Property(tries = 150, edgeCases = EdgeCasesMode.NONE)
  void whatIsWrittenIsOneLine(
      @ForAll("assessments") Assessment assessment, @ForAll("days") LocalDate asOf) {
    assertThat(AssessmentJson.write(assessment)).doesNotContainPattern("\\R");
    assertThat(VerdictJson.write(verdict(assessment, asOf))).doesNotContainPattern("\\R");
  }

  @Property(tries = 150, edgeCases = EdgeCasesMode.NONE)
  void theOrderOfFieldsDoesNotMatter(@ForAll("assessments") Assessment assessment)
      throws Exception {
    JsonNode turned = turned(MAPPER.readTree(AssessmentJson.write(assessment)));

    assertThat(AssessmentJson.read("assessment", turned.toString()))
        .isEqualTo(new Checked.Sound<>(assessment));
  }

  @Property(tries = 250, edgeCases = EdgeCasesMode.NONE)
  void whatIsWrittenIsValidAgainstTheSchemas(
      @ForAll("assessments") Assessment assessment, @ForAll("days") LocalDate asOf) {
    assertThat(TableSchemas.objections("assessment", AssessmentJson.write(assessment))).isEmpty();
    assertThat(TableSchemas.objections("verdict", VerdictJson.write(verdict(assessment, asOf))))
        .isEmpty();
  }

  @Property(tries = 150, edgeCases = EdgeCasesMode.NONE)
  void theSameInputsGiveTheSameBytes(
      @ForAll("assessments") Assessment assessment, @ForAll("days") LocalDate asOf) {
    Assessment again =
        AssessmentJson.read("assessment", AssessmentJson.write(assessment)).orElseThrow();

    assertThat(VerdictJson.write(verdict(again, asOf)))
        .isEqualTo(VerdictJson.write(verdict(assessment, asOf)));
  }

  /** Nothing in place of a value is refused where it stands, by the reader and by the schema. */
  @Property(tries = 150, edgeCases = EdgeCasesMode.NONE)
  void nullIsRefusedEverywhere(@ForAll("assessments") Assessment assessment, @ForAll int which)
      throws Exception {
    JsonNode tree = MAPPER.readTree(AssessmentJson.write(assessment));
    List<String> pointers = new ArrayList<>();
    collect(tree, "", pointers);
    String pointer = pointers.get(Math.floorMod(which, pointers.size()));
    put(tree, pointer, NullNode.getInstance());

    assertThat(faults(AssessmentJson.read("assessment", tree.toString())))
        .singleElement()
        .satisfies(
            fault -> {
              assertThat(fault.pointer()).isEqualTo(pointer);
              assertThat(fault.found()).isEqualTo("null");
              assertThat(fault.allowed()).endsWith("; what is not known is left out");
            });
    assertThat(TableSchemas.objections("assessment", tree.toString())).isNotEmpty();
  }

  /** A field more than there are is refused where it stands, by the reader and by the schema. */
  @Property(tries = 150, edgeCases = EdgeCasesMode.NONE)
  void unknownFieldsAreRefusedEverywhere(
      @ForAll("assessments") Assessment assessment, @ForAll int which) throws Exception {
    JsonNode tree = MAPPER.readTree(AssessmentJson.write(assessment));
    List<String> pointers = new ArrayList<>(List.of(""));
    collect(tree, "", pointers);
    pointers.removeIf(pointer -> !tree.at(pointer).isObject());
    String pointer = pointers.get(Math.floorMod(which, pointers.size()));
    ((ObjectNode) tree.at(pointer)).put("surplus", 1);

    assertThat(faults(AssessmentJson.read("assessment", tree.toString())))
        .extracting(JsonFault::pointer, JsonFault::found)
        .contains(tuple(pointer + "/surplus", "unknown field \"surplus\""));
    assertThat(TableSchemas.objections("assessment", tree.toString())).isNotEmpty();
  }

  @Property(edgeCases = EdgeCasesMode.NONE)
  void readingNeverThrows(
      @ForAll("assessments") Assessment assessment,
      @ForAll int at,
      @ForAll char with,
      @ForAll boolean cut) {
    String json = AssessmentJson.write(assessment);
    int place = Math.floorMod(at, json.length());
    String spoiled = json.substring(0, place) + with + (cut ? "" : json.substring(place + 1));

    Checked<Assessment, JsonFault> loaded = AssessmentJson.read("assessment", spoiled);

    // What is read in spite of the change can be written and read again.
    if (loaded instanceof Checked.Sound<Assessment, JsonFault> ok) {
      assertThat(AssessmentJson.read("assessment", AssessmentJson.write(ok.value())))
          .isEqualTo(loaded);
    }
  }

  @Property
  void readingAnyTextNeverThrows(@ForAll String text) {
    assertThat(AssessmentJson.read("assessment", text)).isNotNull();
  }

  static Verdict verdict(Assessment assessment, LocalDate asOf) {
    return GearRules.of(InventedRules.rules()).assess(assessment, asOf);
  }

  static List<JsonFault> faults(Checked<Assessment, JsonFault> loaded) {
    assertThat(loaded).isInstanceOf(Checked.Refused.class);
    return ((Checked.Refused<Assessment, JsonFault>) loaded).faults();
  }

  private static JsonNode turned(JsonNode node) {
    if (node.isArray()) {
      ArrayNode list = JsonNodeFactory.instance.arrayNode();
      node.forEach(entry -> list.add(turned(entry)));
      return list;
    }
    if (!node.isObject()) {
      return node;
    }
    List<Map.Entry<String, JsonNode>> fields = new ArrayList<>(node.properties());
    Collections.reverse(fields);
    ObjectNode turned = JsonNodeFactory.instance.objectNode();
    fields.forEach(field -> turned.set(field.getKey(), turned(field.getValue())));
    return turned;
  }

  private static void collect(JsonNode node, String pointer, List<String> pointers) {
    if (!pointer.isEmpty()) {
      pointers.add(pointer);
    }
    for (Map.Entry<String, JsonNode> field : node.properties()) {
      collect(field.getValue(), pointer + "/" + field.getKey(), pointers);
    }
    for (int i = 0; node.isArray() && i < node.size(); i++) {
      collect(node.get(i), pointer + "/" + i, pointers);
    }
  }

  private static void put(JsonNode tree, String pointer, JsonNode value) {
    int slash = pointer.lastIndexOf('/');
    JsonNode parent = tree.at(pointer.substring(0, slash));
    String last = pointer.substring(slash + 1);
    if (parent instanceof ArrayNode list) {
      list.set(Integer.parseInt(last), value);
    } else {
      ((ObjectNode) parent).set(last, value);
    }
  }
}
