package org.ensemblerules.audit.soundness;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.ensemblerules.care.CareAction;
import org.ensemblerules.care.CareRouteRow;
import org.ensemblerules.care.Exposure;
import org.ensemblerules.care.RouteStep;
import org.ensemblerules.defect.Band;
import org.ensemblerules.defect.DefectKind;
import org.ensemblerules.defect.DefectRow;
import org.ensemblerules.defect.ExtentKind;
import org.ensemblerules.defect.Grade;
import org.ensemblerules.effect.Check;
import org.ensemblerules.effect.CheckRow;
import org.ensemblerules.effect.CleaningKind;
import org.ensemblerules.effect.Effect;
import org.ensemblerules.effect.EntityKind;
import org.ensemblerules.effect.PermissionRow;
import org.ensemblerules.effect.RepairClass;
import org.ensemblerules.effect.Scope;
import org.ensemblerules.effect.Task;
import org.ensemblerules.fieldcheck.CheckLimitRow;
import org.ensemblerules.gear.AnatomyRow;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.LayerKind;
import org.ensemblerules.gear.Part;
import org.ensemblerules.gear.Presence;
import org.ensemblerules.gear.Site;
import org.ensemblerules.gear.Use;
import org.ensemblerules.inspection.CriterionRow;
import org.ensemblerules.inspection.InspectionKind;
import org.ensemblerules.inspection.IntervalRow;
import org.ensemblerules.measure.Limit;
import org.ensemblerules.measure.Quantity;
import org.ensemblerules.measure.Unit;
import org.ensemblerules.retirement.AgeLimit;
import org.ensemblerules.retirement.AgeLimitRow;
import org.ensemblerules.ruleset.CautionRow;
import org.ensemblerules.schedule.Discharge;
import org.ensemblerules.schedule.Start;
import org.ensemblerules.schedule.TaskKey;
import org.ensemblerules.schedule.TaskRow;
import org.ensemblerules.schedule.Timing;
import org.ensemblerules.source.Basis;
import org.ensemblerules.source.Confidence;
import org.ensemblerules.source.HowSeen;
import org.ensemblerules.source.OriginId;
import org.ensemblerules.source.Provenance;
import org.ensemblerules.source.Row;
import org.ensemblerules.source.RowKey;
import org.ensemblerules.source.SourceId;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** A small sound set of rows; each way of breaking it is found, and nothing else. */
class PlantedFlawsTest {
  private static final LocalDate AS_OF = LocalDate.of(2026, 11, 25);
  private static final SourceId SOURCE = new SourceId("invented-rules");
  private static final Site SHELL = Site.of(Part.HELMET_SHELL);
  private static final ElementKind HELMET = ElementKind.HELMET;
  private static final Use USE = Use.STRUCTURAL;
  private static final Effect MEND = new Effect.Repair(RepairClass.BASIC, Scope.PART);
  private static final Effect END = new Effect.Retire(Scope.ELEMENT);

  /** A way of breaking the set, and what it must be reported as. */
  record Planted(String name, FlawKind kind, Consumer<List<Row>> breaking) {
    @Override
    public String toString() {
      return kind + ": " + name;
    }
  }

  static List<Planted> planted() {
    return List.of(
        new Planted(
            "a defect looked for has no row",
            FlawKind.GAP,
            rows -> rows.removeIf(defect(DefectKind.CRACKING))),
        new Planted(
            "a part nobody looks at",
            FlawKind.GAP,
            rows -> rows.add(anatomy(Site.of(Part.BRACKETS)))),
        new Planted(
            "a task nobody may do", FlawKind.GAP, rows -> rows.removeIf(task(Task.RETIREMENT))),
        new Planted(
            "a check without a row",
            FlawKind.GAP,
            rows ->
                rows.removeIf(
                    row -> row instanceof CheckRow each && each.check() == Check.WATER_ENTRY)),
        new Planted(
            "an inspection that is never due",
            FlawKind.GAP,
            rows -> {
              rows.removeIf(row -> row instanceof IntervalRow || row instanceof TaskRow);
              rows.add(
                  new TaskRow(
                      from("washed"),
                      new TaskKey("wash"),
                      HELMET,
                      USE,
                      new Discharge.Cleaned(CleaningKind.ADVANCED),
                      new Timing.Every(Start.ISSUE, 12, 1, 12),
                      false));
            }),
        new Planted(
            "an exposure without a route",
            FlawKind.GAP,
            rows ->
                rows.removeIf(
                    row ->
                        row instanceof CareRouteRow each && each.exposure() == Exposure.ASBESTOS)),
        new Planted(
            "an element without an age",
            FlawKind.GAP,
            rows -> {
              rows.removeIf(AgeLimitRow.class::isInstance);
              rows.add(age("other", ElementKind.GLOVES));
              rows.add(
                  new AnatomyRow(
                      from("gloves"), ElementKind.GLOVES, USE, SHELL, Presence.REQUIRED));
            }),
        new Planted(
            "two bands that overlap",
            FlawKind.OVERLAP,
            rows -> {
              rows.removeIf(defect(DefectKind.CUT));
              rows.add(
                  row(
                      "small",
                      DefectKind.CUT,
                      length("0", "30"),
                      new Effect.Clean(CleaningKind.ADVANCED, Scope.PART)));
              rows.add(row("large", DefectKind.CUT, length("20", ""), MEND));
            }),
        new Planted(
            "a row behind a stricter one",
            FlawKind.MASKED,
            rows -> rows.add(row("milder", DefectKind.CRACKING, new Band.Presence(), MEND))),
        new Planted(
            "a task that is due more often already",
            FlawKind.MASKED,
            rows -> rows.add(every("seldom", 24))),
        new Planted(
            "the same row again",
            FlawKind.DUPLICATE,
            rows -> rows.add(row("again", DefectKind.CRACKING, new Band.Presence(), END))),
        new Planted(
            "a key used twice",
            FlawKind.DUPLICATE,
            rows -> rows.add(row("cracked", DefectKind.DENT, new Band.Presence(), END))),
        new Planted(
            "a criterion within another",
            FlawKind.SUBSUMED,
            rows -> rows.add(criterion("narrow", Set.of(DefectKind.CRACKING), SHELL, 20))),
        new Planted(
            "a caution within another",
            FlawKind.SUBSUMED,
            rows ->
                rows.add(
                    new CautionRow(
                        from("narrow-caution"), Set.of(HELMET), Set.of(), Set.of(), "Mind it."))),
        new Planted(
            "a part that does not exist",
            FlawKind.UNREACHABLE,
            rows ->
                rows.add(
                    new DefectRow(
                        from("nowhere"),
                        HELMET,
                        USE,
                        Site.of(Part.SOLE),
                        DefectKind.CUT,
                        new Band.Presence(),
                        END,
                        Set.of(),
                        Set.of(),
                        false,
                        "Nowhere."))),
        new Planted(
            "a layer that does not exist",
            FlawKind.UNREACHABLE,
            rows ->
                rows.add(
                    new AgeLimitRow(
                        from("layer"),
                        ElementKind.GLOVES,
                        USE,
                        Optional.of(LayerKind.OUTER_SHELL),
                        new AgeLimit.Years(10)))),
        new Planted(
            "an inspection that looks at nothing",
            FlawKind.UNREACHABLE,
            rows ->
                rows.add(
                    new IntervalRow(
                        from("liner"), InspectionKind.COMPLETE_LINER, HELMET, USE, 36, 36, 12))),
        new Planted(
            "bands with a gap",
            FlawKind.BANDS_DO_NOT_JOIN,
            rows -> {
              rows.removeIf(row -> row.key().value().equals("cut-large"));
              rows.add(row("larger", DefectKind.CUT, length("26", ""), END));
            }),
        new Planted(
            "bands without an end",
            FlawKind.BANDS_DO_NOT_JOIN,
            rows -> rows.removeIf(row -> row.key().value().equals("cut-large"))),
        new Planted(
            "a grade without an answer",
            FlawKind.BANDS_DO_NOT_JOIN,
            rows ->
                rows.add(
                    row("slight", DefectKind.DENT, new Band.Grades(Set.of(Grade.SLIGHT)), MEND))),
        new Planted(
            "a larger cut that is mended where a smaller one ends service",
            FlawKind.SEVERITY_FALLS,
            rows -> {
              rows.removeIf(defect(DefectKind.CUT));
              rows.add(row("cut-small", DefectKind.CUT, length("", "25"), END));
              rows.add(row("cut-large", DefectKind.CUT, length("25", ""), MEND));
            }),
        new Planted(
            "a source nobody lists",
            FlawKind.DANGLING_SOURCE,
            rows ->
                rows.add(
                    caution(
                        from(
                            "unlisted",
                            new Basis.Published(
                                new SourceId("no-such-source"), Optional.empty(), HowSeen.READ)),
                        "Mind."))),
        new Planted(
            "a site beside others without a row",
            FlawKind.SITE_WITHOUT_ROW,
            rows -> {
              rows.add(anatomy(Site.of(Part.EDGE)));
              rows.add(
                  new CriterionRow(
                      from("both"),
                      Set.of(InspectionKind.ADVANCED),
                      HELMET,
                      USE,
                      30,
                      List.of(SHELL, Site.of(Part.EDGE)),
                      Set.of(DefectKind.CRACKING),
                      Set.of(),
                      Set.of(),
                      "Look at both."));
            }),
        new Planted(
            "a row from memory of nothing",
            FlawKind.FROM_MEMORY,
            rows ->
                rows.add(
                    caution(
                        from("memory", new Basis.Memory(Confidence.LOW, Optional.empty())),
                        "Hm."))),
        new Planted(
            "a review that has run out",
            FlawKind.PAST_REVIEW,
            rows ->
                rows.add(
                    caution(
                        new Provenance(
                            new RowKey("stale"),
                            new OriginId("INVENTED"),
                            new Basis.CommonPractice(),
                            AS_OF.minusDays(1),
                            Optional.empty()),
                        "Old."))),
        new Planted(
            "22 lbf beside 100 N",
            FlawKind.UNITS_DISAGREE,
            rows ->
                rows.add(
                    new CheckLimitRow(
                        from("printed"),
                        Check.SEAM_PULL,
                        Limit.atLeast("100", Unit.NEWTON)
                            .alsoPrinted(Quantity.of("22.0", Unit.POUND_FORCE)),
                        DefectKind.LOOSE_SEAM))));
  }

  @ParameterizedTest
  @MethodSource("planted")
  void eachIsFound(Planted planted) {
    List<Row> rows = sound();
    planted.breaking().accept(rows);
    AuditReport report = audit(rows);
    assertThat(report.flaws()).extracting(Flaw::kind).contains(planted.kind());
    assertThat(report.flaws()).extracting(Flaw::kind).containsOnly(planted.kind());
    assertThat(report.isSound()).isEqualTo(!planted.kind().isFault());
  }

  @Test
  void theRowsAreSoundUntilBroken() {
    assertThat(audit(sound()).flaws()).isEmpty();
    assertThat(audit(sound()).isSound()).isTrue();
  }

  @Test
  void everyKindIsPlantedButThoseThatOnlyAFileOrAnOverlayCanHave() {
    Set<FlawKind> left = EnumSet.allOf(FlawKind.class);
    planted().forEach(each -> left.remove(each.kind()));
    assertThat(left).containsExactly(FlawKind.NO_BASIS, FlawKind.UNREADABLE, FlawKind.ADDS_NOTHING);
  }

  @Test
  void theRowsConcernedAreNamedWithWhatWasFound() {
    List<Row> rows = sound();
    rows.add(row("milder", DefectKind.CRACKING, new Band.Presence(), MEND));
    Flaw flaw = audit(rows).of(FlawKind.MASKED).get(0);
    assertThat(flaw.rows()).containsExactly(new RowKey("milder"), new RowKey("cracked"));
    assertThat(flaw.places()).containsExactly("HELMET STRUCTURAL HELMET_SHELL CRACKING");
    assertThat(flaw.found()).contains("cracked");
  }

  private static AuditReport audit(List<Row> rows) {
    return Audit.rows(rows, Optional.of(Set.of(SOURCE)), AS_OF);
  }

  private static List<Row> sound() {
    List<Row> rows = new ArrayList<>();
    rows.add(anatomy(SHELL));
    rows.add(row("cracked", DefectKind.CRACKING, new Band.Presence(), END));
    rows.add(row("cut-small", DefectKind.CUT, length("", "25"), MEND));
    rows.add(row("cut-large", DefectKind.CUT, length("25", ""), END));
    rows.add(criterion("look", Set.of(DefectKind.CRACKING, DefectKind.CUT), SHELL, 10));
    rows.add(new IntervalRow(from("yearly"), InspectionKind.ADVANCED, HELMET, USE, 12, 12, 12));
    rows.add(every("looked-over", 12));
    rows.add(age("old", HELMET));
    rows.add(new CautionRow(from("mind"), Set.of(), Set.of(), Set.of(), "Mind it."));
    Arrays.stream(Task.values())
        .map(
            task ->
                new PermissionRow(
                    from("may-" + task), task, EntityKind.MANUFACTURER, Optional.empty()))
        .forEach(rows::add);
    Arrays.stream(Check.values())
        .map(
            check ->
                new CheckRow(from("check-" + check), check, Task.EXPERT_EVALUATION, true, "Shown."))
        .forEach(rows::add);
    Stream.of(Exposure.values())
        .map(
            exposure ->
                new CareRouteRow(
                    from("after-" + exposure),
                    exposure,
                    HELMET,
                    USE,
                    Optional.empty(),
                    List.of(new RouteStep(CareAction.ISOLATE, Optional.empty(), Set.of())),
                    Set.of(),
                    "Set it apart."))
        .forEach(rows::add);
    return rows;
  }

  private static Predicate<Row> defect(DefectKind defect) {
    return row -> row instanceof DefectRow each && each.defect() == defect;
  }

  private static Predicate<Row> task(Task task) {
    return row -> row instanceof PermissionRow each && each.task() == task;
  }

  private static AnatomyRow anatomy(Site site) {
    return new AnatomyRow(from("has-" + site), HELMET, USE, site, Presence.REQUIRED);
  }

  private static DefectRow row(String key, DefectKind defect, Band band, Effect effect) {
    return new DefectRow(
        from(key), HELMET, USE, SHELL, defect, band, effect, Set.of(), Set.of(), false, key);
  }

  private static CriterionRow criterion(String key, Set<DefectKind> defects, Site site, int order) {
    return new CriterionRow(
        from(key),
        Set.of(InspectionKind.ADVANCED),
        HELMET,
        USE,
        order,
        List.of(site),
        defects,
        Set.of(),
        Set.of(),
        "Look at it.");
  }

  private static TaskRow every(String key, int months) {
    return new TaskRow(
        from(key),
        new TaskKey("look-over"),
        HELMET,
        USE,
        new Discharge.Inspected(InspectionKind.ADVANCED),
        new Timing.Every(Start.ISSUE, months, 1, months),
        false);
  }

  private static AgeLimitRow age(String key, ElementKind element) {
    return new AgeLimitRow(from(key), element, USE, Optional.empty(), new AgeLimit.Years(10));
  }

  private static CautionRow caution(Provenance from, String text) {
    return new CautionRow(from, Set.of(), Set.of(), Set.of(), text);
  }

  private static Band length(String over, String upTo) {
    return new Band.Range(ExtentKind.LENGTH, millimeters(over), millimeters(upTo));
  }

  private static Optional<Quantity> millimeters(String value) {
    return value.isEmpty() || value.equals("0")
        ? Optional.empty()
        : Optional.of(Quantity.of(value, Unit.MILLIMETER));
  }

  private static Provenance from(String key) {
    return from(key, new Basis.Published(SOURCE, Optional.of("1.2"), HowSeen.READ));
  }

  private static Provenance from(String key, Basis basis) {
    return new Provenance(
        new RowKey(key), new OriginId("INVENTED"), basis, AS_OF.plusYears(1), Optional.empty());
  }
}
