package org.ensemblerules.tables;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.InputFormat;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;

/** The shipped schemas, and what a validator of another project makes of them. */
public final class TableSchemas {
  /** What the id of each schema begins with. */
  private static final String IDS = "https://ensemblerules.example/schema/";

  private static final String FOLDER = "classpath:org/ensemblerules/tables/schema/";
  // The ids are names; nothing is fetched.
  private static final SchemaRegistry REGISTRY =
      SchemaRegistry.withDefaultDialect(
          SpecificationVersion.DRAFT_2020_12,
          builder -> builder.schemaIdResolvers(ids -> ids.mapPrefix(IDS, FOLDER)));

  private TableSchemas() {}

  public static List<String> names() {
    return List.of(
        "adoptions",
        "age-limits",
        "anatomy",
        "care-limits",
        "care-routes",
        "cautions",
        "check-conditions",
        "check-limits",
        "checks",
        "cleaning-results",
        "common",
        "criteria",
        "custody-steps",
        "defects",
        "destinations",
        "disposal-routes",
        "edition",
        "editions",
        "hydrostatic",
        "index",
        "intervals",
        "permissions",
        "pfas-laws",
        "record-items",
        "repair-limits",
        "returns",
        "small-sample-factors",
        "sources",
        "strength-discards",
        "strength-methods",
        "strength-requirements",
        "stronger-checks",
        "tasks",
        "vocabulary",
        "wash-bounds");
  }

  public static JsonNode text(String name) {
    String path = "schema/" + name + ".schema.json";
    try (InputStream stream =
        Objects.requireNonNull(ShippedTables.class.getResourceAsStream(path), path)) {
      return new ObjectMapper().readTree(stream);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Validates a text and returns the validator's objections. */
  public static List<String> objections(String schema, String text) {
    return REGISTRY
        .getSchema(SchemaLocation.of(FOLDER + schema + ".schema.json"))
        .validate(text, InputFormat.JSON)
        .stream()
        .map(error -> error.getInstanceLocation() + ": " + error.getMessage())
        .toList();
  }

  /** The names of each enumeration in a schema, by the schema and the place in it. */
  public static Map<String, List<String>> enumerations(String schema) {
    Map<String, List<String>> found = new HashMap<>();
    enumerations(text(schema), schema + "#", found);
    return found;
  }

  private static void enumerations(JsonNode node, String at, Map<String, List<String>> found) {
    if (node.path("enum").isArray()) {
      found.put(at, node.path("enum").valueStream().map(JsonNode::textValue).toList());
    }
    node.properties()
        .forEach(field -> enumerations(field.getValue(), at + "/" + field.getKey(), found));
    for (int i = 0; node.isArray() && i < node.size(); i++) {
      enumerations(node.get(i), at + "/" + i, found);
    }
  }

  /** The objects in a schema that do not say whether they may hold other fields. */
  public static List<JsonNode> openObjects(String schema) {
    return objects(text(schema))
        .filter(object -> object.path("additionalProperties").isMissingNode())
        .toList();
  }

  private static Stream<JsonNode> objects(JsonNode node) {
    Stream<JsonNode> below = node.valueStream().flatMap(TableSchemas::objects);
    return node.path("type").asText().equals("object")
        ? Stream.concat(Stream.of(node), below)
        : below;
  }

  /** What the meta-schema of the specification, JSON Schema 2020-12, objects to in a schema. */
  public static List<String> objectionsToItsForm(String schema) {
    return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
        .getSchema(SchemaLocation.of("https://json-schema.org/draft/2020-12/schema"))
        .validate(text(schema))
        .stream()
        .map(Object::toString)
        .toList();
  }
}
