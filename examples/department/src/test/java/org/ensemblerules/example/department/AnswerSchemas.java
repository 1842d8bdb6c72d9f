package org.ensemblerules.example.department;

import static org.assertj.core.api.Assertions.assertThat;

import org.ensemblerules.tables.TableSchemas;

/** What a validator of another project makes of the lines that the program writes. */
final class AnswerSchemas {
  private AnswerSchemas() {}

  /** Holds each line of a text against a schema. */
  static void valid(String schema, String lines) {
    assertThat(lines.lines()).isNotEmpty();
    lines
        .lines()
        .forEach(line -> assertThat(TableSchemas.objections(schema, line)).as(line).isEmpty());
  }
}
