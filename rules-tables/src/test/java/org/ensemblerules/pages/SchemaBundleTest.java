package org.ensemblerules.pages;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Each schema has an id, and one file bundles all of them, so that a program needs no other. */
class SchemaBundleTest {
  private static final Path FOLDER =
      Path.of("src", "main", "resources", "org", "ensemblerules", "tables", "schema");
  private static final String IDS = "https://ensemblerules.example/schema/";
  private static final String END = ".schema.json";
  private static final String BUNDLE = "bundle" + END;
  private static final ObjectMapper MAPPER = new ObjectMapper();

  static List<String> files() {
    try (Stream<Path> files = Files.list(FOLDER)) {
      return files
          .map(file -> file.getFileName().toString())
          .filter(file -> file.endsWith(END) && !file.equals(BUNDLE))
          .sorted()
          .toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static JsonNode schema(String file) {
    try {
      return MAPPER.readTree(FOLDER.resolve(file).toFile());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @Test
  void eachSchemaHasTheIdOfItsFile() {
    assertThat(files())
        .hasSizeGreaterThan(50)
        .allSatisfy(file -> assertThat(schema(file).path("$id").textValue()).isEqualTo(IDS + file));
  }

  /** One line for each schema, so that a change shows where it is. */
  private static String bundle() {
    return files().stream()
        .map(file -> "    \"" + file + "\": " + schema(file))
        .collect(
            Collectors.joining(
                ",\n",
                """
                {
                  "$schema": "https://json-schema.org/draft/2020-12/schema",
                  "$id": "%s",
                  "title": "All schemas in one file",
                  "description": "Each by the name of its file and with its own id. Written from the other files of this folder.",
                  "$defs": {
                """
                    .formatted(IDS + BUNDLE),
                "\n  }\n}\n"));
  }

  @Test
  void theBundleHasAllOfThemAsTheyAre() throws IOException {
    if (Boolean.getBoolean("docs.update")) {
      Files.writeString(FOLDER.resolve(BUNDLE), bundle());
    }
    assertThat(FOLDER.resolve(BUNDLE))
        .as("differs from the other schemas; write it anew with -Ddocs.update=true")
        .hasContent(bundle());
  }

  /** Whatever one schema names of another is found in the bundle, and nothing outside is asked. */
  @ParameterizedTest
  @MethodSource("files")
  void eachSchemaWorksFromTheBundleAlone(String file) {
    ObjectNode whole = (ObjectNode) schema(BUNDLE);
    whole.put("$ref", file);
    Schema schema =
        SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12).getSchema(whole);
    schema.initializeValidators();
    boolean describesText = schema(file).has("type") || schema(file).has("oneOf");
    assertThat(schema.validate("7", InputFormat.JSON).isEmpty()).isEqualTo(!describesText);
  }
}
