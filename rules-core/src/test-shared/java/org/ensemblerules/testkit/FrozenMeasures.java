package org.ensemblerules.testkit;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.ensemblerules.care.CareDemand;
import org.ensemblerules.care.CareLimitRow;
import org.ensemblerules.care.CareLimitTable;
import org.ensemblerules.care.WashBoundRow;
import org.ensemblerules.care.WashBoundTable;
import org.ensemblerules.care.WashMeasure;
import org.ensemblerules.care.WashPractice;
import org.ensemblerules.defect.DefectKind;
import org.ensemblerules.effect.Check;
import org.ensemblerules.fieldcheck.CheckLimitRow;
import org.ensemblerules.fieldcheck.CheckLimitTable;
import org.ensemblerules.fieldcheck.Condition;
import org.ensemblerules.fieldcheck.ConditionRow;
import org.ensemblerules.fieldcheck.ConditionTable;
import org.ensemblerules.fieldcheck.Expected;
import org.ensemblerules.fieldcheck.StrongerRow;
import org.ensemblerules.fieldcheck.StrongerTable;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.LayerKind;
import org.ensemblerules.gear.Part;
import org.ensemblerules.gear.Site;
import org.ensemblerules.gear.Use;
import org.ensemblerules.measure.Limit;
import org.ensemblerules.measure.Unit;
import org.ensemblerules.source.OriginId;
import org.ensemblerules.strength.Direction;
import org.ensemblerules.strength.HydrostaticRow;
import org.ensemblerules.strength.HydrostaticTable;
import org.ensemblerules.strength.MethodRow;
import org.ensemblerules.strength.MethodTable;
import org.ensemblerules.strength.Property;
import org.ensemblerules.strength.RequirementRow;
import org.ensemblerules.strength.RequirementTable;
import org.ensemblerules.strength.SmallSampleTable;
import org.ensemblerules.strength.SpecimenValue;
import org.ensemblerules.strength.Statistic;
import org.ensemblerules.strength.StrengthTables;
import org.ensemblerules.strength.TestMethod;

/** Under what conditions, within what limits, against what requirements: invented numbers. */
public final class FrozenMeasures {
  /** The product edition of the requirement. */
  public static final OriginId PRODUCT = new OriginId("FROZEN_PRODUCT");

  /** The method of the requirement; it destroys its specimens. */
  public static final TestMethod STRIP = new TestMethod("FROZEN_STRIP");

  /** The part that the requirement is for. */
  public static final Site SHELL = Site.of(Part.FABRIC, LayerKind.OUTER_SHELL);

  /** The check that counts only under conditions. */
  static final Check LAMP = Check.LIGHT_THROUGH_LINER;

  private FrozenMeasures() {}

  static ConditionTable conditions() {
    StrongerTable stronger =
        StrongerTable.of(
                List.of(
                    new StrongerRow(
                        FrozenProvenance.of("stronger", LAMP), LAMP, Check.LINER_INSPECTION)))
            .orElseThrow();
    return ConditionTable.of(
            List.of(
                new ConditionRow(
                    FrozenProvenance.of("condition", "clean"),
                    LAMP,
                    Condition.ITEM_CLEAN,
                    new Expected.Yes(),
                    true),
                new ConditionRow(
                    FrozenProvenance.of("condition", "places"),
                    LAMP,
                    Condition.PLACES,
                    new Expected.CountAtLeast(3),
                    false)),
            stronger)
        .orElseThrow();
  }

  static CheckLimitTable checkLimits() {
    return CheckLimitTable.of(
            List.of(
                new CheckLimitRow(
                    FrozenProvenance.of("check-limit"),
                    Check.FIT_AND_OVERLAP,
                    Limit.atLeast("2", Unit.INCH),
                    DefectKind.OVERLAP_TOO_SMALL)))
        .orElseThrow();
  }

  static CareLimitTable careLimits() {
    return CareLimitTable.of(
            FrozenRules.KINDS.stream()
                .flatMap(
                    kind ->
                        List.of(
                            care(
                                kind,
                                new CareDemand.Within(
                                    WashMeasure.WATER_TEMPERATURE,
                                    Limit.atMost("40", Unit.DEGREE_CELSIUS))),
                            care(kind, new CareDemand.Forbidden(WashPractice.CHLORINE_BLEACH)))
                            .stream())
                .toList())
        .orElseThrow();
  }

  /** How warm any maker may have the water, and what temperatures there are. */
  static WashBoundTable washBounds() {
    return WashBoundTable.of(
            List.of(
                washBound(WashBoundRow.Reach.LOOSEST, Limit.atMost("60", Unit.DEGREE_CELSIUS)),
                washBound(WashBoundRow.Reach.POSSIBLE, Limit.atLeast("0", Unit.KELVIN))))
        .orElseThrow();
  }

  private static WashBoundRow washBound(WashBoundRow.Reach reach, Limit limit) {
    return new WashBoundRow(
        FrozenProvenance.of("bound", reach, limit.bound()),
        WashMeasure.WATER_TEMPERATURE,
        reach,
        limit);
  }

  private static CareLimitRow care(ElementKind kind, CareDemand demand) {
    return new CareLimitRow(
        FrozenProvenance.of("care", kind, demand.subject()),
        kind,
        Use.STRUCTURAL,
        Optional.empty(),
        demand);
  }

  static StrengthTables strength() {
    return new StrengthTables(
        RequirementTable.of(
                List.of(
                    new RequirementRow(
                        FrozenProvenance.of("requirement"),
                        PRODUCT,
                        Property.BREAKING_STRENGTH,
                        ElementKind.COAT,
                        Use.STRUCTURAL,
                        SHELL,
                        Optional.empty(),
                        Set.of(Direction.WARP),
                        Set.of(STRIP),
                        new SpecimenValue.AsRead(),
                        Statistic.MEAN_OF_SPECIMENS,
                        Limit.atLeast("500", Unit.NEWTON),
                        1,
                        false,
                        "Breaks at 500 N or more.")))
            .orElseThrow(),
        MethodTable.of(
                List.of(
                    new MethodRow(
                        FrozenProvenance.of("method"),
                        STRIP,
                        "an invented strip test",
                        true,
                        1,
                        Map.of(),
                        1)),
                List.of())
            .orElseThrow(),
        SmallSampleTable.of(List.of()).orElseThrow(),
        HydrostaticTable.of(
                List.of(
                    new HydrostaticRow(
                        FrozenProvenance.of("barrier"),
                        ElementKind.COAT,
                        Use.STRUCTURAL,
                        Limit.atLeast("12", Unit.KILOPASCAL),
                        Limit.atLeast("40", Unit.SECOND),
                        2,
                        1,
                        "Invented.")))
            .orElseThrow());
  }
}
