package org.ensemblerules.example.department;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.InputFormat;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.util.List;

/** The shipped schemas, and what a validator of another project makes of a text. */
final class AnswerSchemas {
  private static final String IDS = "https://ensemblerules.example/schema/";
  private static final String FOLDER = "classpath:org/ensemblerules/tables/schema/";
  // The ids are names; nothing is fetched.
  private static final SchemaRegistry REGISTRY =
      SchemaRegistry.withDefaultDialect(
          SpecificationVersion.DRAFT_2020_12,
          builder -> builder.schemaIdResolvers(ids -> ids.mapPrefix(IDS, FOLDER)));

  private AnswerSchemas() {}

  /** Holds each line of a text against a schema. */
  static void valid(String schema, String lines) {
    assertThat(lines.lines()).isNotEmpty();
    lines.lines().forEach(line -> assertThat(objections(schema, line)).as(line).isEmpty());
  }

  static List<String> objections(String schema, String line) {
    return REGISTRY
        .getSchema(SchemaLocation.of(FOLDER + schema + ".schema.json"))
        .validate(line, InputFormat.JSON)
        .stream()
        .map(error -> error.getInstanceLocation() + ": " + error.getMessage())
        .toList();
  }
}
