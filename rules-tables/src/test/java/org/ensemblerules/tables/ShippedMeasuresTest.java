package org.ensemblerules.tables;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.ensemblerules.ruleset.CareKinds;
import org.ensemblerules.ruleset.InspectionKinds;
import org.ensemblerules.ruleset.StrengthKinds;
import org.ensemblerules.ruleset.Subject;
import org.ensemblerules.source.OriginId;
import org.ensemblerules.strength.RequirementRow;
import org.ensemblerules.strength.RequirementTable;
import org.ensemblerules.tables.set.EditionTables;
import org.ensemblerules.tables.set.LoadedTables;
import org.ensemblerules.testkit.ShippedLoad;
import org.junit.jupiter.api.Test;

/** How much the shipped tables say of measurements, edition by edition. */
class ShippedMeasuresTest {
  private static final OriginId CARE_2001 = new OriginId("NFPA_1851_2001");
  private static final OriginId CARE_2008 = new OriginId("NFPA_1851_2008");
  private static final OriginId CARE_2014 = new OriginId("NFPA_1851_2014");
  private static final OriginId CARE_2020 = new OriginId("NFPA_1851_2020");
  private static final OriginId CARE_2026 = new OriginId("NFPA_1850_2026");

  private final LoadedTables tables = ShippedLoad.tables();

  @Test
  void productEditionsHaveRequirementsInTheOrderOfPublication() {
    Map<String, Integer> families = new LinkedHashMap<>();
    Map<String, Integer> rows = new LinkedHashMap<>();
    for (var edition : tables.editions(Subject.PRODUCT)) {
      List<RequirementRow> of = requirements(edition.id());
      rows.put(edition.id().value(), of.size());
      families.put(
          edition.id().value(),
          (int) of.stream().map(row -> row.key().value().split("/", 2)[0]).distinct().count());
      assertThat(of).extracting(RequirementRow::product).containsOnly(edition.id());
    }
    assertThat(List.copyOf(rows.keySet()))
        .containsExactly(
            "US_FEDERAL_1980",
            "EN_469_1995",
            "NFPA_1971_2000",
            "EN_469_2005",
            "NFPA_1971_2007",
            "NFPA_1971_2013",
            "NFPA_1971_2018");
    assertThat(rows.values()).containsExactly(3, 18, 96, 33, 117, 130, 123);
    assertThat(families.values()).containsExactly(1, 4, 34, 5, 42, 45, 46);
    assertThat(tables.find(StrengthKinds.REQUIREMENTS).orElseThrow().rows()).hasSize(520);
  }

  @Test
  void theTradeHasMethodsDiscardsHydrostaticRowsAndFactors() {
    assertThat(tables.find(StrengthKinds.METHODS).orElseThrow().rows()).hasSize(34);
    assertThat(tables.find(StrengthKinds.METHODS).orElseThrow().discardRows()).hasSize(12);
    assertThat(tables.find(StrengthKinds.HYDROSTATIC).orElseThrow().rows()).hasSize(6);
    assertThat(tables.find(StrengthKinds.SMALL_SAMPLES).orElseThrow().rows()).hasSize(132);
  }

  @Test
  void editionsOfCareHaveConditionsAndLimits() {
    for (OriginId edition : List.of(CARE_2008, CARE_2014, CARE_2020)) {
      EditionTables of = tables.tables(edition);
      assertThat(of.find(InspectionKinds.CONDITIONS).orElseThrow().rows())
          .as("%s", edition)
          .hasSize(29);
      assertThat(of.find(InspectionKinds.STRONGER_CHECKS).orElseThrow().rows())
          .as("%s", edition)
          .hasSize(12);
      assertThat(of.find(InspectionKinds.CHECK_LIMITS).orElseThrow().rows())
          .as("%s", edition)
          .hasSize(1);
    }
    assertThat(tables.tables(CARE_2008).find(CareKinds.CARE_LIMITS).orElseThrow().rows())
        .hasSize(192);
    assertThat(tables.tables(CARE_2014).find(CareKinds.CARE_LIMITS).orElseThrow().rows())
        .hasSize(192);
    assertThat(tables.tables(CARE_2020).find(CareKinds.CARE_LIMITS).orElseThrow().rows())
        .hasSize(228);
    assertThat(tables.tables(CARE_2014).find(CareKinds.CLEANING_RESULTS)).isEmpty();
    assertThat(tables.tables(CARE_2020).find(CareKinds.CLEANING_RESULTS).orElseThrow().rows())
        .hasSize(3);
  }

  @Test
  void rulesAreListedOnlyForEditionsThatInspect() {
    assertThat(ShippedRules.editions())
        .extracting(edition -> edition.id())
        .containsExactly(CARE_2008, CARE_2014, CARE_2020, CARE_2026);
    assertThat(tables.editions(Subject.CARE))
        .extracting(edition -> edition.id())
        .containsExactly(CARE_2001, CARE_2008, CARE_2014, CARE_2020, CARE_2026);
  }

  /** The edition of 2001 has tasks and ages, and nothing to inspect by: no rules. */
  @Test
  void tasksByEdition() {
    assertThat(tables.tables(CARE_2001).find(InspectionKinds.TASKS).orElseThrow().rows())
        .hasSize(21);
    assertThat(tables.tables(CARE_2008).find(InspectionKinds.TASKS).orElseThrow().rows())
        .hasSize(96);
    assertThat(tables.tables(CARE_2014).find(InspectionKinds.TASKS).orElseThrow().rows())
        .hasSize(120);
    assertThat(tables.tables(CARE_2020).find(InspectionKinds.TASKS).orElseThrow().rows())
        .hasSize(156);
    assertThat(tables.tables(CARE_2001).find(CareKinds.CARE_LIMITS)).isEmpty();
  }

  @Test
  void everyRequirementIsOfAPartThatTheElementHas() {
    assertThat(tables.find(StrengthKinds.REQUIREMENTS).map(RequirementTable::rows).orElseThrow())
        .allMatch(
            row ->
                tables
                    .find(InspectionKinds.ANATOMY)
                    .orElseThrow()
                    .at(row.element(), row.use(), row.site())
                    .isPresent());
  }

  private List<RequirementRow> requirements(OriginId edition) {
    Optional<RequirementTable> of = tables.tables(edition).find(StrengthKinds.REQUIREMENTS);
    return of.orElseThrow().rows();
  }
}
