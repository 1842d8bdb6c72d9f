package org.ensemblerules.testkit;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.UnaryOperator;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.Tuple;
import org.ensemblerules.defect.DefectKind;
import org.ensemblerules.defect.DefectRow;
import org.ensemblerules.defect.Extent;
import org.ensemblerules.defect.Finding;
import org.ensemblerules.defect.FindingId;
import org.ensemblerules.effect.Check;
import org.ensemblerules.effect.CleaningKind;
import org.ensemblerules.effect.Doer;
import org.ensemblerules.effect.EntityKind;
import org.ensemblerules.effect.RepairClass;
import org.ensemblerules.gear.AnatomyRow;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.gear.Site;
import org.ensemblerules.history.CheckResult;
import org.ensemblerules.history.Event;
import org.ensemblerules.history.LookEvent;
import org.ensemblerules.history.Moment;
import org.ensemblerules.history.UseEvent;
import org.ensemblerules.history.WorkEvent;
import org.ensemblerules.ruleset.RuleSet;
import org.ensemblerules.source.Edition;
import org.ensemblerules.tables.ShippedRules;
import org.ensemblerules.testkit.ShippedGear.Kind;

/** Cases for the shipped rule sets: a fit one with up to four changes, some of them harmless. */
public final class ShippedArbitraries {
  private static final Map<RuleSet, List<Extent>> EXTENTS = new ConcurrentHashMap<>();
  private static final Map<Kept, List<DefectRow>> ROWS = new ConcurrentHashMap<>();

  private record Kept(RuleSet rules, Kind kind) {}

  private ShippedArbitraries() {}

  /**
   * Returns fit elements of every kind under every shipped edition.
   *
   * @return the cases
   */
  public static Arbitrary<ShippedCase> fit() {
    List<RuleSet> sets =
        ShippedRules.editions().stream()
            .map(Edition::id)
            .map(id -> ShippedRules.of(id).orElseThrow().rules())
            .toList();
    return Arbitraries.of(sets)
        .flatMap(
            rules ->
                Arbitraries.of(ShippedGear.kinds(rules)).map(kind -> ShippedCase.fit(rules, kind)));
  }

  /**
   * Returns cases of which some are in service and more are not.
   *
   * @return the cases
   */
  public static Arbitrary<ShippedCase> cases() {
    return fit()
        .flatMap(
            fit ->
                change(fit)
                    .list()
                    .ofMaxSize(4)
                    .map(
                        changes -> {
                          ShippedCase changed = fit;
                          for (UnaryOperator<ShippedCase> change : changes) {
                            changed = change.apply(changed);
                          }
                          return changed;
                        }));
  }

  private static Arbitrary<UnaryOperator<ShippedCase>> change(ShippedCase fit) {
    return Arbitraries.frequencyOf(
        Tuple.of(3, findings(fit).map(finding -> given -> given.with(finding))),
        Tuple.of(
            2, findings(fit).map(finding -> given -> given.with(new LookEvent.Found(finding)))),
        Tuple.of(4, events(fit).map(event -> given -> given.with(event))),
        Tuple.of(3, notes(fit).map(finding -> given -> given.with(finding))),
        Tuple.of(
            1,
            days(ShippedGear.MADE.minusYears(1), ShippedGear.AS_OF.plusYears(12))
                .map(day -> given -> given.on(day))));
  }

  /**
   * Returns findings on an element: most of them on a cell that rows cover, with any extent.
   *
   * @param fit the element and its rules
   * @return the findings
   */
  public static Arbitrary<Finding> findings(ShippedCase fit) {
    List<Extent> extents = extents(fit);
    List<AnatomyRow> places =
        fit.rules().tables().anatomy().of(fit.kind().element(), fit.kind().use());
    Arbitrary<Boolean> layerTold = Arbitraries.of(true, true, true, false);
    Arbitrary<Finding> near =
        Combinators.combine(
                Arbitraries.of(rows(fit)), Arbitraries.of(extents), layerTold, ids(), dates())
            .as(
                (row, extent, told, id, seen) ->
                    new Finding(
                        id,
                        told ? row.site() : Site.of(row.site().part()),
                        "",
                        row.defect(),
                        extent.kind().isEmpty() ? inside(row, extents) : extent,
                        seen));
    Arbitrary<Finding> anywhere =
        Combinators.combine(
                Arbitraries.of(places),
                Arbitraries.of(DefectKind.class),
                Arbitraries.of(extents),
                ids(),
                dates())
            .as(
                (place, defect, extent, id, seen) ->
                    new Finding(id, place.site(), "", defect, extent, seen));
    return Arbitraries.frequencyOf(Tuple.of(4, near), Tuple.of(1, anywhere));
  }

  private static Arbitrary<Finding> notes(ShippedCase fit) {
    List<Extent> extents = extents(fit);
    List<DefectRow> rows = rows(fit).stream().filter(row -> !row.effect().keepsOut()).toList();
    return Combinators.combine(Arbitraries.of(rows), Arbitraries.of("N1", "N2"))
        .as(
            (row, id) ->
                new Finding(
                    new FindingId(id),
                    row.site(),
                    "",
                    row.defect(),
                    inside(row, extents),
                    MarkedDate.of(ShippedGear.AS_OF)));
  }

  private static Extent inside(DefectRow row, List<Extent> extents) {
    return extents.stream().filter(row.band()::holds).findFirst().orElseThrow();
  }

  private static List<Extent> extents(ShippedCase fit) {
    return EXTENTS.computeIfAbsent(
        fit.rules(), rules -> ShippedExtents.of(rules.tables().defects()));
  }

  private static List<DefectRow> rows(ShippedCase fit) {
    return ROWS.computeIfAbsent(
        new Kept(fit.rules(), fit.kind()),
        kept ->
            kept.rules().tables().defects().rows().stream()
                .filter(row -> row.element() == kept.kind().element())
                .filter(row -> row.use() == kept.kind().use())
                .toList());
  }

  private static Arbitrary<Event> events(ShippedCase fit) {
    Arbitrary<Moment> moments =
        Combinators.combine(dates(), Arbitraries.of(0, 0, 1, 2)).as(Moment::new);
    Arbitrary<Doer> doers =
        Arbitraries.of(EntityKind.class)
            .flatMap(
                entity ->
                    Arbitraries.of(
                        ShippedGear.trained(entity), new Doer("Anybody", entity, List.of())));
    Arbitrary<Set<FindingId>> answers = ids().set().ofMaxSize(2);
    return Arbitraries.oneOf(
        moments.map(UseEvent.Used::new),
        Combinators.combine(moments, Arbitraries.of(CleaningKind.class), doers, answers)
            .as(WorkEvent.Cleaned::whole),
        Combinators.combine(
                moments,
                Arbitraries.of(RepairClass.class),
                Arbitraries.of(true, false),
                doers,
                answers)
            .as(WorkEvent.Repaired::new),
        Combinators.combine(
                moments,
                Arbitraries.of(Check.class),
                Arbitraries.of(CheckResult.PASSED, CheckResult.PASSED, CheckResult.FAILED),
                doers,
                answers)
            .as(LookEvent.Checked::new),
        Combinators.combine(
                Arbitraries.of(ShippedGear.inspections(fit.rules(), fit.kind())), dates())
            .as(
                (kind, on) ->
                    new LookEvent.Inspected(
                        ShippedGear.inspection(fit.rules(), kind, fit.kind(), on).build(), 0)));
  }

  private static Arbitrary<FindingId> ids() {
    return Arbitraries.of("F1", "F2", "F3").map(FindingId::new);
  }

  private static Arbitrary<MarkedDate> dates() {
    return Arbitraries.frequencyOf(
        Tuple.of(8, days(ShippedGear.IN_SERVICE, ShippedGear.AS_OF).map(MarkedDate::of)),
        Tuple.of(
            1, Arbitraries.of("UNKNOWN", "2023", "2024-02", "2024-06-15").map(MarkedDate::parse)));
  }

  private static Arbitrary<LocalDate> days(LocalDate first, LocalDate last) {
    return Arbitraries.longs()
        .between(first.toEpochDay(), last.toEpochDay())
        .map(LocalDate::ofEpochDay);
  }
}
