package org.ensemblerules.example.department;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A consumer in another language, of another example, where there is something to run it. */
@Tag("slow")
class FormTest {
  private static final Path SCHEMAS =
      Path.of("..", "..", "rules-tables", "src", "main", "resources")
          .resolve("org/ensemblerules/tables/schema/bundle.schema.json");

  @TempDir private Path folder;

  private String run(String... command) throws Exception {
    Path out = folder.resolve("out");
    Path err = folder.resolve("err");
    ProcessBuilder builder =
        new ProcessBuilder(command).redirectOutput(out.toFile()).redirectError(err.toFile());
    builder.environment().put("PYTHONIOENCODING", "utf-8");
    Process process = builder.start();
    assertThat(process.waitFor(300, TimeUnit.SECONDS)).isTrue();
    assertThat(process.exitValue()).as(Files.readString(err)).isZero();
    return Files.readString(out);
  }

  private static boolean hasPython() throws InterruptedException {
    try {
      return new ProcessBuilder("python3", "-c", "import sys; assert sys.version_info >= (3, 8)")
              .start()
              .waitFor()
          == 0;
    } catch (IOException e) {
      return false;
    }
  }

  @Test
  void drawsTheFieldsOfAFormAndReadsVerdictsFromAnOpenProcess() throws Exception {
    assumeTrue(hasPython(), "needs python3");
    String text =
        run(
            "python3",
            Path.of("..", "form", "form.py").toString(),
            "--schemas",
            SCHEMAS.toString(),
            "--",
            Path.of(System.getProperty("java.home"), "bin", "java").toString(),
            // A short run needs no more than the first compiler.
            "-XX:TieredStopAtLevel=1",
            "-XX:+UseSerialGC",
            "-cp",
            System.getProperty("java.class.path"),
            Main.class.getName());
    List<String> lines = text.lines().toList();
    assertThat(lines).allMatch(line -> line.length() <= 120);
    assertThat(lines)
        .containsSubsequence(
            "FORM: structural coat   (* must be filled in)",
            "    inService: A date as a label or a record gives it: to the day, the month or the"
                + " year, or UNKNOWN.",
            "  fabric of the outer shell (required)",
            "FORM: structural helmet   (* must be filled in)",
            "  helmet shell (required)",
            "VERDICTS of an open process");
    assertThat(text).contains("ADVANCED INSPECTION, 37 criteria", "length in mm, cm, m, in, ft");
    assertThat(lines.subList(lines.indexOf("VERDICTS of an open process"), lines.size()))
        .anyMatch(line -> line.matches("  line 1, 1-01-COAT, \\d+ ms: IN In service; .*"))
        .anyMatch(line -> line.matches("  line 4, 1-01-COAT, \\d+ ms: .*NOT_ALLOWED.*kind.*"))
        .anyMatch(line -> line.matches("  line 7, .*: IN In service; .*"));
  }
}
