package org.ensemblerules.readme;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.ensemblerules.GearRules;
import org.ensemblerules.tables.AssessmentJson;
import org.ensemblerules.tables.ShippedRules;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What the README shows is what compiles and runs. */
class ReadmeTest {
  private static final Path README = Path.of("..", "README.md");
  private static final Path BUILDING =
      Path.of("src", "test", "java", "org", "ensemblerules", "readme", "Building.java");
  private static final Path EMBEDDING =
      Path.of("src", "test", "java", "org", "ensemblerules", "readme", "Embedding.java");

  @Test
  void theFiveLinesAreTheOnesThatAreCompiled() throws IOException {
    assertThat(between(README, "```java", "```"))
        .hasSize(5)
        .isEqualTo(between(EMBEDDING, "// README begins", "// README ends"));
  }

  @Test
  void theFiveLinesRun() {
    PrintStream before = System.out;
    ByteArrayOutputStream printed = new ByteArrayOutputStream();
    System.setOut(new PrintStream(printed, true, StandardCharsets.UTF_8));
    try {
      Embedding.run("{\"element\":{\"id\":\"C-1\",\"kind\":\"COAT\",\"use\":\"STRUCTURAL\"}}");
    } finally {
      System.setOut(before);
    }
    assertThat(printed.toString(StandardCharsets.UTF_8))
        .startsWith("OUT EVALUATE")
        .contains("no inspection that counts is on record: EVALUATE by ADVANCED_INSPECTION");
  }

  @ParameterizedTest
  @CsvSource({
    "building, // README builds, // README has built",
    "looked over, // README looks over, // README has looked over"
  })
  void theRecordIsBuiltAsItIsCompiled(String block, String begins, String ends) throws IOException {
    List<String> shown =
        between(README, "<!-- " + block + ": compiled and compared by ReadmeTest -->", "```");
    assertThat(shown.subList(1, shown.size()))
        .isNotEmpty()
        .isEqualTo(between(BUILDING, begins, ends));
  }

  /** Whoever judges one clean helmet from nothing needs to know this many names. */
  @Test
  void aCleanHelmetTakesTwelveImports() throws IOException {
    assertThat(Files.readAllLines(BUILDING).stream().filter(line -> line.startsWith("import ")))
        .hasSize(12)
        .noneMatch(line -> line.contains("*"));
  }

  /** The record in JSON is the one that is built, and the README says what both come to. */
  @Test
  void theRecordInJsonIsTheOneThatIsBuilt() throws IOException {
    List<String> block = between(README, "<!-- record: read and judged by ReadmeTest -->", "```");
    String json = String.join("\n", block.subList(1, block.size()));
    GearRules rules = ShippedRules.standard();
    Building.Answers built = Building.run(rules);
    assertThat(
            rules.assess(
                AssessmentJson.read("README.md", json).orElseThrow(), LocalDate.of(2026, 11, 25)))
        .isEqualTo(built.before());
    assertThat(Files.readString(README))
        .contains(
            "Both answer `" + built.before().service() + " " + built.before().headline() + "`",
            "the answer is `" + built.after().service() + " " + built.after().headline() + "`");
  }

  @Test
  void itIsInstalledBeforeItIsNamed() throws IOException {
    assertThat(Files.readString(README))
        .contains("\nmvn -q -B -ntp -DskipTests install\n```\n\n```xml\n<dependency>");
  }

  @Test
  void theTestCommandIsTheOneThatAContinuousBuildRuns() throws IOException {
    assertThat(Files.readString(README)).contains("\nmvn -B -ntp verify\n");
    assertThat(Files.readString(Path.of("..", ".ci", "run"))).contains("\nmvn -B -ntp verify\n");
  }

  private static List<String> between(Path file, String begins, String ends) throws IOException {
    return Files.readAllLines(file).stream()
        .map(String::strip)
        .dropWhile(line -> !line.equals(begins))
        .skip(1)
        .takeWhile(line -> !line.equals(ends))
        .toList();
  }
}
