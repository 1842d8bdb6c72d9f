package org.ensemblerules.audit;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.ensemblerules.GearRules;
import org.ensemblerules.gates.PackageExamples;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.tables.FixtureSets;
import org.ensemblerules.testkit.FitGear;
import org.ensemblerules.testkit.FrozenRules;
import org.ensemblerules.testkit.GearCase;
import org.ensemblerules.testkit.OtherRules;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Each package and the door show an example, which compiles and runs. */
class ExamplesTest {
  private static final Path SOURCES = Path.of("src", "main", "java");
  private static final Path EXAMPLES =
      Path.of("src", "test", "java", "org", "ensemblerules", "audit", "Examples.java");

  static List<Path> descriptions() throws IOException {
    try (Stream<Path> files = Files.walk(SOURCES)) {
      List<Path> all = files.filter(PackageExamples::showsOne).toList();
      assertThat(all).anyMatch(file -> file.endsWith("AuditedRules.java"));
      return all;
    }
  }

  @ParameterizedTest
  @MethodSource("descriptions")
  void whatIsShownIsCompiled(Path description) throws IOException {
    PackageExamples.isCompiled(description, EXAMPLES);
  }

  @Test
  void eachOfThemRuns() {
    GearCase coat = FitGear.fit(ElementKind.COAT);
    PrintStream before = System.out;
    ByteArrayOutputStream printed = new ByteArrayOutputStream();
    System.setOut(new PrintStream(printed, true, StandardCharsets.UTF_8));
    try {
      Examples.run(
          GearRules.of(FrozenRules.rules()),
          GearRules.of(OtherRules.intervals(row -> OtherRules.interval(row, 6, 6))),
          FixtureSets.sound(),
          coat.assessment(),
          coat.asOf().plusMonths(7));
    } finally {
      System.setOut(before);
    }
    assertThat(printed.toString(StandardCharsets.UTF_8))
        .contains("TIGHTENED intervals: ", "due sooner");
  }
}
