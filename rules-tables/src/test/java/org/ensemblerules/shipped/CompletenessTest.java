package org.ensemblerules.shipped;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.ensemblerules.defect.DefectKind;
import org.ensemblerules.defect.DefectRow;
import org.ensemblerules.effect.EffectKind;
import org.ensemblerules.gear.AnatomyRow;
import org.ensemblerules.inspection.CriterionRow;
import org.ensemblerules.inspection.InspectionKind;
import org.ensemblerules.ruleset.Tables;
import org.ensemblerules.source.OriginId;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Whatever there is gets looked at, and whatever is looked for has a rule. */
class CompletenessTest {
  static List<OriginId> editions() {
    return ShippedEditions.WITH_INSPECTION;
  }

  private static Tables tables(OriginId edition) {
    return ShippedEditions.rules(edition).tables();
  }

  @ParameterizedTest
  @MethodSource("editions")
  void everyPartIsLookedAtByAnInspectorOfTheLayers(OriginId edition) {
    Tables tables = tables(edition);
    List<String> missed = new ArrayList<>();
    for (AnatomyRow place : tables.anatomy().rows()) {
      boolean looked =
          tables.criteria().rows().stream()
              .filter(row -> row.element() == place.element() && row.use() == place.use())
              .filter(
                  row ->
                      row.kinds().contains(InspectionKind.ADVANCED)
                          || row.kinds().contains(InspectionKind.COMPLETE_LINER))
              .anyMatch(row -> row.sites().contains(place.site()));
      if (!looked) {
        missed.add(place.element() + " " + place.use() + " " + place.site());
      }
    }
    assertThat(missed).isEmpty();
  }

  @ParameterizedTest
  @MethodSource("editions")
  void everyKindOfDefectHasRows(OriginId edition) {
    Set<DefectKind> without = EnumSet.allOf(DefectKind.class);
    tables(edition).defects().rows().forEach(row -> without.remove(row.defect()));
    assertThat(without).isEmpty();
  }

  @ParameterizedTest
  @MethodSource("editions")
  void everyKindOfDefectIsLookedForSomewhere(OriginId edition) {
    Set<DefectKind> without = EnumSet.allOf(DefectKind.class);
    tables(edition).criteria().rows().forEach(row -> without.removeAll(row.lookFor()));
    // Not what an inspection looks for, but what somebody who may judge it has said of it.
    assertThat(without).isSubsetOf(DefectKind.BEYOND_REPAIR);
  }

  @ParameterizedTest
  @MethodSource("editions")
  void everyDefectLookedForHasARuleAtOneOfTheSites(OriginId edition) {
    Tables tables = tables(edition);
    Set<String> missed = new TreeSet<>();
    for (CriterionRow row : tables.criteria().rows()) {
      for (DefectKind defect : row.lookFor()) {
        if (row.sites().stream()
            .allMatch(
                site -> tables.defects().bands(row.element(), row.use(), site, defect).isEmpty())) {
          missed.add(row.key() + " looks for " + defect);
        }
      }
    }
    assertThat(missed).isEmpty();
  }

  @ParameterizedTest
  @MethodSource("editions")
  void everyEffectAndEveryInspectionOccurs(OriginId edition) {
    Set<EffectKind> effects = EnumSet.allOf(EffectKind.class);
    for (DefectRow row : tables(edition).defects().rows()) {
      effects.remove(row.effect().effectKind());
    }
    assertThat(effects).isEmpty();
    Set<InspectionKind> kinds = EnumSet.allOf(InspectionKind.class);
    tables(edition).criteria().rows().forEach(row -> kinds.removeAll(row.kinds()));
    assertThat(kinds).isEmpty();
  }
}
