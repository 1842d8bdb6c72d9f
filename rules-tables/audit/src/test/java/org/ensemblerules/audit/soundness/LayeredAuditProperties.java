package org.ensemblerules.audit.soundness;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.PropertyDefaults;
import net.jqwik.api.Provide;
import net.jqwik.api.Tag;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.domains.DomainContext;
import org.ensemblerules.GearRules;
import org.ensemblerules.ruleset.Overlay;
import org.ensemblerules.ruleset.OverlayFault;
import org.ensemblerules.ruleset.OverlayRows;
import org.ensemblerules.ruleset.RuleSet;
import org.ensemblerules.source.Checked;
import org.ensemblerules.source.Row;
import org.ensemblerules.source.RowKey;
import org.ensemblerules.testkit.ArbitrariesOfOverlays;
import org.ensemblerules.testkit.Cases;
import org.ensemblerules.testkit.FitGear;
import org.ensemblerules.testkit.FrozenRules;
import org.ensemblerules.testkit.GearCase;
import org.ensemblerules.verdict.Verdict;

/** Whatever is laid over rules can be audited, and what the audit says of it holds. */
@Domain(Cases.class)
@Domain(DomainContext.Global.class)
@PropertyDefaults(tries = 100, edgeCases = EdgeCasesMode.NONE)
@Tag("slow")
class LayeredAuditProperties {
  private static final RuleSet BASE = FrozenRules.rules();
  private static final AuditReport ALONE = Audit.of(GearRules.of(BASE), FitGear.AS_OF);

  @Provide
  Arbitrary<Overlay> first() {
    return ArbitrariesOfOverlays.named("LAYER_A");
  }

  @Provide
  Arbitrary<Overlay> second() {
    return ArbitrariesOfOverlays.named("LAYER_B");
  }

  /** Those that can be laid, together if they can be. */
  private static List<Overlay> laid(Overlay one, Overlay two) {
    List<Overlay> laid = new ArrayList<>();
    for (Overlay each : List.of(one, two)) {
      List<Overlay> more = new ArrayList<>(laid);
      more.add(each);
      if (BASE.with(more, FitGear.AS_OF) instanceof Checked.Sound<RuleSet, OverlayFault>) {
        laid.add(each);
      }
    }
    Assume.that(!laid.isEmpty());
    return laid;
  }

  private static RuleSet over(List<Overlay> overlays) {
    return BASE.with(overlays, FitGear.AS_OF).orElseThrow();
  }

  @Property
  void itIsAuditedAndNoLessIsProved(@ForAll("first") Overlay one, @ForAll("second") Overlay two) {
    RuleSet rules = over(laid(one, two));
    AuditReport report = Audit.of(GearRules.of(rules), FitGear.AS_OF);
    assertThat(report.rows()).isEqualTo(rules.tables().rows().size());
    for (Map.Entry<String, Long> proved : ALONE.proved().entrySet()) {
      assertThat(report.proved().get(proved.getKey())).isGreaterThanOrEqualTo(proved.getValue());
    }
    assertThat(report.flaws().stream().filter(flaw -> !ALONE.flaws().contains(flaw)))
        .allSatisfy(
            flaw ->
                assertThat(flaw.rows())
                    .as("%s", flaw)
                    .anyMatch(key -> key.value().startsWith("layer_")));
  }

  @Property
  void whatTheEditionIsFaultedForStaysAFaultButForWhatAnOverlayAnswers(
      @ForAll("first") Overlay one, @ForAll("second") Overlay two) {
    AuditReport report = Audit.of(GearRules.of(over(laid(one, two))), FitGear.AS_OF);
    Set<FlawKind> answerable = EnumSet.of(FlawKind.GAP, FlawKind.SITE_WITHOUT_ROW);
    assertThat(report.flaws())
        .containsAll(
            ALONE.flaws().stream().filter(flaw -> !answerable.contains(flaw.kind())).toList());
  }

  /** A row said to add nothing can go, and no verdict changes in what it asks for. */
  @Property(tries = 150)
  void whatAddsNothingCanGo(
      @ForAll GearCase given, @ForAll("first") Overlay one, @ForAll("second") Overlay two) {
    List<Overlay> all = laid(one, two);
    AuditReport report = Audit.of(GearRules.of(over(all)), FitGear.AS_OF);
    List<Flaw> notes = report.of(FlawKind.ADDS_NOTHING);
    Assume.that(!notes.isEmpty());
    List<Overlay> fewer = all.stream().map(each -> without(each, notes)).toList();
    Verdict with = GearRules.of(over(all)).assess(given.assessment(), given.asOf());
    Verdict less = GearRules.of(over(fewer)).assess(given.assessment(), given.asOf());
    assertThat(less.service()).isEqualTo(with.service());
    assertThat(less.headline()).isEqualTo(with.headline());
    assertThat(less.handling()).isEqualTo(with.handling());
  }

  /** The first row of a note names the overlay that is needless; the others may be of any. */
  private static boolean isNeedless(Row row, Flaw note) {
    return note.rows().contains(row.key()) && family(row.key()).equals(family(note.rows().get(0)));
  }

  private static String family(RowKey key) {
    return key.value().split("/", 2)[0];
  }

  private static Overlay without(Overlay overlay, List<Flaw> notes) {
    List<Row> kept =
        overlay.rows().all().stream()
            .filter(row -> notes.stream().noneMatch(note -> isNeedless(row, note)))
            .toList();
    return new Overlay(
        overlay.id(),
        overlay.kind(),
        overlay.title(),
        overlay.on(),
        overlay.from(),
        OverlayRows.of(kept));
  }
}
