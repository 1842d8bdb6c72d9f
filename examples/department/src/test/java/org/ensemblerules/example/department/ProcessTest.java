package org.ensemblerules.example.department;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.File;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.ensemblerules.example.department.demo.DemoDepartment;
import org.ensemblerules.tables.AssessmentJson;
import org.ensemblerules.tables.ShippedRules;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What only a process of its own can show: its streams, its memory, its end. */
@Tag("slow")
class ProcessTest {
  @TempDir private Path folder;

  private static ProcessBuilder program(List<String> jvm, String... args) {
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    // A short run needs no more than the first compiler.
    command.addAll(List.of("-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC"));
    command.addAll(jvm);
    command.addAll(List.of("-cp", System.getProperty("java.class.path")));
    command.add(Main.class.getName());
    command.addAll(List.of(args));
    return new ProcessBuilder(command);
  }

  private Path gear() throws IOException {
    String line =
        AssessmentJson.write(DemoDepartment.elements(ShippedRules.standard()).get(0).assessment());
    return Files.writeString(folder.resolve("gear.jsonl"), line + "\n");
  }

  private static int end(Process process) throws InterruptedException {
    assertThat(process.waitFor(120, TimeUnit.SECONDS)).isTrue();
    return process.exitValue();
  }

  @Test
  void theFileThatIsTheStandardInputIsNotWrittenOver() throws Exception {
    assumeTrue(Files.exists(Path.of("/dev/stdin")));
    Path gear = gear();
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

  /** The input never ends, so nothing but the reader's going away can end the run. */
  @Test
  void aReaderThatGoesAwayEndsTheRunQuietly() throws Exception {
    byte[] line = Files.readAllBytes(gear());
    Process process =
        program(List.of(), "assess", "-", "--as-of", "2026-11-25")
            .redirectError(folder.resolve("err").toFile())
            .start();
    Thread feeder = new Thread(() -> feed(process, line));
    feeder.start();
    assertThat(process.getInputStream().read()).isEqualTo('{');
    process.getInputStream().close();

    assertThat(end(process)).isEqualTo(3);
    feeder.join();
    assertThat(Files.readString(folder.resolve("err")))
        .doesNotContain("cannot write")
        .doesNotContain("\tat ");
  }

  /** Writes the line again and again for as long as somebody reads it. */
  private static void feed(Process process, byte[] line) {
    try (OutputStream input = process.getOutputStream()) {
      while (process.isAlive()) {
        input.write(line);
      }
    } catch (IOException nobodyReads) {
      // The program has ended, as it should.
    }
  }

  @Test
  void aFullDiskBehindTheStandardOutputIsNamed() throws Exception {
    assumeTrue(Files.exists(Path.of("/dev/full")));
    Process process =
        program(List.of(), "assess", gear().toString())
            .redirectOutput(new File("/dev/full"))
            .start();

    assertThat(end(process)).isEqualTo(3);
    assertThat(new String(process.getErrorStream().readAllBytes(), StandardCharsets.UTF_8))
        .contains("cannot write the standard output: ");
  }

  @Test
  void tooLittleMemoryEndsWithFourAndSaysSo() throws Exception {
    Process process = program(List.of("-Xmx12m"), "assess", gear().toString()).start();

    assertThat(end(process)).isEqualTo(4);
    assertThat(new String(process.getErrorStream().readAllBytes(), StandardCharsets.UTF_8))
        .contains("out of memory");
  }
}
