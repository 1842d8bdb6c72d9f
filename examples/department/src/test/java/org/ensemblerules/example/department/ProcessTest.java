package org.ensemblerules.example.department;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.ensemblerules.example.department.demo.DemoDepartment;
import org.ensemblerules.tables.AssessmentJson;
import org.ensemblerules.tables.ShippedRules;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What only a process of its own can show: its streams, its memory, its end. */
class ProcessTest {
  @TempDir private Path folder;

  private static ProcessBuilder program(List<String> jvm, String... args) {
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.addAll(jvm);
    command.addAll(List.of("-cp", System.getProperty("java.class.path")));
    command.add(Main.class.getName());
    command.addAll(List.of(args));
    return new ProcessBuilder(command);
  }

  private Path gear(int times) throws IOException {
    StringBuilder text = new StringBuilder();
    String line =
        AssessmentJson.write(DemoDepartment.elements(ShippedRules.standard()).get(0).assessment());
    for (int i = 0; i < times; i++) {
      text.append(line).append('\n');
    }
    return Files.writeString(folder.resolve("gear.jsonl"), text);
  }

  private static int end(Process process) throws InterruptedException {
    assertThat(process.waitFor(120, TimeUnit.SECONDS)).isTrue();
    return process.exitValue();
  }

  @Test
  void theFileThatIsTheStandardInputIsNotWrittenOver() throws Exception {
    assumeTrue(Files.exists(Path.of("/dev/stdin")));
    Path gear = gear(1);
    String before = Files.readString(gear);
    Process process =
        program(List.of(), "assess", "-", "--out", gear.toString())
            .redirectInput(gear.toFile())
            .start();

    assertThat(end(process)).isEqualTo(2);
    assertThat(new String(process.getErrorStream().readAllBytes(), StandardCharsets.UTF_8))
        .contains("--out: found the file that is read");
    assertThat(gear).hasContent(before);
  }

  @Test
  void aReaderThatGoesAwayEndsTheRunQuietly() throws Exception {
    Path gear = gear(20_000);
    Process process =
        program(List.of(), "assess", gear.toString(), "--as-of", "2026-11-25")
            .redirectError(folder.resolve("err").toFile())
            .start();
    assertThat(process.getInputStream().read()).isEqualTo('{');
    process.getInputStream().close();
    long start = System.nanoTime();

    assertThat(end(process)).isEqualTo(3);
    assertThat(Files.readString(folder.resolve("err")))
        .doesNotContain("cannot write")
        .doesNotContain("\tat ");
    assertThat(TimeUnit.NANOSECONDS.toSeconds(System.nanoTime() - start)).isLessThan(30);
  }

  @Test
  void aFullDiskBehindTheStandardOutputIsNamed() throws Exception {
    assumeTrue(Files.exists(Path.of("/dev/full")));
    Process process =
        program(List.of(), "assess", gear(1).toString())
            .redirectOutput(new File("/dev/full"))
            .start();

    assertThat(end(process)).isEqualTo(3);
    assertThat(new String(process.getErrorStream().readAllBytes(), StandardCharsets.UTF_8))
        .contains("cannot write the standard output: ");
  }

  @Test
  void tooLittleMemoryEndsWithFourAndSaysSo() throws Exception {
    Process process = program(List.of("-Xmx12m"), "assess", gear(1).toString()).start();

    assertThat(end(process)).isEqualTo(4);
    assertThat(new String(process.getErrorStream().readAllBytes(), StandardCharsets.UTF_8))
        .contains("out of memory");
  }
}
