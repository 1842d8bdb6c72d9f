package org.ensemblerules.tables;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.ensemblerules.defect.DefectKind;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.LayerKind;
import org.ensemblerules.gear.Part;
import org.ensemblerules.gear.Use;
import org.ensemblerules.source.Checked;
import org.ensemblerules.tables.message.JsonFault;
import org.ensemblerules.tables.set.TableFiles;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Sets of files and overlays that would take more than a machine has, were they let. */
class HostileSetsTest {
  @TempDir private Path folder;

  private void copySound() throws IOException {
    Path sound = FixtureSets.sound();
    try (Stream<Path> paths = Files.walk(sound)) {
      for (Path path : paths.toList()) {
        Path to = folder.resolve(sound.relativize(path).toString());
        if (Files.isDirectory(path)) {
          Files.createDirectories(to);
        } else {
          Files.copy(path, to);
        }
      }
    }
  }

  private static List<String> faults(Checked<?, JsonFault> loaded) {
    assertThat(loaded).isInstanceOf(Checked.Refused.class);
    return ((Checked.Refused<?, JsonFault>) loaded)
        .faults().stream().map(fault -> fault.code() + " " + fault).toList();
  }

  /** The sound set with another text in one file. */
  private static TableFiles with(String changed, String text) {
    TableFiles sound = TableFiles.in(FixtureSets.sound());
    return path ->
        path.equals(changed)
            ? Optional.of(text.getBytes(StandardCharsets.UTF_8))
            : sound.read(path);
  }

  @Test
  void aFileIsMeasuredBeforeItIsRead() throws IOException {
    copySound();
    Path sources = folder.resolve("sources.json");
    try (var channel = Files.newByteChannel(sources, StandardOpenOption.WRITE)) {
      // Sparse: takes no room on the disk, and would take all memory.
      channel.position(8L * 1024 * 1024 * 1024);
      channel.write(ByteBuffer.wrap(new byte[] {' '}));
    }
    assertThat(faults(TableLoader.load(TableFiles.in(folder))))
        .contains(
            "UNREADABLE sources.json#: found a file of 8589934593 bytes, allowed: a file in the"
                + " folder of the set, of at most 4000000 bytes");
  }

  @Test
  void aLinkOutOfTheFolderIsRefused() throws IOException {
    copySound();
    Path elsewhere = Files.createTempFile("elsewhere", ".json");
    try {
      Path file = folder.resolve("frozen-1/checks.json");
      Files.move(file, elsewhere, StandardCopyOption.REPLACE_EXISTING);
      Files.createSymbolicLink(file, elsewhere);
      assertThat(faults(TableLoader.load(TableFiles.in(folder))))
          .contains(
              "UNREADABLE frozen-1/checks.json#: found a link out of the folder of the set,"
                  + " allowed: a file in the folder of the set, of at most 4000000 bytes");
    } finally {
      Files.delete(elsewhere);
    }
    Files.delete(folder.resolve("frozen-1/checks.json"));
    Files.copy(
        FixtureSets.sound().resolve("frozen-1/checks.json"), folder.resolve("checks-there.json"));
    Files.createSymbolicLink(
        folder.resolve("frozen-1/checks.json"), folder.resolve("checks-there.json"));
    assertThat(TableLoader.load(TableFiles.in(folder))).isInstanceOf(Checked.Sound.class);
  }

  /** The form of a name is a repetition, which takes stack for each group of a long name. */
  @Test
  void aVeryLongNameDoesNotTakeTheWholeStack() {
    String name = "a-".repeat(49_000) + "a";
    assertThat(faults(TableLoader.load(with("index.json", "{\"folders\": [\"" + name + "\"]}"))))
        .first()
        .asString()
        .startsWith("NOT_ALLOWED index.json#/folders/0: found \"a-a-")
        .endsWith("allowed: groups of a-z and 0-9, hyphens, at most 100 characters");
    assertThat(
            faults(
                TableLoader.load(
                    with(
                        "trade/edition.json",
                        "{\"edition\": \"TRADE\", \"tables\": {\"CARE\": [\""
                            + name
                            + ".json\"]}}"))))
        .anyMatch(
            fault ->
                fault.startsWith("NOT_ALLOWED ")
                    && fault.contains("found \"a-a-")
                    && fault.contains("at most 100"));
  }

  @Test
  void neitherFoldersNorFilesAreWithoutNumber() {
    String folders =
        IntStream.range(0, 201).mapToObj(i -> "\"f" + i + "\"").collect(Collectors.joining(","));
    assertThat(faults(TableLoader.load(with("index.json", "{\"folders\": [" + folders + "]}"))))
        .contains("NOT_ALLOWED index.json#/folders: found 201 folders, allowed: at most 200");

    String files =
        IntStream.range(0, 2100)
            .mapToObj(i -> "\"t" + i + ".json\"")
            .collect(Collectors.joining(","));
    TableFiles sound = TableFiles.in(FixtureSets.sound());
    TableFiles many =
        path -> {
          if (path.equals("frozen-1/edition.json")) {
            return Optional.of(
                ("{\"edition\": \"FROZEN_1\", \"tables\": {\"CARE\": [" + files + "]}}")
                    .getBytes(StandardCharsets.UTF_8));
          }
          return path.startsWith("frozen-1/t")
              ? Optional.of("{}".getBytes(StandardCharsets.UTF_8))
              : sound.read(path);
        };
    assertThat(faults(TableLoader.load(many))).hasSize(1001);
  }

  /** Everything there is, in one entry. */
  private static String family(String key) {
    String sites =
        Stream.of(Part.values())
            .flatMap(
                part ->
                    Stream.of(LayerKind.values()).map(layer -> "\"" + part + "@" + layer + "\""))
            .collect(Collectors.joining(","));
    return "{\"key\": \""
        + key
        + "\", \"basis\": {\"kind\": \"MEMORY\", \"confidence\": \"LOW\"},"
        + " \"reviewedThrough\": \"2027-01-01\", \"elements\": "
        + Arrays.stream(ElementKind.values()).map(k -> "\"" + k + "\"").toList()
        + ", \"uses\": "
        + Arrays.stream(Use.values()).map(k -> "\"" + k + "\"").toList()
        + ", \"sites\": ["
        + sites
        + "], \"defects\": "
        + Arrays.stream(DefectKind.values()).map(k -> "\"" + k + "\"").toList()
        + ", \"effect\": {\"kind\": \"RETIRE\", \"scope\": \"ELEMENT\"}, \"wording\": \"w\"}";
  }

  @Tag("slow")
  @Test
  void anEntryStandsForNoMoreRowsThanAllowed() {
    String file =
        "{\"table\": \"defects\", \"edition\": \"FROZEN_3\", \"revision\": 1, \"about\": \"a\","
            + " \"knownGaps\": [], \"rows\": ["
            + family("all")
            + "]}";
    List<String> faults = faults(TableLoader.load(with("frozen-3/defects.json", file)));
    assertThat(faults)
        .anyMatch(
            fault ->
                fault.startsWith("NOT_ALLOWED ")
                    && fault.contains("#/rows/0")
                    && fault.contains("found rows for more than 100000 combinations"));

    String overlay =
        "{\"overlay\": \"MANY\", \"kind\": \"LOCAL_POLICY\", \"title\": \"t\", \"defects\": ["
            + family("all")
            + "]}";
    assertThat(faults(OverlayJson.read("many.json", overlay)))
        .anyMatch(
            fault ->
                fault.startsWith("NOT_ALLOWED ")
                    && fault.contains("found rows for more than 100000 combinations"));
  }

  /** Numbers that no exact arithmetic could hold, in the rows of an overlay. */
  @Test
  void aNumberOfARowHasTheLimitsOfEveryNumber() {
    String basis = "\"basis\": {\"kind\": \"COMMON_PRACTICE\"}";
    String overlay =
        "{\"overlay\": \"NUMBERS\", \"kind\": \"LAW_OF_PLACE\", \"title\": \"t\","
            + " \"reviewedThrough\": \"2027-01-01\", \"usedGear\": [{\"key\": \"used\","
            + " \"policy\": \"SHARE_OF_NEW_VALUE\", \"percent\": 1e-999999999, "
            + basis
            + "}], \"retention\": [{\"key\": \"kept\", \"years\": 1e999999999, \"start\":"
            + " \"DISPOSAL\", "
            + basis
            + "}]}";
    assertThat(faults(OverlayJson.read("numbers.json", overlay)))
        .contains(
            "NOT_ALLOWED numbers.json#/usedGear/0/percent: found 1E-999999999, allowed: at most 30"
                + " digits, scale -9 to 20")
        .anyMatch(
            fault ->
                fault.startsWith(
                    "NOT_ALLOWED numbers.json#/retention/0/years: found 1E+999999999"));
  }
}
