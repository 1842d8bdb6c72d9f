package org.ensemblerules.shipped;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.ensemblerules.GearRules;
import org.ensemblerules.defect.DefectKind;
import org.ensemblerules.defect.DefectRow;
import org.ensemblerules.defect.Demand;
import org.ensemblerules.defect.Extent;
import org.ensemblerules.defect.Finding;
import org.ensemblerules.defect.FindingId;
import org.ensemblerules.effect.EffectKind;
import org.ensemblerules.gear.AnatomyRow;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.ruleset.RuleSet;
import org.ensemblerules.source.OriginId;
import org.ensemblerules.testkit.ShippedExtents;
import org.ensemblerules.testkit.ShippedGear;
import org.ensemblerules.testkit.ShippedGear.Kind;
import org.ensemblerules.verdict.Assessment;
import org.ensemblerules.verdict.ReasonKind;
import org.ensemblerules.verdict.Service;
import org.ensemblerules.verdict.Verdict;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestReporter;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** A finding on an element that nothing else speaks against: named, and IN only if a note. */
@Tag("slow")
class VerdictWalkTest {
  private static final FindingId ID = new FindingId("F1");
  private static final Map<Demand.Kind, ReasonKind> KINDS =
      new EnumMap<>(
          Map.of(
              Demand.Kind.RULE, ReasonKind.RULE,
              Demand.Kind.MUST_MEASURE, ReasonKind.MUST_MEASURE,
              Demand.Kind.NO_RULE, ReasonKind.NO_RULE,
              Demand.Kind.NO_SUCH_PART, ReasonKind.NO_SUCH_PART));
  // A prime, so that the steps fall on other defects and extents at each part.
  private static final int STRIDE = 499;

  static List<OriginId> editions() {
    return ShippedEditions.WITH_INSPECTION;
  }

  @ParameterizedTest
  @MethodSource("editions")
  void theElementsAreFitWithoutAFinding(OriginId edition) {
    RuleSet rules = ShippedEditions.rules(edition);
    for (Kind kind : ShippedGear.kinds(rules)) {
      Verdict verdict =
          GearRules.of(rules).assess(ShippedGear.fit(rules, kind).build(), ShippedGear.AS_OF);
      assertThat(verdict.reasons()).as("%s", kind).isEmpty();
      assertThat(verdict.service()).isEqualTo(Service.IN);
    }
  }

  @Test
  void everyRowOfTheDefaultEditionAtEachOfItsEdges(TestReporter report) {
    RuleSet rules = ShippedEditions.rules(ShippedEditions.EDITION_2020);
    List<Extent> extents = ShippedExtents.of(rules.tables().defects());
    Map<Kind, Assessment> fit = fit(rules);
    long combinations = 0;
    for (AnatomyRow place : rules.tables().anatomy().rows()) {
      for (DefectKind defect : DefectKind.values()) {
        List<DefectRow> bands =
            rules.tables().defects().bands(place.element(), place.use(), place.site(), defect);
        List<Extent> asked =
            bands.isEmpty()
                ? List.of(new Extent.NotMeasured())
                : ShippedExtents.deciding(extents, bands.get(0).band().kind());
        for (Extent extent : asked) {
          judge(rules, fit, place, defect, extent);
          combinations++;
        }
      }
    }
    report.publishEntry("NFPA_1851_2020 verdicts on one finding", Long.toString(combinations));
  }

  @ParameterizedTest
  @MethodSource("editions")
  void everySoManiethOfAllCombinations(OriginId edition, TestReporter report) {
    RuleSet rules = ShippedEditions.rules(edition);
    List<Extent> extents = ShippedExtents.of(rules.tables().defects());
    List<AnatomyRow> places = rules.tables().anatomy().rows();
    int defects = DefectKind.values().length;
    Map<Kind, Assessment> fit = fit(rules);
    long all = (long) places.size() * defects * extents.size();
    long combinations = 0;
    for (long step = editions().indexOf(edition); step < all; step += STRIDE) {
      int at = (int) (step / extents.size());
      judge(
          rules,
          fit,
          places.get(at / defects),
          DefectKind.values()[at % defects],
          extents.get((int) (step % extents.size())));
      combinations++;
    }
    report.publishEntry(edition + " verdicts, one in " + STRIDE, Long.toString(combinations));
  }

  private static Map<Kind, Assessment> fit(RuleSet rules) {
    return ShippedGear.kinds(rules).stream()
        .collect(
            Collectors.toMap(Function.identity(), kind -> ShippedGear.fit(rules, kind).build()));
  }

  private static Assessment with(Assessment fit, Finding finding) {
    return Assessment.builder(fit.element()).history(fit.history()).finding(finding).build();
  }

  private static void judge(
      RuleSet rules,
      Map<Kind, Assessment> fit,
      AnatomyRow place,
      DefectKind defect,
      Extent extent) {
    Finding finding =
        new Finding(ID, place.site(), "", defect, extent, MarkedDate.of(ShippedGear.AS_OF));
    Assessment assessment =
        with(Objects.requireNonNull(fit.get(new Kind(place.element(), place.use()))), finding);
    List<Demand> demands =
        Demand.of(
            finding, assessment.element(), rules.tables().anatomy(), rules.tables().defects());
    Verdict verdict = GearRules.of(rules).assess(assessment, ShippedGear.AS_OF);
    boolean onlyNoted =
        demands.stream().allMatch(demand -> demand.effect().effectKind() == EffectKind.NOTE);
    List<String> wrong = new ArrayList<>();
    if ((verdict.service() == Service.IN) != onlyNoted) {
      wrong.add("service " + verdict.service());
    }
    for (Demand demand : demands) {
      if (verdict.reasons().stream()
          .noneMatch(
              reason ->
                  reason.finding().equals(Optional.of(ID))
                      && reason.kind() == KINDS.get(demand.kind())
                      && reason.effect().equals(demand.effect())
                      && reason.site().equals(demand.site())
                      && reason.rowKey().equals(demand.row().map(DefectRow::key)))) {
        wrong.add("no reason for " + demand);
      }
    }
    if (verdict.reasons().size() != demands.size()) {
      wrong.add("reasons " + verdict.reasons());
    }
    if (!wrong.isEmpty()) {
      assertThat(wrong).as("%s %s", place.key(), finding.text()).isEmpty();
    }
  }
}
