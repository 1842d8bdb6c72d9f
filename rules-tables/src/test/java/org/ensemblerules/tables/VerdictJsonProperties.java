package org.ensemblerules.tables;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.NullNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.PropertyDefaults;
import net.jqwik.api.Provide;
import org.ensemblerules.GearRules;
import org.ensemblerules.source.Checked;
import org.ensemblerules.source.Row;
import org.ensemblerules.tables.message.JsonFault;
import org.ensemblerules.testkit.ArbitrariesOfAssessments;
import org.ensemblerules.testkit.InventedRules;
import org.ensemblerules.testkit.ShippedArbitraries;
import org.ensemblerules.testkit.ShippedCase;
import org.ensemblerules.verdict.Assessment;
import org.ensemblerules.verdict.Recompute;
import org.ensemblerules.verdict.Verdict;

/** What holds for every verdict that can be written, and for every text read as one. */
@PropertyDefaults(tries = 100, edgeCases = EdgeCasesMode.NONE)
class VerdictJsonProperties {
  private static final ObjectMapper MAPPER = new ObjectMapper();

  @Provide
  Arbitrary<ShippedCase> cases() {
    return ShippedArbitraries.cases();
  }

  @Provide
  Arbitrary<Assessment> assessments() {
    return ArbitrariesOfAssessments.assessments(InventedRules.criteria());
  }

  @Provide
  Arbitrary<LocalDate> days() {
    return Arbitraries.longs()
        .between(LocalDate.of(1990, 1, 1).toEpochDay(), LocalDate.of(2260, 1, 1).toEpochDay())
        .map(LocalDate::ofEpochDay);
  }

  private static String readsTheSame(Verdict verdict) {
    String json = VerdictJson.write(verdict);
    Checked<Verdict, JsonFault> read = VerdictJson.read("verdict", json);
    assertThat(read).isEqualTo(new Checked.Sound<>(verdict));
    assertThat(VerdictJson.write(read.orElseThrow())).isEqualTo(json);
    return json;
  }

  @Property
  void aVerdictOfAShippedEditionReadsTheSame(@ForAll("cases") ShippedCase given) {
    String json = readsTheSame(given.verdict());
    assertThat(TableSchemas.objections("verdict", json)).isEmpty();
    Verdict stored = VerdictJson.read("verdict", json).orElseThrow();
    assertThat(GearRules.of(given.rules()).recompute(given.assessment(), stored))
        .isEqualTo(new Recompute.Same(stored));
  }

  @Property
  void aVerdictOfInventedRulesReadsTheSame(
      @ForAll("assessments") Assessment assessment, @ForAll("days") LocalDate asOf) {
    readsTheSame(GearRules.of(InventedRules.rules()).assess(assessment, asOf));
  }

  @Property(tries = 30)
  void aTraceIsReadAndNotKept(@ForAll("cases") ShippedCase given) {
    List<Row> trace = GearRules.of(given.rules()).trace(given.assessment(), given.asOf());
    String json = VerdictJson.writeWithTrace(given.verdict(), trace);
    assertThat(VerdictJson.read("verdict", json)).isEqualTo(new Checked.Sound<>(given.verdict()));
  }

  /** No field may be missing, stand where none is known, or be nothing: each time it is refused. */
  @Property
  void aFieldMoreOrLessIsNeverTheSameVerdict(
      @ForAll("cases") ShippedCase given, @ForAll int which, @ForAll boolean more)
      throws IOException {
    Verdict verdict = given.verdict();
    JsonNode tree = MAPPER.readTree(VerdictJson.write(verdict));
    List<ObjectNode> objects = new ArrayList<>();
    collect(tree, objects);
    ObjectNode object = objects.get(Math.floorMod(which, objects.size()));
    if (more) {
      object.put("nobodyKnowsThis", 1);
    } else if (!object.isEmpty()) {
      List<String> names = new ArrayList<>();
      object.fieldNames().forEachRemaining(names::add);
      object.set(names.get(Math.floorMod(which, names.size())), NullNode.getInstance());
    }
    if (!MAPPER.readTree(VerdictJson.write(verdict)).equals(tree)) {
      Checked<Verdict, JsonFault> read = VerdictJson.read("verdict", tree.toString());
      assertThat(read).isInstanceOf(Checked.Refused.class);
      ((Checked.Refused<Verdict, JsonFault>) read)
          .faults()
          .forEach(fault -> assertThat(fault.pointer()).startsWith("/"));
    }
  }

  /** All objects but the one whose names are files, where any name may stand. */
  private static void collect(JsonNode node, List<ObjectNode> objects) {
    if (node instanceof ObjectNode object) {
      objects.add(object);
      object
          .fields()
          .forEachRemaining(
              field -> {
                if (!field.getKey().equals("revisions")) {
                  collect(field.getValue(), objects);
                }
              });
    } else if (node instanceof ArrayNode array) {
      array.forEach(child -> collect(child, objects));
    }
  }
}
