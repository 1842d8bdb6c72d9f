package org.ensemblerules.audit.soundness;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.ensemblerules.GearRules;
import org.ensemblerules.ruleset.RuleSet;
import org.ensemblerules.source.OriginId;
import org.ensemblerules.source.SourceId;
import org.ensemblerules.tables.OverlayJson;
import org.ensemblerules.tables.ShippedOverlays;
import org.ensemblerules.tables.ShippedRules;
import org.ensemblerules.tables.ShippedTables;
import org.ensemblerules.tables.set.OverlayFile;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every shipped rule set stays sound with each shipped overlay, and with that of the example. */
@Tag("slow")
class LaidOverAuditTest {
  private static final LocalDate AS_OF = LocalDate.of(2026, 11, 25);
  private static final Map<OriginId, AuditReport> ALONE =
      SetAudit.of(ShippedTables.files(), AS_OF).editions();

  private static List<String> shipped() {
    return ShippedOverlays.all().stream().map(file -> file.overlay().id().value()).toList();
  }

  static Stream<List<String>> together() {
    return Stream.of(shipped(), List.of("EXAMPLETON", "WASHINGTON"));
  }

  static Stream<List<String>> overlays() {
    return Stream.concat(
        shipped().stream().map(List::of), Stream.of(shipped(), List.of("EXAMPLETON")));
  }

  private static OverlayFile file(String name) {
    return name.equals("EXAMPLETON")
        ? read(example())
        : ShippedOverlays.of(new OriginId(name)).orElseThrow();
  }

  private static String example() {
    Path file = Path.of("..", "..", "examples", "department", "overlays", "exampleton.json");
    try {
      return Files.readString(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static OverlayFile read(String text) {
    return OverlayJson.read("exampleton.json", text).orElseThrow();
  }

  private static SetAudit.Audited audit(OverlayFile... files) {
    return SetAudit.of(ShippedTables.files(), List.of(files), AS_OF);
  }

  /** The default edition alone, so that each overlay costs one audit. */
  private static AuditReport ofDefaultEdition(OverlayFile... files) {
    Set<SourceId> sources = new HashSet<>(ShippedRules.sources().keySet());
    for (OverlayFile file : files) {
      file.sources().forEach(source -> sources.add(source.id()));
    }
    RuleSet laid =
        OverlayJson.lay(ShippedRules.standard(), List.of(files), AS_OF).orElseThrow().rules();
    return Audit.of(GearRules.of(laid), sources, AS_OF);
  }

  private static AuditReport alone(OriginId edition) {
    return Objects.requireNonNull(ALONE.get(edition));
  }

  /** What is found with the overlays and not without them. */
  private static List<Flaw> added(OriginId edition, AuditReport report) {
    return report.flaws().stream().filter(flaw -> !alone(edition).flaws().contains(flaw)).toList();
  }

  private static OverlayFile[] files(List<String> names) {
    return names.stream().map(LaidOverAuditTest::file).toArray(OverlayFile[]::new);
  }

  @ParameterizedTest
  @MethodSource("together")
  void everyEditionStaysSound(List<String> names) {
    SetAudit.Audited outcome = audit(files(names));
    assertThat(outcome.refused()).isEmpty();
    assertThat(outcome.isSound()).isTrue();
    assertThat(outcome.editions()).containsOnlyKeys(ALONE.keySet());
    outcome.editions().forEach((edition, report) -> isKnown(names, edition, report));
  }

  @ParameterizedTest
  @MethodSource("overlays")
  void isSoundAndWhatIsNotedIsKnown(List<String> names) {
    AuditReport report = ofDefaultEdition(files(names));
    assertThat(report.isSound()).isTrue();
    isKnown(names, ShippedRules.DEFAULT_EDITION, report);
  }

  // New Jersey and New Mexico ask for one inspection a year, as the editions do; all that the audit
  // adds is the note that they ask for no more.
  private static void isKnown(List<String> names, OriginId edition, AuditReport report) {
    List<Flaw> added = added(edition, report);
    assertThat(added).extracting(Flaw::kind).allMatch(FlawKind.ADDS_NOTHING::equals);
    Set<String> needless =
        added.stream()
            .map(flaw -> flaw.rows().get(0).value().split("/", 2)[0])
            .collect(Collectors.toSet());
    assertThat(needless)
        .as("%s", edition)
        .containsExactlyInAnyOrderElementsOf(
            Stream.of("NEW_JERSEY", "NEW_MEXICO")
                .filter(names::contains)
                .map(name -> name.toLowerCase(Locale.ROOT).replace('_', '-'))
                .flatMap(
                    name ->
                        Stream.of(name + "-yearly-inspection", name + "-yearly-inspection-covers"))
                .toList());
    assertThat(report.proved()).isEqualTo(alone(edition).proved());
  }

  @Test
  void whatIsPlantedInTheExampleIsFound() {
    String good = example();
    assertThat(found(good.replace("\"limit\": {\"years\": 8}", "\"limit\": {\"years\": 10}")))
        .containsExactly(FlawKind.ADDS_NOTHING);
    assertThat(found(good.replace("\"2027-12-31\"", "\"2026-01-31\"")))
        .containsOnly(FlawKind.PAST_REVIEW);
    assertThat(
            found(
                good.replace(
                    "\"by\": [\"ORGANIZATION\", \"VERIFIED_INDEPENDENT_SERVICE_PROVIDER\"]",
                    "\"by\": [\"INDEPENDENT_SERVICE_PROVIDER\"]")))
        .containsExactly(FlawKind.GAP);
    assertThat(found(good.replace("[\"HELMET\"], \"uses\"", "[\"COAT\"], \"uses\"")))
        .containsExactly(FlawKind.UNREACHABLE);
    assertThat(found(good.replace("\"grades\": [\"SEVERE\"]", "\"grades\": [\"SLIGHT\"]")))
        .containsExactly(FlawKind.SEVERITY_FALLS);
  }

  private static Set<FlawKind> found(String text) {
    assertThat(text).isNotEqualTo(example());
    return added(ShippedRules.DEFAULT_EDITION, ofDefaultEdition(read(text))).stream()
        .map(Flaw::kind)
        .collect(Collectors.toSet());
  }

  @Test
  void whatCannotBeLaidIsReportedForItsEdition() {
    SetAudit.Audited outcome = audit(read(example().replace("{\"years\": 8}", "{\"years\": 12}")));
    assertThat(outcome.refused()).isEmpty();
    assertThat(outcome.isSound()).isFalse();
    assertThat(outcome.editions().get(ShippedRules.DEFAULT_EDITION))
        .satisfies(
            report ->
                assertThat(report.faults())
                    .singleElement()
                    .satisfies(
                        flaw -> {
                          assertThat(flaw.kind()).isEqualTo(FlawKind.UNREADABLE);
                          assertThat(flaw.places())
                              .containsExactly("exampleton.json#/ageLimits/0/limit");
                        }));
  }
}
