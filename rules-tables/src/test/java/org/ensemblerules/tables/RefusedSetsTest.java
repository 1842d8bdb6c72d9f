package org.ensemblerules.tables;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.ensemblerules.source.Checked;
import org.ensemblerules.source.RefusedException;
import org.ensemblerules.tables.message.JsonFault;
import org.ensemblerules.tables.set.LoadedTables;
import org.ensemblerules.tables.set.TableFiles;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every kind of refusal, each by a folder under {@code sets/broken}: the files that it changes in
 * the sound set, and in {@code expected-faults.txt} the code and the text of every fault, in order.
 */
class RefusedSetsTest {
  static Stream<String> names() {
    return FixtureSets.brokenNames().stream();
  }

  @ParameterizedTest
  @MethodSource("names")
  void aBrokenSetIsRefusedWithEveryFaultInItsPlace(String name) throws IOException {
    List<String> expected =
        Files.readAllLines(FixtureSets.broken().resolve(name).resolve("expected-faults.txt"));
    assertThat(expected).isNotEmpty();
    assertThat(faults(FixtureSets.brokenBy(name))).isEqualTo(expected);
  }

  @Test
  void bytesThatAreNoTextAreRefused() {
    TableFiles sound = TableFiles.in(FixtureSets.sound());
    TableFiles files =
        path ->
            path.equals("sources.json")
                ? Optional.of(new byte[] {'{', (byte) 0xC3, '}'})
                : sound.read(path);
    assertThat(faults(files))
        .containsExactly("UNREADABLE sources.json#: found bytes that are no UTF-8, allowed: UTF-8");
  }

  @Test
  void anEndlessFileIsRefused() {
    TableFiles sound = TableFiles.in(FixtureSets.sound());
    TableFiles files =
        path -> path.equals("index.json") ? Optional.of(new byte[4_000_001]) : sound.read(path);
    assertThat(faults(files))
        .containsExactly(
            "UNREADABLE index.json#: found 4000001 bytes, allowed: at most 4000000 bytes");
  }

  @Test
  void aFileThatCannotBeReadIsAFaultAndNotTheEndOfLoading() {
    TableFiles sound = TableFiles.in(FixtureSets.sound());
    TableFiles files =
        path -> {
          if (path.equals("frozen-1/checks.json")) {
            throw new IOException("the disk is gone");
          }
          return path.equals("editions.json") ? Optional.empty() : sound.read(path);
        };
    assertThat(faults(files))
        .containsExactly(
            "MISSING editions.json#: found no such file, allowed: a file of this name",
            "UNREADABLE frozen-1/checks.json#: found a failure to read: java.io.IOException: the"
                + " disk is gone, allowed: a file that can be read");
  }

  @Test
  void anEmptyFolderIsRefused() {
    assertThat(faults(path -> Optional.empty()))
        .containsExactly(
            "MISSING index.json#: found no such file, allowed: a file of this name",
            "MISSING sources.json#: found no such file, allowed: a file of this name",
            "MISSING editions.json#: found no such file, allowed: a file of this name");
  }

  @Test
  void whoeverInsistsOnARefusedSetIsToldEveryFault() {
    Checked<LoadedTables, JsonFault> refused = TableLoader.load(FixtureSets.brokenBy("circle"));
    assertThatThrownBy(refused::orElseThrow)
        .isInstanceOf(RefusedException.class)
        .hasMessageContaining("frozen-1/defects-coat.json#/carriesOver")
        .hasMessageContaining("frozen-2/defects.json#/carriesOver");
  }

  private static List<String> faults(TableFiles files) {
    Checked<LoadedTables, JsonFault> loaded = TableLoader.load(files);
    assertThat(loaded).isInstanceOf(Checked.Refused.class);
    return ((Checked.Refused<LoadedTables, JsonFault>) loaded)
        .faults().stream().map(fault -> fault.code() + " " + fault).toList();
  }
}
