package org.ensemblerules.tables;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import org.ensemblerules.source.Checked;
import org.ensemblerules.tables.message.JsonFault;
import org.ensemblerules.tables.set.LoadedTables;
import org.ensemblerules.tables.set.TableFiles;
import org.ensemblerules.tables.set.TableRevision;

/** Laws of loading, on the sound set with one value of one file changed at random. */
class MutatedSetProperties {
  private static final ObjectMapper MAPPER = new ObjectMapper();
  private static final List<String> VALUES =
      List.of(
          "null",
          "true",
          "false",
          "0",
          "-1",
          "1",
          "1.50",
          "1e999",
          "\"\"",
          "\" \"",
          "\"COAT\"",
          "\"FROZEN_3\"",
          "\"rip-small\"",
          "\"\\ud83d\\ude92\"",
          "\"\\ud83d\"",
          "[]",
          "[null]",
          "{}",
          "{\"kind\": \"NOTE\"}");

  /** A file of the set, the table that it is, and its text after the change. */
  record Mutant(String path, String schema, String text) {}

  @Provide
  Arbitrary<Mutant> mutants() {
    return Arbitraries.of(files())
        .flatMap(
            path ->
                Arbitraries.integers()
                    .between(0, 10_000)
                    .flatMap(
                        place ->
                            Arbitraries.of(VALUES)
                                .injectNull(0.2)
                                .map(value -> mutate(path, place, value))));
  }

  @Property(tries = 200)
  void loadingEndsInAResultWhoseFaultsPointAtSomething(@ForAll("mutants") Mutant mutant)
      throws IOException {
    TableFiles files = with(mutant);
    if (TableLoader.load(files) instanceof Checked.Refused<LoadedTables, JsonFault> refused) {
      for (JsonFault fault : refused.faults()) {
        assertThat(files.read(fault.source())).as(fault.toString()).isPresent();
        JsonNode text = MAPPER.readTree(files.read(fault.source()).orElseThrow());
        assertThat(text.at(fault.pointer()).isMissingNode()).as(fault.toString()).isFalse();
        assertThat(fault.found()).isNotBlank();
        assertThat(fault.allowed()).isNotBlank();
      }
    }
  }

  @Property(tries = 200)
  void whatTheSchemasRefuseTheLoaderRefuses(@ForAll("mutants") Mutant mutant) {
    List<String> objections = TableSchemas.objections(mutant.schema(), mutant.text());
    if (!objections.isEmpty()) {
      assertThat(TableLoader.load(with(mutant)))
          .as(objections.toString())
          .isInstanceOf(Checked.Refused.class);
    }
  }

  @Property(tries = 100)
  void aFileCutOffAnywhereIsRefused(
      @ForAll("mutants") Mutant mutant, @ForAll @IntRange(min = 2, max = 2_000) int cut) {
    String text = mutant.text().strip();
    String rest = text.substring(0, Math.max(0, text.length() - cut));
    assertThat(TableLoader.load(with(new Mutant(mutant.path(), mutant.schema(), rest))))
        .isInstanceOf(Checked.Refused.class);
  }

  private static TableFiles with(Mutant mutant) {
    TableFiles sound = TableFiles.in(FixtureSets.sound());
    return path ->
        path.equals(mutant.path())
            ? Optional.of(mutant.text().getBytes(StandardCharsets.UTF_8))
            : sound.read(path);
  }

  private static List<String> files() {
    return TableLoader.load(TableFiles.in(FixtureSets.sound())).orElseThrow().revisions().stream()
        .map(TableRevision::file)
        .toList();
  }

  /** Puts a value in one place of a file, or takes the place out if the value is null. */
  private static Mutant mutate(String path, int place, String value) {
    try {
      byte[] bytes = TableFiles.in(FixtureSets.sound()).read(path).orElseThrow();
      JsonNode text = MAPPER.readTree(bytes);
      String schema = text.get("table").textValue();
      List<Runnable> changes = new ArrayList<>();
      collect(text, value == null ? null : MAPPER.readTree(value), changes);
      changes.get(place % changes.size()).run();
      return new Mutant(path, schema, MAPPER.writeValueAsString(text));
    } catch (IOException e) {
      throw new IllegalStateException(e);
    }
  }

  private static void collect(JsonNode node, JsonNode value, List<Runnable> changes) {
    if (node instanceof ObjectNode object) {
      List<String> names = new ArrayList<>();
      object.fieldNames().forEachRemaining(names::add);
      for (String name : names) {
        changes.add(() -> change(object, name, value));
        changes.add(() -> object.set(name + "x", object.remove(name)));
        collect(object.get(name), value, changes);
      }
    } else if (node instanceof ArrayNode array) {
      for (int i = 0; i < array.size(); i++) {
        int index = i;
        changes.add(() -> change(array, index, value));
        changes.add(() -> array.add(array.get(index)));
        collect(array.get(i), value, changes);
      }
    }
  }

  private static void change(ObjectNode object, String name, JsonNode value) {
    if (value == null) {
      object.remove(name);
    } else {
      object.set(name, value);
    }
  }

  private static void change(ArrayNode array, int index, JsonNode value) {
    if (value == null) {
      array.remove(index);
    } else {
      array.set(index, value);
    }
  }
}
