package org.ensemblerules.fieldcheck;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.ensemblerules.effect.Check;
import org.ensemblerules.gear.AnatomyRow;
import org.ensemblerules.gear.AnatomyTable;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.Presence;
import org.ensemblerules.gear.Site;
import org.ensemblerules.gear.Use;
import org.junit.jupiter.api.Test;

class ApplicabilityTest {
  private static final AnatomyTable ANATOMY = anatomy();

  private static AnatomyTable anatomy() {
    List<AnatomyRow> rows = new ArrayList<>();
    for (Use use : Use.values()) {
      for (String site :
          List.of("WHOLE_ELEMENT", "FABRIC@OUTER_SHELL", "FABRIC@MOISTURE_BARRIER")) {
        rows.add(row(ElementKind.COAT, use, site));
      }
      rows.add(row(ElementKind.FOOTWEAR, use, "FOOTWEAR_UPPER"));
    }
    rows.add(row(ElementKind.COAT, Use.STRUCTURAL, "TRIM@OUTER_SHELL"));
    return AnatomyTable.of(rows).orElseThrow();
  }

  private static AnatomyRow row(ElementKind element, Use use, String site) {
    return new AnatomyRow(
        Rows.provenance(element + "/" + use + "/" + site),
        element,
        use,
        Site.parse(site),
        Presence.REQUIRED);
  }

  @Test
  void trimIsLookedAtWhereThereIsTrim() {
    assertThat(
            Applicability.of(Check.TRIM_BY_FLASHLIGHT, ElementKind.COAT, Use.STRUCTURAL, ANATOMY))
        .isEqualTo(new Applicability.Applies(List.of(Site.parse("TRIM@OUTER_SHELL"))));
  }

  /** Remembered, and said on a forum: proximity garments carry no retroreflective trim. */
  @Test
  void noTrimCheckAppliesToProximityGarments() {
    assertThat(Applicability.of(Check.TRIM_BY_FLASHLIGHT, ElementKind.COAT, Use.PROXIMITY, ANATOMY))
        .isEqualTo(
            new Applicability.NotApplicable(
                Check.TRIM_BY_FLASHLIGHT, ElementKind.COAT, Use.PROXIMITY));
  }

  @Test
  void barrierChecksApplyToGarmentsAndWaterEntryToFootwear() {
    for (Check check : List.of(Check.LINER_LEAKAGE, Check.BARRIER_UNDER_PRESSURE)) {
      assertThat(Applicability.of(check, ElementKind.COAT, Use.PROXIMITY, ANATOMY))
          .isInstanceOf(Applicability.Applies.class);
      assertThat(Applicability.of(check, ElementKind.FOOTWEAR, Use.PROXIMITY, ANATOMY))
          .isInstanceOf(Applicability.NotApplicable.class);
    }
    assertThat(Applicability.of(Check.WATER_ENTRY, ElementKind.FOOTWEAR, Use.STRUCTURAL, ANATOMY))
        .isInstanceOf(Applicability.Applies.class);
  }

  @Test
  void anyLookAppliesToWhateverExistsAndNothingToWhatDoesNot() {
    for (Check check : Check.values()) {
      assertThat(Applicability.of(check, ElementKind.HELMET, Use.STRUCTURAL, ANATOMY))
          .isInstanceOf(Applicability.NotApplicable.class);
    }
    assertThat(
            Applicability.of(Check.ADVANCED_INSPECTION, ElementKind.COAT, Use.PROXIMITY, ANATOMY))
        .isInstanceOf(Applicability.Applies.class);
  }
}
