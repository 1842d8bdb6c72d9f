package org.ensemblerules.example.department;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.SequenceInputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.stream.Stream;
import org.ensemblerules.example.department.demo.DemoDepartment;
import org.ensemblerules.tables.AssessmentJson;
import org.ensemblerules.tables.ShippedRules;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is written takes the place of what was there only once it is whole. */
class OutFileTest {
  private static final String COAT =
      AssessmentJson.write(DemoDepartment.elements(ShippedRules.standard()).get(0).assessment());

  @TempDir private Path folder;

  private Path file(String name, String text) throws IOException {
    return Files.writeString(folder.resolve(name), text);
  }

  private void assertNothingIsLeft(String... names) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      assertThat(files.map(path -> path.getFileName().toString())).containsExactlyInAnyOrder(names);
    }
  }

  private static void assertRefused(ProgramRun run, String option) {
    assertThat(run.code()).isEqualTo(2);
    assertThat(run.err()).contains(option + ": found ").contains("allowed: another file");
  }

  @Test
  void neitherInputNorOverlayNorTheOtherOutputIsWrittenOver() throws IOException {
    Path input = file("gear.jsonl", COAT + "\n");
    Path link = Files.createLink(folder.resolve("same.jsonl"), input);
    Path overlay = file("overlay.json", "{}");
    String out = folder.resolve("new.jsonl").toString();

    assertRefused(ProgramRun.of("assess", input.toString(), "--out", link.toString()), "--out");
    assertRefused(
        ProgramRun.of(
            "assess",
            input.toString(),
            "--overlay",
            overlay.toString(),
            "--out",
            overlay.toString()),
        "--out");
    for (String command : new String[] {"demo", ""}) {
      assertRefused(
          run(command, "--overlay", overlay.toString(), "--out", overlay.toString()), "--out");
      assertRefused(
          run(command, "--overlay", overlay.toString(), "--write", overlay.toString()), "--write");
      assertRefused(
          run(command, "--out", out, "--write", folder.resolve("./new.jsonl").toString()),
          "--write");
      assertRefused(run(command, "--out", link.toString(), "--write", input.toString()), "--write");
    }
    assertThat(input).hasContent(COAT);
    assertThat(overlay).hasContent("{}");
    assertNothingIsLeft("gear.jsonl", "same.jsonl", "overlay.json");
  }

  private static ProgramRun run(String command, String... options) {
    return ProgramRun.of(
        Stream.concat(Stream.of(command).filter(name -> !name.isEmpty()), Stream.of(options))
            .toArray(String[]::new));
  }

  @Test
  void aRunThatStopsLeavesTheOldFile() throws IOException {
    Path old = file("verdicts.jsonl", "old\n");
    InputStream stopping =
        new SequenceInputStream(
            new ByteArrayInputStream((COAT + "\n").getBytes(StandardCharsets.UTF_8)),
            new InputStream() {
              @Override
              public int read() throws IOException {
                throw new IOException("the disk is gone");
              }
            });
    ProgramRun run = ProgramRun.withInput(stopping, "assess", "-", "--out", old.toString());

    assertThat(run.code()).isEqualTo(3);
    assertThat(run.err()).contains("cannot read standard input: the disk is gone");
    assertThat(old).hasContent("old");
    assertNothingIsLeft("verdicts.jsonl");
  }

  @Test
  void aWholeFileTakesThePlaceOfTheOldOneWithItsPermissionsAndThroughALink() throws IOException {
    Path old = file("verdicts.jsonl", "old\n");
    Path link = Files.createSymbolicLink(folder.resolve("link.jsonl"), old);
    boolean posix = Files.getFileStore(old).supportsFileAttributeView("posix");
    if (posix) {
      Files.setPosixFilePermissions(old, PosixFilePermissions.fromString("rw-rw----"));
    }
    ProgramRun run = ProgramRun.withInput(COAT, "assess", "-", "--out", link.toString());

    assertThat(run.code()).isZero();
    assertThat(Files.isSymbolicLink(link)).isTrue();
    assertThat(Files.readString(old)).startsWith("{").endsWith("}\n");
    if (posix) {
      assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(old)))
          .isEqualTo("rw-rw----");
    }
    assertNothingIsLeft("verdicts.jsonl", "link.jsonl");
  }

  @Test
  void aFolderOrAFullDiskNamesTheFile() {
    ProgramRun run = ProgramRun.withInput(COAT, "assess", "-", "--out", folder.toString());
    assertThat(run.code()).isEqualTo(3);
    assertThat(run.err()).contains("cannot write " + folder + ": it is a folder");

    assumeTrue(Files.exists(Path.of("/dev/full")));
    run = ProgramRun.withInput(COAT, "assess", "-", "--out", "/dev/full");
    assertThat(run.code()).isEqualTo(3);
    assertThat(run.err()).contains("cannot write /dev/full: ");
    run = ProgramRun.of("--out", "/dev/full");
    assertThat(run.code()).isEqualTo(3);
    assertThat(run.err()).contains("cannot write /dev/full: ");
  }

  @Test
  void aDeviceIsWrittenToDirectly() {
    assumeTrue(Files.exists(Path.of("/dev/null")));
    assertThat(ProgramRun.withInput(COAT, "assess", "-", "--out", "/dev/null").code()).isZero();
    assertThat(Files.isRegularFile(Path.of("/dev/null"))).isFalse();
    assertThat(ProgramRun.of("assess", "/dev/null", "--out", "/dev/null").code()).isZero();
  }

  @Test
  void anOverlayIsMeasuredBeforeItIsRead() throws IOException {
    Path overlay = file("overlay.json", " ".repeat(4_000_001));
    ProgramRun run = ProgramRun.withInput(COAT, "assess", "-", "--overlay", overlay.toString());
    assertThat(run.code()).isEqualTo(2);
    assertThat(run.err()).contains("found 4000001 bytes, allowed: at most 4000000");

    assumeTrue(Files.exists(Path.of("/dev/zero")));
    run = ProgramRun.withInput(COAT, "assess", "-", "--overlay", "/dev/zero");
    assertThat(run.code()).isEqualTo(2);
    assertThat(run.err()).contains("found more than 4000000 bytes, allowed: at most 4000000");
  }
}
