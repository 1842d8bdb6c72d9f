package org.ensemblerules.tables;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.ensemblerules.tables.set.OverlayFile;
import org.ensemblerules.tables.set.TableFiles;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The schemas against an independent validator, and the files against the schemas. */
class SchemaTest {
  private static final ObjectMapper MAPPER = new ObjectMapper();

  @Test
  void theSoundSetIsValid() throws IOException {
    Map<String, String> schemas = schemas(TableFiles.in(FixtureSets.sound()));
    assertThat(schemas).hasSize(45);
    assertThat(new TreeSet<>(schemas.values())).hasSize(33);
    assertValid(TableFiles.in(FixtureSets.sound()), schemas);
  }

  @Test
  void theShippedSetIsValid() throws IOException {
    Map<String, String> schemas = schemas(ShippedTables.files());
    assertThat(schemas).hasSizeGreaterThan(20);
    assertValid(ShippedTables.files(), schemas);
  }

  @Test
  void theShippedOverlaysAndTheExamplesAreValid() throws IOException {
    List<String> texts = new ArrayList<>();
    for (OverlayFile file : ShippedOverlays.all()) {
      texts.add(text(ShippedTables.files(), file.name()));
    }
    for (String name : List.of("exampleton.json", "maker-two-pattern-cs.json")) {
      texts.add(Files.readString(Path.of("..", "examples", "department", "overlays", name)));
    }
    assertThat(texts)
        .hasSize(6)
        .allSatisfy(text -> assertThat(TableSchemas.objections("overlay", text)).isEmpty());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "bad-key",
        "empty-list",
        "expected-fields-of-another-kind",
        "limit-without-bound",
        "logs-out-of-range",
        "path-out-of-the-set",
        "peaks-out-of-range",
        "removes-without-carries-over",
        "two-limits",
        "unknown-condition",
        "unknown-direction",
        "unknown-enum-name",
        "unknown-field",
        "unknown-site",
        "unknown-unit",
        "wrong-type",
        "wrong-type-everywhere"
      })
  void whatIsBrokenInFormTheSchemasRefuseToo(String name) throws IOException {
    TableFiles files = FixtureSets.brokenBy(name);
    Set<String> objections = new TreeSet<>();
    for (Map.Entry<String, String> each : schemas(TableFiles.in(FixtureSets.sound())).entrySet()) {
      objections.addAll(TableSchemas.objections(each.getValue(), text(files, each.getKey())));
    }
    assertThat(objections).isNotEmpty();
  }

  private static void assertValid(TableFiles files, Map<String, String> schemas)
      throws IOException {
    for (Map.Entry<String, String> each : schemas.entrySet()) {
      assertThat(TableSchemas.objections(each.getValue(), text(files, each.getKey())))
          .as(each.getKey())
          .isEmpty();
    }
  }

  /** Names the schema of each file that the index leads to. */
  private static Map<String, String> schemas(TableFiles files) throws IOException {
    Map<String, String> schemas = new LinkedHashMap<>();
    schemas.put("index.json", "index");
    schemas.put("sources.json", "sources");
    schemas.put("editions.json", "editions");
    for (JsonNode folder : MAPPER.readTree(text(files, "index.json")).get("folders")) {
      addFolder(files, folder.textValue(), schemas);
    }
    return schemas;
  }

  private static void addFolder(TableFiles files, String folder, Map<String, String> schemas)
      throws IOException {
    schemas.put(folder + "/edition.json", "edition");
    JsonNode edition = MAPPER.readTree(text(files, folder + "/edition.json"));
    for (JsonNode subject : edition.get("tables")) {
      for (JsonNode file : subject) {
        String path = folder + "/" + file.textValue();
        schemas.put(path, MAPPER.readTree(text(files, path)).get("table").textValue());
      }
    }
  }

  private static String text(TableFiles files, String path) throws IOException {
    return new String(files.read(path).orElseThrow(), StandardCharsets.UTF_8);
  }
}
