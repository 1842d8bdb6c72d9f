package org.ensemblerules.tables;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.ensemblerules.source.Checked;
import org.ensemblerules.tables.message.JsonFault;
import org.ensemblerules.verdict.Assessment;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every bad assessment of the folder is refused with the very faults that stand beside it, each
 * with its code on a line.
 */
class BadAssessmentsTest {
  /** What no schema can see: not JSON at all, fields given twice, days that no calendar has. */
  private static final Set<String> BEYOND_SCHEMAS =
      Set.of(
          "bare-nan",
          "comma-after-the-end",
          "comma-before-the-bracket",
          "comment",
          "credential-ends-before-it-begins",
          "cut-off",
          "duplicate-field",
          "duplicate-field-equal",
          "extent-digits",
          "half-a-character",
          "leading-zero",
          "long-number",
          "no-such-day",
          "not-json",
          "nothing",
          "single-quotes",
          "text-after-the-end");

  static List<String> names() throws IOException {
    try (Stream<Path> files = Files.list(folder())) {
      return files
          .map(file -> file.getFileName().toString())
          .filter(name -> name.endsWith(".json"))
          .map(name -> name.substring(0, name.length() - ".json".length()))
          .sorted()
          .toList();
    }
  }

  @ParameterizedTest
  @MethodSource("names")
  void isRefusedWithItsFaults(String name) throws IOException {
    Checked<Assessment, JsonFault> loaded = AssessmentJson.read(name + ".json", text(name));

    assertThat(loaded).isInstanceOf(Checked.Refused.class);
    String faults =
        ((Checked.Refused<Assessment, JsonFault>) loaded)
            .faults().stream()
                .map(fault -> fault.code() + " " + fault)
                .collect(Collectors.joining("\n"));
    assertThat(faults).isEqualToNormalizingNewlines(expected(name));
  }

  @ParameterizedTest
  @MethodSource("names")
  void isRefusedByTheSchemaAsWell(String name) throws IOException {
    if (!BEYOND_SCHEMAS.contains(name)) {
      assertThat(TableSchemas.objections("assessment", text(name))).isNotEmpty();
    }
  }

  private static String text(String name) throws IOException {
    return Files.readString(folder().resolve(name + ".json"));
  }

  private static String expected(String name) throws IOException {
    Path file = folder().resolve(name + ".faults");
    return Files.exists(file) ? Files.readString(file).strip() : "";
  }

  private static Path folder() {
    String name = "assessments/bad";
    try {
      return Path.of(
          Objects.requireNonNull(BadAssessmentsTest.class.getResource(name), name).toURI());
    } catch (URISyntaxException e) {
      throw new IllegalStateException(e);
    }
  }
}
