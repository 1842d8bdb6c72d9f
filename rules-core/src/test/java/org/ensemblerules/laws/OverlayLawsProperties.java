package org.ensemblerules.laws;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.PropertyDefaults;
import net.jqwik.api.Provide;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.domains.DomainContext;
import org.ensemblerules.GearRules;
import org.ensemblerules.gates.FewestTries;
import org.ensemblerules.ruleset.Overlay;
import org.ensemblerules.ruleset.OverlayFault;
import org.ensemblerules.ruleset.RuleSet;
import org.ensemblerules.source.Checked;
import org.ensemblerules.testkit.ArbitrariesOfOverlays;
import org.ensemblerules.testkit.Cases;
import org.ensemblerules.testkit.FrozenRules;
import org.ensemblerules.testkit.GearCase;
import org.ensemblerules.testkit.VerdictContent;
import org.ensemblerules.verdict.Reason;
import org.ensemblerules.verdict.ReasonKind;
import org.ensemblerules.verdict.Service;
import org.ensemblerules.verdict.Verdict;

/** What an overlay adds takes nothing away, whatever it adds and in whatever order it comes. */
@Domain(Cases.class)
@Domain(DomainContext.Global.class)
@PropertyDefaults(tries = 400, edgeCases = EdgeCasesMode.NONE)
class OverlayLawsProperties {
  private static final Set<ReasonKind> NO_LONGER_COUNTS =
      EnumSet.of(ReasonKind.LIMIT_TIGHTENED, ReasonKind.INSPECTION_NOT_ITEMIZED);

  @Provide
  Arbitrary<Overlay> first() {
    return ArbitrariesOfOverlays.named("LAYER_A");
  }

  @Provide
  Arbitrary<Overlay> second() {
    return ArbitrariesOfOverlays.named("LAYER_B");
  }

  @Property
  void noActionGoesAndNothingComesBack(
      @ForAll GearCase given, @ForAll("first") Overlay one, @ForAll("second") Overlay two) {
    RuleSet base = FrozenRules.rules();
    List<Overlay> sound =
        List.of(one, two).stream()
            .filter(
                each ->
                    base.with(List.of(each), given.asOf())
                        instanceof Checked.Sound<RuleSet, OverlayFault>)
            .toList();
    Checked<RuleSet, OverlayFault> result = base.with(sound, given.asOf());
    Assume.that(!sound.isEmpty() && result instanceof Checked.Sound<RuleSet, OverlayFault>);
    RuleSet rules = result.orElseThrow();
    Verdict before = given.verdict();
    Verdict after = GearRules.of(rules).assess(given.assessment(), given.asOf());
    assertThat(VerdictContent.demanded(after)).containsAll(VerdictContent.demanded(before));
    assertThat(after.handling()).containsAll(before.handling());
    if (before.service() == Service.OUT) {
      assertThat(after.service()).isEqualTo(Service.OUT);
    }
    assertThat(rules.identity().fingerprint()).isNotEqualTo(base.identity().fingerprint());
    assertThat(after.due().stream().map(due -> due.task() + " " + due.layer() + " " + due.by()))
        .containsAll(
            before.due().stream()
                .map(due -> due.task() + " " + due.layer() + " " + due.by())
                .filter(text -> sound.stream().noneMatch(OverlayLawsProperties::bearsOnWork))
                .toList());
  }

  /** Whether by an overlay something done may not count, so that what follows from it moves. */
  private static boolean bearsOnWork(Overlay overlay) {
    return !overlay.rows().forbidden().isEmpty() || !overlay.rows().careLimits().isEmpty();
  }

  @Property
  void orderNeverMatters(
      @ForAll GearCase given,
      @ForAll("first") Overlay one,
      @ForAll("second") Overlay two,
      @ForAll Random random) {
    List<Overlay> stirred = new ArrayList<>(List.of(one, two));
    Collections.shuffle(stirred, random);
    RuleSet base = FrozenRules.rules();
    Checked<RuleSet, OverlayFault> together = base.with(List.of(one, two), given.asOf());
    Checked<RuleSet, OverlayFault> other = base.with(stirred, given.asOf());
    if (together instanceof Checked.Refused<RuleSet, OverlayFault> refused) {
      assertThat(((Checked.Refused<RuleSet, OverlayFault>) other).faults())
          .isEqualTo(refused.faults());
      return;
    }
    same(given, together.orElseThrow(), other.orElseThrow());
    if (base.with(List.of(one), given.asOf())
        instanceof Checked.Sound<RuleSet, OverlayFault> first) {
      same(
          given,
          together.orElseThrow(),
          first.value().with(List.of(two), given.asOf()).orElseThrow());
    }
  }

  private static void same(GearCase given, RuleSet one, RuleSet other) {
    assertThat(other.identity()).isEqualTo(one.identity());
    assertThat(VerdictContent.of(GearRules.of(other).assess(given.assessment(), given.asOf())))
        .isEqualTo(VerdictContent.of(GearRules.of(one).assess(given.assessment(), given.asOf())));
  }

  @FewestTries(100)
  @Property
  void whatIsAddedNamesItsLayer(@ForAll GearCase given, @ForAll("first") Overlay one) {
    Checked<RuleSet, OverlayFault> result = FrozenRules.rules().with(List.of(one), given.asOf());
    Assume.that(result instanceof Checked.Sound && one.rows().forbidden().isEmpty());
    Verdict after = GearRules.of(result.orElseThrow()).assess(given.assessment(), given.asOf());
    Set<Object> before = new HashSet<>(given.verdict().reasons());
    // What follows from a wash or an inspection that does not count is told by the edition's rows;
    // why it does not is told beside them.
    if (after.reasons().stream().anyMatch(each -> NO_LONGER_COUNTS.contains(each.kind()))) {
      assertThat(after.reasons())
          .filteredOn(reason -> NO_LONGER_COUNTS.contains(reason.kind()))
          .allSatisfy(
              reason ->
                  assertThat(reason.row().orElseThrow().provenance().origin()).isEqualTo(one.id()));
      return;
    }
    List<Reason> added =
        after.reasons().stream().filter(reason -> !before.contains(reason)).toList();
    assertThat(added).allSatisfy(reason -> assertThat(namesLayer(reason, added, one)).isTrue());
  }

  /** What is to be dated first is so because a row asks for something about it. */
  private static boolean namesLayer(Reason reason, List<Reason> added, Overlay one) {
    if (reason.kind() == ReasonKind.UNDATED) {
      return added.stream()
          .filter(other -> other.kind() != ReasonKind.UNDATED)
          .filter(other -> other.finding().equals(reason.finding()))
          .anyMatch(other -> namesLayer(other, added, one));
    }
    return reason.row().map(row -> row.provenance().origin().equals(one.id())).orElse(false);
  }

  @Property
  void aRefusalNamesItsRowsAndLeavesTheRulesAsTheyWere(
      @ForAll("first") Overlay one, @ForAll GearCase given) {
    String before = FrozenRules.rules().identity().fingerprint();
    Checked<RuleSet, OverlayFault> result = FrozenRules.rules().with(List.of(one), given.asOf());
    if (result instanceof Checked.Refused<RuleSet, OverlayFault> refused) {
      Set<Object> keys =
          one.rows().all().stream().map(row -> row.key()).collect(Collectors.toSet());
      for (OverlayFault fault : refused.faults()) {
        assertThat(fault.overlay()).isEqualTo(one.id());
        assertThat(fault.row()).isPresent().get().isIn(keys);
        fault.loosens().ifPresent(row -> assertThat(fault.found()).contains(row.key().value()));
      }
    }
    assertThat(FrozenRules.rules().identity().fingerprint()).isEqualTo(before);
    assertThat(FrozenRules.rules().overlays()).isEmpty();
  }
}
