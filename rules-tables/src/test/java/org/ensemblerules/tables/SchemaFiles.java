package org.ensemblerules.tables;

import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.networknt.schema.Error;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Objects;

/** The JSON Schemas of the jar, and a validator that is none of ours. */
final class SchemaFiles {
  static final JsonMapper EXACT =
      JsonMapper.builder().enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS).build();

  private static final SchemaRegistry REGISTRY =
      SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12);

  private SchemaFiles() {}

  static Schema schema(String name) {
    return REGISTRY.getSchema(
        SchemaLocation.of("classpath:org/ensemblerules/tables/schema/" + name + ".schema.json"));
  }

  static List<Error> errors(Schema schema, String json) {
    try {
      return schema.validate(EXACT.readTree(json));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static JsonNode tree(String name) {
    String file = "schema/" + name + ".schema.json";
    try (InputStream stream = AssessmentJson.class.getResourceAsStream(file)) {
      return EXACT.readTree(Objects.requireNonNull(stream, file));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
