package org.ensemblerules.javadoc;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.ensemblerules.defect.DefectKind;
import org.ensemblerules.defect.Extent;
import org.ensemblerules.defect.Finding;
import org.ensemblerules.defect.FindingId;
import org.ensemblerules.effect.EntityKind;
import org.ensemblerules.gates.PackageExamples;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.gear.Site;
import org.ensemblerules.gear.Use;
import org.ensemblerules.issue.KeptElement;
import org.ensemblerules.issue.SafetyNotice;
import org.ensemblerules.issue.Whereabouts;
import org.ensemblerules.tables.AssessmentJson;
import org.ensemblerules.tables.ShippedRules;
import org.ensemblerules.testkit.ShippedGear;
import org.ensemblerules.verdict.Assessment;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Each package that is exported shows an example, which compiles and runs. */
class ExamplesTest {
  private static final Path EXAMPLES =
      Path.of("src", "test", "java", "org", "ensemblerules", "javadoc", "Examples.java");

  private static final SafetyNotice NOTICE =
      new SafetyNotice(
          "N-1",
          SafetyNotice.Asks.INSPECT_FIRST,
          Set.of(),
          ShippedGear.MAKER,
          Set.of(),
          Set.of(),
          MarkedDate.parse("2020"),
          MarkedDate.parse("2022"));

  /** The descriptions of what both artifacts export to everyone. */
  static List<Path> descriptions() throws IOException {
    List<Path> all = new ArrayList<>(ExportedSources.of(Path.of("..", "rules-core")));
    all.addAll(ExportedSources.of(Path.of("")));
    assertThat(all).hasSizeGreaterThan(20);
    return all.stream().map(folder -> folder.resolve("package-info.java")).toList();
  }

  @ParameterizedTest
  @MethodSource("descriptions")
  void eachPackageShowsWhatIsCompiled(Path description) throws IOException {
    PackageExamples.isCompiled(description, EXAMPLES);
  }

  /** The classes that show one, the doors among them. */
  static List<Path> classes() throws IOException {
    List<Path> folders = new ArrayList<>(ExportedSources.of(Path.of("..", "rules-core")));
    folders.addAll(ExportedSources.of(Path.of("")));
    List<Path> all = new ArrayList<>();
    for (Path folder : folders) {
      try (Stream<Path> files = Files.list(folder)) {
        files
            .filter(PackageExamples::showsOne)
            .filter(file -> !file.endsWith("package-info.java"))
            .forEach(all::add);
      }
    }
    assertThat(all.stream().map(file -> file.getFileName().toString()))
        .contains("GearRules.java", "DepartmentRules.java", "LaboratoryRules.java");
    return all;
  }

  @ParameterizedTest
  @MethodSource("classes")
  void eachClassShowsWhatIsCompiled(Path shown) throws IOException {
    PackageExamples.isCompiled(shown, EXAMPLES.resolveSibling("ClassExamples.java"));
  }

  @Test
  void eachOfThemRuns() {
    var coat = new ShippedGear.Kind(ElementKind.COAT, Use.STRUCTURAL);
    Assessment fit = ShippedGear.fit(ShippedRules.standard().rules(), coat).build();
    Finding torn =
        new Finding(
            new FindingId("F1"),
            Site.parse("FABRIC@OUTER_SHELL"),
            "",
            DefectKind.TEAR,
            new Extent.NotMeasured(),
            MarkedDate.of(LocalDate.of(2024, 6, 1)));
    PrintStream before = System.out;
    ByteArrayOutputStream printed = new ByteArrayOutputStream();
    System.setOut(new PrintStream(printed, true, StandardCharsets.UTF_8));
    try {
      Examples.run(
          fit,
          List.of(new KeptElement(fit, Whereabouts.unknown())),
          torn,
          ShippedGear.trained(EntityKind.VERIFIED_ORGANIZATION),
          NOTICE,
          AssessmentJson.write(fit));
      ClassExamples.run(
          fit,
          List.of(new KeptElement(fit, Whereabouts.unknown())),
          NOTICE,
          LocalDate.of(2026, 11, 25),
          AssessmentJson.write(fit) + "\nno json\n");
    } finally {
      System.setOut(before);
    }
    assertThat(printed.toString(StandardCharsets.UTF_8))
        .contains("is overdue", " rests on ", "turnouts.jsonl:2");
  }
}
