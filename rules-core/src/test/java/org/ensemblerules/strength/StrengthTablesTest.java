package org.ensemblerules.strength;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumSet;
import java.util.List;
import org.ensemblerules.measure.Limit;
import org.ensemblerules.measure.Unit;
import org.ensemblerules.source.Checked;
import org.ensemblerules.source.OriginId;
import org.ensemblerules.source.TableFault;
import org.junit.jupiter.api.Test;

class StrengthTablesTest {
  private static List<TableFault> faults(Checked<?, TableFault> result) {
    return result instanceof Checked.Refused<?, TableFault> faulty ? faulty.faults() : List.of();
  }

  private static RequirementRow breaking(String key, Property property, Unit unit) {
    return StrengthFixtures.requirement(
        key,
        property,
        StrengthFixtures.SHELL,
        StrengthFixtures.GRAB,
        EnumSet.of(Direction.WARP),
        new SpecimenValue.AsRead(),
        Statistic.MEAN_OF_SPECIMENS,
        Limit.atLeast("1", unit));
  }

  @Test
  void aRequirementTwiceAndAUnitThatDoesNotFit() {
    assertThat(
            faults(
                RequirementTable.of(
                    List.of(
                        breaking("one", Property.BREAKING_STRENGTH, Unit.NEWTON),
                        breaking("two", Property.BREAKING_STRENGTH, Unit.POUND_FORCE),
                        breaking("three", Property.WATER_PENETRATION, Unit.NEWTON)))))
        .extracting(fault -> fault.row().value() + " " + fault.field())
        .containsExactly("two construction", "three limit");
  }

  @Test
  void aRequirementByAMethodThatNobodyDescribes() {
    MethodTable methods =
        MethodTable.of(
                List.of(StrengthFixtures.method("strip", StrengthFixtures.STRIP, 1, 1)), List.of())
            .orElseThrow();
    assertThat(
            faults(
                RequirementTable.of(
                    List.of(breaking("one", Property.WATER_PENETRATION, Unit.NEWTON)), methods)))
        .extracting(fault -> fault.field() + " " + fault.found())
        .containsExactly("methods GRAB_TEST", "limit 1 N");
  }

  @Test
  void aRequirementCarriedOverKeepsEverythingButItsEdition() {
    RequirementRow row = breaking("one", Property.BREAKING_STRENGTH, Unit.NEWTON);
    OriginId later = new OriginId("PRODUCT_LATER");
    assertThat(row.of(later).product()).isEqualTo(later);
    assertThat(row.of(later).of(row.product())).isEqualTo(row);
    assertThat(row.of(later).provenance().origin()).isEqualTo(StrengthFixtures.PRODUCT);
  }

  @Test
  void aMethodTwiceAndARuleOfNone() {
    MethodRow row = StrengthFixtures.method("grab", StrengthFixtures.GRAB, 1, 1);
    assertThat(
            faults(
                MethodTable.of(
                    List.of(row, row),
                    List.of(
                        new DiscardRow(
                            StrengthFixtures.row("slip"),
                            StrengthFixtures.TEAR,
                            new DiscardRule.Slipped())))))
        .extracting(fault -> fault.row().value() + " " + fault.allowed())
        .containsExactly("grab each method once", "slip a method that the table has");
  }

  @Test
  void rowsOfEqualMeaningHaveEqualCanonicalValues() {
    assertThat(breaking("one", Property.BREAKING_STRENGTH, Unit.NEWTON).canonical())
        .isEqualTo(breaking("two", Property.BREAKING_STRENGTH, Unit.NEWTON).canonical())
        .isNotEqualTo(breaking("two", Property.BREAKING_STRENGTH, Unit.KILONEWTON).canonical());
  }
}
