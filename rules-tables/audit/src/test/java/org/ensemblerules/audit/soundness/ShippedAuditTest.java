package org.ensemblerules.audit.soundness;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.ensemblerules.GearRules;
import org.ensemblerules.defect.Band;
import org.ensemblerules.defect.DefectKind;
import org.ensemblerules.defect.Grade;
import org.ensemblerules.ruleset.RuleSet;
import org.ensemblerules.source.Edition;
import org.ensemblerules.source.SourceId;
import org.ensemblerules.tables.ShippedRules;
import org.ensemblerules.testkit.ShippedExtents;
import org.ensemblerules.testkit.ShippedLoad;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestReporter;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every shipped rule set is sound; what is noted of it is known, each with its reason. */
@Tag("slow")
class ShippedAuditTest {
  private static final LocalDate AS_OF = LocalDate.of(2026, 11, 25);
  private static final Set<SourceId> SOURCES = ShippedLoad.tables().sources().keySet();

  private static final Map<Edition, AuditReport> REPORTS =
      ShippedRules.editions().stream()
          .collect(
              Collectors.toMap(
                  Function.identity(),
                  edition -> Audit.of(GearRules.of(rules(edition)), SOURCES, AS_OF)));

  static List<Edition> editions() {
    return ShippedRules.editions();
  }

  private static RuleSet rules(Edition edition) {
    return ShippedRules.of(edition.id()).orElseThrow().rules();
  }

  private static AuditReport report(Edition edition) {
    return Objects.requireNonNull(REPORTS.get(edition));
  }

  @ParameterizedTest
  @MethodSource("editions")
  void isSound(Edition edition, TestReporter reporter) {
    RuleSet rules = rules(edition);
    AuditReport report = report(edition);
    assertThat(report.faults()).isEmpty();
    assertThat(report.isSound()).isTrue();
    assertThat(report.proved())
        .containsEntry("task", 15L)
        .hasEntrySatisfying(
            "part, defect and extent",
            walked ->
                assertThat(walked)
                    .isGreaterThanOrEqualTo(
                        cells(rules) * (1 + Grade.values().length + 3 * edges(rules)))
                    .isLessThan(cells(rules) * ShippedExtents.of(rules.tables().defects()).size()));
    reporter.publishEntry(edition.id() + " combinations proved", "" + report.combinations());
  }

  /**
   * The pairs of units are as printed or remembered: 150 lbf is 667 N, 75 lbf is 334 N, 8.8 lbf is
   * 39.14 N, 13.2 lbf is 58.72 N.
   */
  @ParameterizedTest
  @MethodSource("editions")
  void whatIsNotedIsKnown(Edition edition) {
    AuditReport report = report(edition);
    assertThat(report.notes())
        .extracting(Flaw::kind)
        .containsOnly(FlawKind.UNITS_DISAGREE, FlawKind.FROM_MEMORY);
    assertThat(families(report, FlawKind.UNITS_DISAGREE))
        .containsExactlyInAnyOrder(
            "seam-major-a", "seam-major-b", "glove-puncture", "footwear-puncture");
    assertThat(report.of(FlawKind.UNITS_DISAGREE))
        .extracting(Flaw::found)
        .containsExactlyInAnyOrder(
            "at least 675 N (also printed: 150 lbf)",
            "at least 337.5 N (also printed: 75 lbf)",
            "at least 40 N (also printed: 8.8 lbf)",
            "at least 60 N (also printed: 13.2 lbf)");
    assertThat(report.of(FlawKind.UNITS_DISAGREE)).allMatch(flaw -> flaw.reason().isPresent());
  }

  @Test
  void isPastReviewOnceItsRowsAre() {
    RuleSet rules = ShippedRules.standard().rules();
    AuditReport report = Audit.of(GearRules.of(rules), LocalDate.of(2200, 1, 1));
    assertThat(Set.copyOf(report.rowsOf(FlawKind.PAST_REVIEW)))
        .isEqualTo(
            rules.tables().rows().stream().map(row -> row.key()).collect(Collectors.toSet()));
    assertThat(report.isSound()).isTrue();
  }

  @Test
  void everySourceDanglesWhereNoneIsListed() {
    RuleSet rules = ShippedRules.standard().rules();
    assertThat(Audit.of(GearRules.of(rules), Set.of(), AS_OF).rowsOf(FlawKind.DANGLING_SOURCE))
        .isEqualTo(
            rules.tables().rows().stream()
                .filter(row -> row.provenance().basis().cited().isPresent())
                .map(row -> row.key())
                .collect(Collectors.toSet()));
  }

  private static long cells(RuleSet rules) {
    return (long) rules.tables().anatomy().rows().size() * DefectKind.values().length;
  }

  private static long edges(RuleSet rules) {
    return rules.tables().defects().rows().stream()
        .filter(row -> row.band() instanceof Band.Range)
        .flatMap(row -> ((Band.Range) row.band()).upTo().stream())
        .distinct()
        .count();
  }

  private static Set<String> families(AuditReport report, FlawKind kind) {
    return report.rowsOf(kind).stream()
        .map(key -> key.value().split("/", 2)[0])
        .collect(Collectors.toSet());
  }
}
