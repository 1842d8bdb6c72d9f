package org.ensemblerules.testkit;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.ensemblerules.defect.Band;
import org.ensemblerules.defect.DefectKind;
import org.ensemblerules.defect.DefectRow;
import org.ensemblerules.defect.DefectTable;
import org.ensemblerules.defect.ExtentKind;
import org.ensemblerules.effect.Check;
import org.ensemblerules.effect.CheckRow;
import org.ensemblerules.effect.CheckTable;
import org.ensemblerules.effect.CleaningKind;
import org.ensemblerules.effect.CredentialScope;
import org.ensemblerules.effect.Effect;
import org.ensemblerules.effect.EntityKind;
import org.ensemblerules.effect.HandlingDuty;
import org.ensemblerules.effect.PermissionRow;
import org.ensemblerules.effect.PermissionTable;
import org.ensemblerules.effect.RepairClass;
import org.ensemblerules.effect.Scope;
import org.ensemblerules.effect.Task;
import org.ensemblerules.gear.AnatomyRow;
import org.ensemblerules.gear.AnatomyTable;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.LayerKind;
import org.ensemblerules.gear.Part;
import org.ensemblerules.gear.Presence;
import org.ensemblerules.gear.Site;
import org.ensemblerules.gear.Use;
import org.ensemblerules.inspection.CriteriaTable;
import org.ensemblerules.inspection.CriterionRow;
import org.ensemblerules.inspection.InspectionKind;
import org.ensemblerules.inspection.IntervalRow;
import org.ensemblerules.inspection.IntervalTable;
import org.ensemblerules.measure.Quantity;
import org.ensemblerules.measure.Unit;
import org.ensemblerules.retirement.AgeLimit;
import org.ensemblerules.retirement.AgeLimitRow;
import org.ensemblerules.retirement.AgeLimitTable;
import org.ensemblerules.ruleset.CautionRow;
import org.ensemblerules.ruleset.CautionTable;
import org.ensemblerules.ruleset.InspectionKinds;
import org.ensemblerules.ruleset.RuleSet;
import org.ensemblerules.ruleset.Subject;
import org.ensemblerules.ruleset.TableMap;
import org.ensemblerules.ruleset.Tables;
import org.ensemblerules.source.Basis;
import org.ensemblerules.source.Confidence;
import org.ensemblerules.source.Edition;
import org.ensemblerules.source.HowSeen;
import org.ensemblerules.source.OriginId;
import org.ensemblerules.source.Provenance;
import org.ensemblerules.source.RowKey;
import org.ensemblerules.source.SourceId;

/** A rule set for every kind of element, small and invented, that no release of data changes. */
public final class InventedRules {
  private static final OriginId EDITION = new OriginId("INVENTED_2015");
  private static final List<Site> SITES =
      List.of(
          Site.of(Part.WHOLE_ELEMENT),
          Site.of(Part.FABRIC, LayerKind.OUTER_SHELL),
          Site.of(Part.FABRIC, LayerKind.MOISTURE_BARRIER),
          Site.of(Part.LABEL));
  private static final RuleSet RULES = compose();

  private final List<Basis> bases =
      List.of(
          new Basis.Published(new SourceId("invented-book"), Optional.of("1.2"), HowSeen.READ),
          new Basis.Published(new SourceId("invented-book"), Optional.empty(), HowSeen.RESTATED),
          new Basis.CommonPractice(),
          new Basis.Memory(Confidence.LOW, Optional.of(new SourceId("invented-book"))),
          new Basis.Memory(Confidence.HIGH, Optional.empty()));
  private int count;

  private InventedRules() {}

  /**
   * Returns the rule set.
   *
   * @return the same set at every call
   */
  public static RuleSet rules() {
    return RULES;
  }

  /**
   * Returns the keys of its criteria.
   *
   * @return the keys
   */
  public static List<RowKey> criteria() {
    return RULES.tables().criteria().rows().stream().map(CriterionRow::key).toList();
  }

  private static RuleSet compose() {
    InventedRules rules = new InventedRules();
    Edition edition =
        new Edition(
            rules.next("edition"),
            EDITION,
            1,
            "Invented rules",
            Optional.of(LocalDate.of(2015, 1, 1)),
            Optional.empty());
    return RuleSet.of(
        Map.of(Subject.PRODUCT, edition, Subject.INSPECTION, edition, Subject.AGE, edition),
        rules.tables(),
        Map.of("invented/defects.json", 3, "invented/ages.json", 1));
  }

  private Tables tables() {
    List<AnatomyRow> parts = new ArrayList<>();
    List<DefectRow> defects = new ArrayList<>();
    List<CriterionRow> criteria = new ArrayList<>();
    List<IntervalRow> intervals = new ArrayList<>();
    List<AgeLimitRow> ages = new ArrayList<>();
    for (ElementKind element : ElementKind.values()) {
      for (Use use : Use.values()) {
        String name = element + "/" + use;
        SITES.forEach(
            site ->
                parts.add(
                    new AnatomyRow(
                        next(name + "/" + site), element, use, site, Presence.OPTIONAL)));
        defects(defects, element, use);
        criteria.add(criterion(name, element, use));
        for (InspectionKind kind : InspectionKind.values()) {
          intervals.add(new IntervalRow(next(name + "/" + kind), kind, element, use, 12, 6, 12));
        }
        ages(ages, element, use);
      }
    }
    AnatomyTable anatomy = AnatomyTable.of(parts).orElseThrow();
    return Tables.of(
        TableMap.none()
            .with(InspectionKinds.ANATOMY, anatomy)
            .with(InspectionKinds.CHECKS, CheckTable.of(checks()).orElseThrow())
            .with(InspectionKinds.PERMISSIONS, PermissionTable.of(permissions()).orElseThrow())
            .with(InspectionKinds.DEFECTS, DefectTable.of(defects, anatomy).orElseThrow())
            .with(InspectionKinds.CRITERIA, CriteriaTable.of(criteria, anatomy).orElseThrow())
            .with(InspectionKinds.INTERVALS, IntervalTable.of(intervals).orElseThrow())
            .with(InspectionKinds.AGE_LIMITS, AgeLimitTable.of(ages).orElseThrow())
            .with(InspectionKinds.CAUTIONS, CautionTable.of(cautions()).orElseThrow()));
  }

  private void defects(List<DefectRow> rows, ElementKind element, Use use) {
    List<Effect> effects =
        List.of(
            new Effect.Note(),
            new Effect.Clean(CleaningKind.ADVANCED, Scope.ELEMENT),
            new Effect.Repair(RepairClass.BASIC, Scope.LAYER),
            new Effect.ReplacePart(RepairClass.ADVANCED),
            new Effect.Evaluate(Check.EXPERT_EVALUATION, Scope.PART),
            new Effect.Retire(Scope.LAYER),
            new Effect.Retire(Scope.ELEMENT));
    Quantity inch = Quantity.of("1.0", Unit.INCH);
    for (Site site : SITES) {
      for (DefectKind defect : DefectKind.values()) {
        // A third of the cells has no row, and a third asks for a length.
        String name = element + "/" + use + "/" + site + "/" + defect;
        int turn = defect.ordinal() + site.index() + element.ordinal();
        Effect effect = effects.get(turn % effects.size());
        if (turn % 3 == 1) {
          rows.add(row(name, element, use, site, defect, new Band.Presence(), effect));
        } else if (turn % 3 == 2) {
          Band upTo = new Band.Range(ExtentKind.LENGTH, Optional.empty(), Optional.of(inch));
          Band over = new Band.Range(ExtentKind.LENGTH, Optional.of(inch), Optional.empty());
          rows.add(row(name + "/short", element, use, site, defect, upTo, new Effect.Note()));
          rows.add(row(name + "/long", element, use, site, defect, over, effect));
        }
      }
    }
  }

  private DefectRow row(
      String name,
      ElementKind element,
      Use use,
      Site site,
      DefectKind defect,
      Band band,
      Effect effect) {
    boolean evaluates = effect instanceof Effect.Evaluate;
    return new DefectRow(
        next(name),
        element,
        use,
        site,
        defect,
        band,
        effect,
        effect.isFinal() ? EnumSet.of(HandlingDuty.ISOLATE, HandlingDuty.BIOHAZARD) : Set.of(),
        effect instanceof Effect.Repair ? EnumSet.of(Check.SEAM_PULL) : Set.of(),
        evaluates,
        "Invented: " + defect + " at " + site + ".");
  }

  private CriterionRow criterion(String name, ElementKind element, Use use) {
    return new CriterionRow(
        next("look/" + name),
        EnumSet.allOf(InspectionKind.class),
        element,
        use,
        1,
        List.of(Site.of(Part.FABRIC, LayerKind.OUTER_SHELL)),
        EnumSet.of(DefectKind.TEAR),
        Set.of(),
        Set.of(),
        "Look.");
  }

  private void ages(List<AgeLimitRow> rows, ElementKind element, Use use) {
    List<AgeLimit> limits =
        List.of(new AgeLimit.Years(10), new AgeLimit.NoneSet(), new AgeLimit.NotSeen());
    AgeLimit own = limits.get((element.ordinal() + use.ordinal()) % limits.size());
    String name = "age/" + element + "/" + use;
    rows.add(new AgeLimitRow(next(name), element, use, Optional.empty(), own));
    for (LayerKind layer : EnumSet.of(LayerKind.OUTER_SHELL, LayerKind.LINER_SYSTEM)) {
      rows.add(
          new AgeLimitRow(
              next(name + "/" + layer), element, use, Optional.of(layer), new AgeLimit.Years(10)));
    }
  }

  private List<PermissionRow> permissions() {
    List<PermissionRow> rows = new ArrayList<>();
    for (Task task : Task.values()) {
      rows.add(
          new PermissionRow(
              next("may/" + task + "/PROVIDER"),
              task,
              EntityKind.VERIFIED_INDEPENDENT_SERVICE_PROVIDER,
              Optional.empty()));
      rows.add(
          new PermissionRow(
              next("may/" + task + "/ORGANIZATION"),
              task,
              EntityKind.ORGANIZATION,
              Optional.of(CredentialScope.INSPECT)));
    }
    return rows;
  }

  private List<CheckRow> checks() {
    return Arrays.stream(Check.values())
        .map(
            check ->
                new CheckRow(
                    next("check/" + check),
                    check,
                    Task.ADVANCED_INSPECTION,
                    check != Check.SEAM_PULL,
                    "Invented: " + check + " is shown."))
        .toList();
  }

  private List<CautionRow> cautions() {
    return List.of(
        new CautionRow(
            next("caution"), Set.of(), Set.of(), Set.of(), "Invented: computed from reports."));
  }

  /** The bases take turns; every other row has a note. */
  private Provenance next(String key) {
    count++;
    return new Provenance(
        new RowKey("invented/" + key),
        EDITION,
        bases.get(count % bases.size()),
        LocalDate.of(2025, 12, 31),
        count % 2 == 0 ? Optional.of("Invented.") : Optional.empty());
  }
}
