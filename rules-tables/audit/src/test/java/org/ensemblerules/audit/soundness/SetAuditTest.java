package org.ensemblerules.audit.soundness;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.ensemblerules.source.FaultCode;
import org.ensemblerules.tables.FixtureSets;
import org.ensemblerules.tables.ShippedRules;
import org.ensemblerules.tables.ShippedTables;
import org.ensemblerules.tables.set.TableFiles;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class SetAuditTest {
  private static final LocalDate AS_OF = LocalDate.of(2026, 11, 25);

  static List<String> names() {
    return FixtureSets.brokenNames();
  }

  @ParameterizedTest
  @MethodSource("names")
  void everyRefusalIsInTheReport(String name) throws IOException {
    SetAudit.Audited outcome = SetAudit.of(FixtureSets.brokenBy(name), AS_OF);
    assertThat(outcome.isSound()).isFalse();
    assertThat(outcome.editions()).isEmpty();
    assertThat(outcome.refused().orElseThrow().faults())
        .extracting(
            flaw ->
                flaw.kind()
                    + " "
                    + flaw.places().get(0)
                    + ": found "
                    + flaw.found()
                    + ", allowed: "
                    + flaw.expected())
        .isEqualTo(
            Files.readAllLines(FixtureSets.broken().resolve(name).resolve("expected-faults.txt"))
                .stream()
                .map(SetAuditTest::asFlaw)
                .toList());
  }

  /** A fault as the fixtures tell it, under the kind of flaw that its code is. */
  private static String asFlaw(String fault) {
    int end = fault.indexOf(' ');
    return SetAudit.kind(FaultCode.valueOf(fault.substring(0, end))) + fault.substring(end);
  }

  @ParameterizedTest
  @CsvSource({
    "dangling-source, DANGLING_SOURCE",
    "dangling-memory, DANGLING_SOURCE",
    "gapped-bands, BANDS_DO_NOT_JOIN",
    "overlapping-bands, BANDS_DO_NOT_JOIN",
    "uncovered-grade, OVERLAP",
    "site-not-in-anatomy, UNREACHABLE",
    "missing-checks, GAP",
    "care-route-twice-and-missing, GAP",
    "task-said-twice, DUPLICATE",
    "duplicate-family-key, DUPLICATE",
    "empty-file, UNREADABLE",
    "bad-date, UNREADABLE",
    "several-at-once, UNREADABLE"
  })
  void underTheKindThatTheAuditKnows(String name, FlawKind kind) {
    AuditReport report = SetAudit.of(FixtureSets.brokenBy(name), AS_OF).refused().orElseThrow();
    assertThat(report.faults()).extracting(Flaw::kind).contains(kind);
  }

  @Test
  void aRowWithoutABasisIsFound() {
    TableFiles sound = TableFiles.in(FixtureSets.sound());
    TableFiles files =
        path ->
            path.equals("frozen-1/age-limits.json")
                ? Optional.of(
                    new String(sound.read(path).orElseThrow(), StandardCharsets.UTF_8)
                        .replaceFirst("\"basis\"\\s*:\\s*\\{[^}]*\\}\\s*,?", "")
                        .replaceFirst(",(\\s*)\\}", "$1}")
                        .getBytes(StandardCharsets.UTF_8))
                : sound.read(path);
    assertThat(SetAudit.of(files, AS_OF).refused().orElseThrow().of(FlawKind.NO_BASIS)).hasSize(1);
  }

  @Test
  @Tag("slow")
  void aSetThatLoadsIsAuditedEditionByEdition() {
    SetAudit.Audited shipped = SetAudit.of(ShippedTables.files(), AS_OF);
    assertThat(shipped.refused()).isEmpty();
    assertThat(shipped.isSound()).isTrue();
    assertThat(shipped.editions().keySet())
        .containsExactlyElementsOf(
            ShippedRules.editions().stream().map(edition -> edition.id()).toList());
  }
}
