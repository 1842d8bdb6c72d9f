package org.ensemblerules.testkit;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.ensemblerules.defect.DefectTable;
import org.ensemblerules.defect.Finding;
import org.ensemblerules.effect.CheckTable;
import org.ensemblerules.effect.DestinationTable;
import org.ensemblerules.effect.PermissionTable;
import org.ensemblerules.gear.AnatomyTable;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.history.ReturnTable;
import org.ensemblerules.inspection.CriteriaTable;
import org.ensemblerules.inspection.IntervalTable;
import org.ensemblerules.inspection.SignOffReading;
import org.ensemblerules.retirement.AgeLimitTable;
import org.ensemblerules.ruleset.CareKinds;
import org.ensemblerules.ruleset.CautionTable;
import org.ensemblerules.ruleset.InspectionKinds;
import org.ensemblerules.ruleset.RuleSet;
import org.ensemblerules.ruleset.StrengthKinds;
import org.ensemblerules.ruleset.Subject;
import org.ensemblerules.ruleset.TableMap;
import org.ensemblerules.ruleset.Tables;
import org.ensemblerules.source.Edition;
import org.ensemblerules.source.OriginId;
import org.ensemblerules.strength.StrengthTables;

/**
 * A small, invented rule set that no data release changes. It has every kind of band, effect and
 * duty, so that tests of the logic rest on it and not on what the shipped tables happen to say.
 */
public final class FrozenRules {
  /** The kinds of element that the frozen rules know, all for structural use. */
  public static final List<ElementKind> KINDS =
      List.of(ElementKind.COAT, ElementKind.GLOVES, ElementKind.HELMET);

  /** The day the frozen edition took effect. */
  public static final LocalDate EFFECTIVE = LocalDate.of(2018, 7, 1);

  private static final Tables TABLES = compiled();
  private static final RuleSet RULES = of(TABLES);

  private FrozenRules() {}

  /**
   * Returns the rule set.
   *
   * @return the same set at every call
   */
  public static RuleSet rules() {
    return RULES;
  }

  /**
   * Reads sign-offs by the frozen edition.
   *
   * @param findings what the history says was found
   * @return the reading
   */
  public static SignOffReading signOffs(Finding... findings) {
    return new SignOffReading(RULES.evidenceTables().editions(), List.of(findings), List.of());
  }

  /**
   * Returns the tables of the rule set.
   *
   * @return the same tables at every call
   */
  public static Tables tables() {
    return TABLES;
  }

  private static Tables compiled() {
    AnatomyTable anatomy = AnatomyTable.of(FrozenAnatomy.rows()).orElseThrow();
    StrengthTables strength = FrozenMeasures.strength();
    return Tables.of(
        TableMap.none()
            .with(InspectionKinds.ANATOMY, anatomy)
            .with(InspectionKinds.CHECKS, CheckTable.of(FrozenDuties.checks()).orElseThrow())
            .with(
                InspectionKinds.PERMISSIONS,
                PermissionTable.of(FrozenDuties.permissions()).orElseThrow())
            .with(
                InspectionKinds.DEFECTS,
                DefectTable.of(FrozenDefects.rows(), anatomy).orElseThrow())
            .with(
                InspectionKinds.CRITERIA,
                CriteriaTable.of(FrozenSchedules.criteria(), anatomy).orElseThrow())
            .with(
                InspectionKinds.INTERVALS,
                IntervalTable.of(FrozenSchedules.intervals()).orElseThrow())
            .with(
                InspectionKinds.AGE_LIMITS,
                AgeLimitTable.of(FrozenSchedules.ageLimits()).orElseThrow())
            .with(
                InspectionKinds.CAUTIONS, CautionTable.of(FrozenSchedules.cautions()).orElseThrow())
            .with(InspectionKinds.CONDITIONS, FrozenMeasures.conditions())
            .with(InspectionKinds.CHECK_LIMITS, FrozenMeasures.checkLimits())
            .with(CareKinds.CARE_LIMITS, FrozenMeasures.careLimits())
            .with(CareKinds.CARE_ROUTES, FrozenCare.routes())
            .with(
                InspectionKinds.DESTINATIONS,
                DestinationTable.of(FrozenDuties.destinations()).orElseThrow())
            .with(InspectionKinds.RETURNS, ReturnTable.of(FrozenDuties.returns()).orElseThrow())
            .with(CareKinds.WASH_BOUNDS, FrozenMeasures.washBounds())
            .with(InspectionKinds.TASKS, FrozenCare.tasks())
            .with(StrengthKinds.REQUIREMENTS, strength.requirements())
            .with(StrengthKinds.METHODS, strength.methods())
            .with(StrengthKinds.SMALL_SAMPLES, strength.smallSamples())
            .with(StrengthKinds.HYDROSTATIC, strength.hydrostatic()));
  }

  /**
   * Puts tables together under the frozen edition.
   *
   * @param tables the tables
   * @return a rule set
   */
  public static RuleSet of(Tables tables) {
    Edition edition =
        new Edition(
            FrozenProvenance.of("edition"),
            FrozenProvenance.EDITION,
            2,
            "Invented rules, edition of 2020",
            Optional.of(EFFECTIVE),
            Optional.empty());
    Edition earlier =
        new Edition(
            FrozenProvenance.of("edition", "earlier"),
            new OriginId("FROZEN_2010"),
            1,
            "Invented rules, edition of 2010",
            Optional.empty(),
            Optional.of(FrozenProvenance.EDITION));
    return RuleSet.of(
        Map.of(Subject.CARE, edition, Subject.INSPECTION, edition, Subject.AGE, earlier),
        tables,
        Map.of("defects", 1));
  }
}
