package org.ensemblerules.laws;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.common.collect.Sets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.PropertyDefaults;
import net.jqwik.api.Provide;
import net.jqwik.api.statistics.Statistics;
import org.ensemblerules.GearRules;
import org.ensemblerules.defect.DefectKind;
import org.ensemblerules.defect.DefectRow;
import org.ensemblerules.defect.Extent;
import org.ensemblerules.defect.Finding;
import org.ensemblerules.defect.FindingId;
import org.ensemblerules.effect.Check;
import org.ensemblerules.effect.CheckRow;
import org.ensemblerules.effect.CleaningKind;
import org.ensemblerules.effect.Doer;
import org.ensemblerules.effect.Effect;
import org.ensemblerules.effect.HandlingDuty;
import org.ensemblerules.effect.RepairClass;
import org.ensemblerules.effect.Scope;
import org.ensemblerules.effect.Task;
import org.ensemblerules.fieldcheck.CheckAnswer;
import org.ensemblerules.fieldcheck.Condition;
import org.ensemblerules.fieldcheck.ConditionRow;
import org.ensemblerules.fieldcheck.ConditionTable;
import org.ensemblerules.fieldcheck.ConditionValue;
import org.ensemblerules.fieldcheck.Expected;
import org.ensemblerules.fieldcheck.HandCheck;
import org.ensemblerules.fieldcheck.Observed;
import org.ensemblerules.fieldcheck.StrongerTable;
import org.ensemblerules.gates.FewestTries;
import org.ensemblerules.gear.Element;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.gear.Site;
import org.ensemblerules.gear.Use;
import org.ensemblerules.history.CheckResult;
import org.ensemblerules.history.Event;
import org.ensemblerules.history.History;
import org.ensemblerules.history.LookEvent;
import org.ensemblerules.history.Moment;
import org.ensemblerules.history.WorkEvent;
import org.ensemblerules.inspection.CriterionRow;
import org.ensemblerules.inspection.InspectionKind;
import org.ensemblerules.measure.Limit;
import org.ensemblerules.measure.Quantity;
import org.ensemblerules.measure.Unit;
import org.ensemblerules.repair.FollowUp;
import org.ensemblerules.repair.RepairLevel;
import org.ensemblerules.repair.RepairLimitRow;
import org.ensemblerules.repair.RepairLimitTable;
import org.ensemblerules.repair.RepairOrder;
import org.ensemblerules.repair.RepairOrders;
import org.ensemblerules.repair.RepairPlan;
import org.ensemblerules.repair.RepairSubject;
import org.ensemblerules.repair.RepairTables;
import org.ensemblerules.ruleset.RuleSet;
import org.ensemblerules.ruleset.Tables;
import org.ensemblerules.source.ComparableRow;
import org.ensemblerules.source.Comparison;
import org.ensemblerules.testkit.ArbitrariesOfFindings;
import org.ensemblerules.testkit.Effects;
import org.ensemblerules.testkit.FitGear;
import org.ensemblerules.testkit.FrozenProvenance;
import org.ensemblerules.testkit.FrozenRules;
import org.ensemblerules.testkit.People;
import org.ensemblerules.testkit.Settling;
import org.ensemblerules.testkit.StrictnessLaw;
import org.ensemblerules.testkit.VerdictContent;
import org.ensemblerules.verdict.Action;
import org.ensemblerules.verdict.Service;
import org.ensemblerules.verdict.Verdict;

/**
 * A row that says what damage calls for, what a check settles or how lightly work may be taken
 * answers no milder than one that it is at least as strict as, whatever was found and done.
 */
@PropertyDefaults(tries = 1000, edgeCases = EdgeCasesMode.NONE)
class StricterDefectsProperties {
  private static final FindingId ID = new FindingId("F1");
  private static final LocalDate SEEN = LocalDate.of(2024, 2, 1);
  private static final Tables FROZEN = FrozenRules.tables();
  private static final Element COAT = FitGear.element(ElementKind.COAT).build();
  private static final Site SHELL = Site.parse("FABRIC@OUTER_SHELL");

  private static <R extends ComparableRow<R>> RuleSet with(R row) {
    return FrozenRules.of(RebuiltTables.with(FROZEN, row));
  }

  private static boolean closed(
      RuleSet rules, ElementKind kind, Finding finding, List<Event> done) {
    List<Event> events = new ArrayList<>(List.of(new LookEvent.Found(finding)));
    events.addAll(done);
    return rules
        .evidence(FitGear.element(kind).build(), History.of(events), FitGear.AS_OF)
        .findings()
        .ofHistory()
        .isEmpty();
  }

  /** What may be done for a finding, on one day after another. */
  @Provide
  Arbitrary<List<Event>> done() {
    Arbitrary<Function<Moment, Event>> cleanings =
        Arbitraries.of(CleaningKind.ADVANCED, CleaningKind.SANITIZING)
            .map(kind -> on -> WorkEvent.Cleaned.whole(on, kind, by(Task.of(kind)), Set.of(ID)));
    Arbitrary<Function<Moment, Event>> repairs =
        Combinators.combine(Arbitraries.of(RepairClass.class), Arbitraries.of(true, false))
            .as(
                (kind, replaced) ->
                    on ->
                        new WorkEvent.Repaired(on, kind, replaced, by(Task.of(kind)), Set.of(ID)));
    return inTurn(Arbitraries.oneOf(cleanings, repairs, checkings()));
  }

  /** What checks and looks may follow a repair, or nothing, on one day after another. */
  @Provide
  Arbitrary<List<Event>> checked() {
    Arbitrary<Function<Moment, Event>> repaired =
        Arbitraries.just(
            on ->
                new WorkEvent.Repaired(
                    on,
                    RepairClass.ADVANCED,
                    false,
                    by(Task.of(RepairClass.ADVANCED)),
                    Set.of(ID)));
    Arbitrary<Function<Moment, Event>> looks =
        Arbitraries.of(InspectionKind.ROUTINE, InspectionKind.ADVANCED)
            .map(
                kind ->
                    on ->
                        new LookEvent.Inspected(
                            FitGear.inspection(kind, ElementKind.COAT, on.date(), by(kind.task()))
                                .build(),
                            0));
    return inTurn(Arbitraries.oneOf(checkings(), checkings(), repaired, looks));
  }

  private static Arbitrary<Function<Moment, Event>> checkings() {
    return Combinators.combine(
            Arbitraries.of(
                Check.SEAM_PULL,
                Check.SEAM_PULL,
                Check.ADVANCED_INSPECTION,
                Check.INSPECTOR_EVALUATION,
                Check.EXPERT_EVALUATION),
            Arbitraries.of(
                CheckResult.PASSED, CheckResult.PASSED, CheckResult.PASSED, CheckResult.FAILED))
        .as(
            (check, result) ->
                on ->
                    new LookEvent.Checked(
                        on, check, result, by(FROZEN.checks().row(check).task()), Set.of(ID)));
  }

  private static Arbitrary<List<Event>> inTurn(Arbitrary<Function<Moment, Event>> acts) {
    return acts.list()
        .ofMaxSize(4)
        .map(
            all -> {
              List<Event> events = new ArrayList<>();
              all.forEach(act -> events.add(act.apply(when(SEEN.plusDays(20L + events.size())))));
              return events;
            });
  }

  private static Moment when(LocalDate day) {
    return Moment.on(MarkedDate.of(day));
  }

  private static Doer by(Task task) {
    return People.permitted(task);
  }

  // ------------------------------------------------------------------------------------ defects

  @Provide
  Arbitrary<DefectRow> places() {
    return Arbitraries.of(FROZEN.defects().rows());
  }

  /** What may be asked for at any place. */
  @Provide
  Arbitrary<DefectRow> defects() {
    DefectRow first = FROZEN.defects().rows().get(0);
    return Combinators.combine(
            Arbitraries.of(Effects.all()),
            Arbitraries.of(HandlingDuty.PRESERVE_AS_FOUND, HandlingDuty.BIOHAZARD).set(),
            Arbitraries.of(Check.SEAM_PULL, Check.ADVANCED_INSPECTION).set())
        .as((effect, handling, after) -> asking(first, effect, handling, after));
  }

  private static DefectRow asking(
      DefectRow place, Effect effect, Set<HandlingDuty> handling, Set<Check> afterward) {
    return new DefectRow(
        place.provenance(),
        place.element(),
        place.use(),
        place.site(),
        place.defect(),
        place.band(),
        effect,
        handling,
        afterward,
        false,
        "Frozen.");
  }

  private static DefectRow at(DefectRow place, DefectRow row) {
    return asking(place, row.effect(), row.handling(), row.afterward());
  }

  @FewestTries(500)
  @Property
  void defects(
      @ForAll("defects") DefectRow one,
      @ForAll("defects") DefectRow other,
      @ForAll("places") DefectRow place) {
    StrictnessLaw.holds(
        at(place, one),
        at(place, other),
        (strict, mild) -> asksForNoLess(strict, judged(strict), judged(mild)));
  }

  private static Verdict judged(DefectRow row) {
    return GearRules.of(with(row))
        .assess(
            FitGear.fit(row.element())
                .with(ArbitrariesOfFindings.covered(row, "F1", MarkedDate.of(FitGear.AS_OF)))
                .assessment(),
            FitGear.AS_OF);
  }

  private static boolean asksForNoLess(DefectRow row, Verdict strict, Verdict mild) {
    return (mild.service() == Service.IN || strict.service() == Service.OUT)
        && strict.handling().containsAll(mild.handling())
        && (row.effect().isFinal() || afterward(strict).containsAll(afterward(mild)))
        && VerdictContent.demanded(mild).stream()
            .allMatch(
                asked ->
                    VerdictContent.demanded(strict).stream()
                        .anyMatch(each -> each.effect().against(asked.effect()).covers()));
  }

  private static Set<Check> afterward(Verdict verdict) {
    return verdict.actions().stream()
        .map(Action::afterward)
        .flatMap(Set::stream)
        .collect(Collectors.toSet());
  }

  /** What settles a row settles each that it stands in for, whatever was done besides. */
  @FewestTries(1000)
  @Property
  void whatIsDoneForTheStricterDefectRow(
      @ForAll("defects") DefectRow one,
      @ForAll("defects") DefectRow other,
      @ForAll("places") DefectRow place,
      @ForAll("done") List<Event> besides) {
    DefectRow strict = at(place, one);
    DefectRow mild =
        asking(
            place,
            other.effect(),
            Sets.intersection(one.handling(), other.handling()),
            Sets.intersection(one.afterward(), other.afterward()));
    Finding finding = ArbitrariesOfFindings.covered(place, "F1", MarkedDate.of(SEEN));
    List<Event> done =
        new ArrayList<>(Settling.of(ID, strict.effect(), strict.afterward(), SEEN.plusDays(1)));
    done.addAll(besides);
    boolean settled =
        strict.standsInFor(mild) && closed(with(strict), place.element(), finding, done);
    Statistics.label("settled")
        .collect(settled && mild.effect().keepsOut())
        .coverage(coverage -> coverage.check(true).percentage(share -> share > 1));
    if (settled) {
      assertThat(closed(with(mild), place.element(), finding, done))
          .as("%s for %s", strict, mild)
          .isTrue();
    }
  }

  /**
   * Retiring a layer is stricter than evaluating it, and leaves nothing to do once the layer is
   * replaced. An evaluation stays open then, so that no row of one can be left out for the other.
   */
  @Example
  void aLayerThatIsReplacedSettlesItsRetirementAndNoEvaluation() {
    DefectRow place =
        FROZEN.defects().rows().stream()
            .filter(row -> row.site().equals(SHELL) && row.defect() == DefectKind.CHARRING)
            .findFirst()
            .orElseThrow();
    DefectRow retire = asking(place, new Effect.Retire(Scope.LAYER), Set.of(), Set.of());
    DefectRow evaluate =
        asking(
            place, new Effect.Evaluate(Check.EXPERT_EVALUATION, Scope.LAYER), Set.of(), Set.of());
    Finding charred = ArbitrariesOfFindings.covered(place, "F1", MarkedDate.of(SEEN));
    List<Event> replaced = Settling.of(ID, retire.effect(), Set.of(), SEEN.plusDays(1));
    assertThat(retire.compareStrictness(evaluate)).isEqualTo(Comparison.STRICTER);
    assertThat(retire.standsInFor(evaluate)).isFalse();
    assertThat(closed(with(retire), ElementKind.COAT, charred, replaced)).isTrue();
    assertThat(closed(with(evaluate), ElementKind.COAT, charred, replaced)).isFalse();
  }

  // ------------------------------------------------------------------------------------ checks

  private static final Site SEAM = Site.parse("SEAM_MAJOR_A@OUTER_SHELL");

  /** The frozen tables, in which the fuller inspection pulls at the seam. */
  private static final Tables PULLED =
      RebuiltTables.with(
          FROZEN,
          FROZEN.criteria().rows().stream()
              .filter(row -> row.sites().contains(SEAM))
              .findFirst()
              .map(
                  row ->
                      new CriterionRow(
                          row.provenance(),
                          row.kinds(),
                          row.element(),
                          row.use(),
                          row.order(),
                          row.sites(),
                          row.lookFor(),
                          row.atHand(),
                          Set.of(Check.SEAM_PULL),
                          row.way()))
              .orElseThrow());

  @Provide
  Arbitrary<CheckRow> checks() {
    CheckRow frozen = FROZEN.checks().row(Check.SEAM_PULL);
    return Combinators.combine(
            Arbitraries.of(
                Optional.of(Check.SEAM_PULL),
                Optional.of(Check.INSPECTOR_EVALUATION),
                Optional.of(Check.EXPERT_EVALUATION),
                Optional.<Check>empty()),
            Arbitraries.of(true, false))
        .as(
            (lastWord, byLook) ->
                new CheckRow(
                    frozen.provenance(),
                    frozen.check(),
                    frozen.task(),
                    lastWord.equals(Optional.of(frozen.check())),
                    lastWord.filter(check -> check != frozen.check()),
                    byLook,
                    "Frozen."));
  }

  private static final Map<CheckRow, RuleSet> BY_CHECK = new ConcurrentHashMap<>();

  /** Of the few rows there are, each is composed once. */
  private static boolean closed(CheckRow row, Finding finding, List<Event> done) {
    RuleSet rules =
        BY_CHECK.computeIfAbsent(row, of -> FrozenRules.of(RebuiltTables.with(PULLED, of)));
    return closed(rules, ElementKind.COAT, finding, done);
  }

  /** Of gaps, for which the check is asked, and of stitches, after whose repair it follows. */
  @FewestTries(500)
  @Property
  void checks(
      @ForAll("checks") CheckRow one,
      @ForAll("checks") CheckRow other,
      @ForAll("checked") List<Event> done) {
    List<Finding> found =
        List.of(
            at(SEAM, DefectKind.SEVERAL_STITCH_GAPS, new Extent.Count(3)),
            at(SEAM, DefectKind.BROKEN_STITCHING, new Extent.Length(Quantity.of("2", Unit.INCH))));
    for (Finding each : found) {
      Statistics.label("settled by the stricter")
          .collect(one.compareStrictness(other).isAtLeastAsStrict() && closed(one, each, done))
          .coverage(coverage -> coverage.check(true).percentage(share -> share > 1));
      StrictnessLaw.holds(
          one, other, (strict, mild) -> !closed(strict, each, done) || closed(mild, each, done));
    }
  }

  private static Finding at(Site site, DefectKind defect, Extent extent) {
    return new Finding(ID, site, "", defect, extent, MarkedDate.of(SEEN));
  }

  // ------------------------------------------------------------------------------------ conditions

  private static final Check CHECK = Check.LINER_LEAKAGE;

  @Provide
  Arbitrary<ConditionRow> conditions() {
    Arbitrary<ConditionRow> places =
        Arbitraries.integers()
            .between(1, 3)
            .map(least -> condition(Condition.PLACES, new Expected.CountAtLeast(least), false));
    Arbitrary<ConditionRow> waiting =
        Combinators.combine(
                Arbitraries.of(
                    Limit.atLeast("3", Unit.MINUTE),
                    Limit.atLeast("180", Unit.SECOND),
                    Limit.atLeast("5", Unit.MINUTE),
                    Limit.atMost("5", Unit.MINUTE)),
                Arbitraries.of(true, false))
            .as(
                (limit, couldFailSound) ->
                    condition(Condition.WAITING_TIME, new Expected.Within(limit), couldFailSound));
    return Arbitraries.oneOf(places, waiting);
  }

  private static ConditionRow condition(
      Condition condition, Expected expected, boolean couldFailSound) {
    return new ConditionRow(
        FrozenProvenance.of("condition"), CHECK, condition, expected, couldFailSound);
  }

  private static Map<Condition, ConditionValue> stated(int places, String seconds) {
    return Map.of(
        Condition.PLACES,
        new ConditionValue.Counted(places),
        Condition.WAITING_TIME,
        new ConditionValue.Measured(Quantity.of(seconds, Unit.SECOND)));
  }

  /** A failure that stands by the milder is doubted no more by the stricter. */
  @FewestTries(500)
  @Property
  void conditions(
      @ForAll("conditions") ConditionRow one, @ForAll("conditions") ConditionRow other) {
    for (Map<Condition, ConditionValue> stated :
        List.of(
            Map.<Condition, ConditionValue>of(),
            stated(0, "179"),
            stated(1, "180"),
            stated(2, "240"),
            stated(3, "300"),
            stated(4, "301"))) {
      StrictnessLaw.holds(
          one,
          other,
          (strict, mild) ->
              (!passCounts(strict, stated) || passCounts(mild, stated))
                  && (!failureStands(mild, stated) || failureStands(strict, stated)));
    }
  }

  private static boolean passCounts(ConditionRow row, Map<Condition, ConditionValue> stated) {
    return answer(row, Observed.PASSED, stated) instanceof CheckAnswer.PassCounts;
  }

  private static boolean failureStands(ConditionRow row, Map<Condition, ConditionValue> stated) {
    return answer(row, Observed.FAILED, stated) instanceof CheckAnswer.FailureStands;
  }

  private static CheckAnswer answer(
      ConditionRow row, Observed observed, Map<Condition, ConditionValue> stated) {
    return ConditionTable.of(List.of(row), StrongerTable.of(List.of()).orElseThrow())
        .orElseThrow()
        .judge(new HandCheck(CHECK, observed, stated));
  }

  // ------------------------------------------------------------------------------------ repairs

  @Provide
  Arbitrary<RepairLimitRow> repairLimits() {
    return Combinators.combine(
            Arbitraries.of(
                new RepairSubject.AnyDamage(),
                new RepairSubject.Replacement(),
                new RepairSubject.LinerOpened()),
            Arbitraries.of(RepairLevel.class)
                .filter(
                    level ->
                        level.repairClass().isPresent() || level == RepairLevel.NOT_REPAIRABLE),
            Arbitraries.of(Check.CLEANLINESS, Check.SEAM_PULL).set(),
            Arbitraries.of(Check.BARRIER_UNDER_PRESSURE, Check.SEAM_PULL).set())
        .as(StricterDefectsProperties::limit);
  }

  private static RepairLimitRow limit(
      RepairSubject subject, RepairLevel least, Set<Check> before, Set<Check> afterward) {
    return new RepairLimitRow(
        FrozenProvenance.of("limit", subject.text().replace(' ', '-')),
        ElementKind.COAT,
        Use.STRUCTURAL,
        SHELL,
        subject,
        least,
        before,
        afterward,
        "Frozen.");
  }

  /** Tears of either class of repair, alone, together, or with what ends the shell. */
  @Provide
  Arbitrary<List<Finding>> damage() {
    return Arbitraries.of(
        List.of(tear("1")),
        List.of(tear("2")),
        List.of(tear("1"), tear("2")),
        List.of(tear("1"), damage(DefectKind.CHARRING, new Extent.NotMeasured())),
        List.of(
            tear("2"),
            damage(DefectKind.BURN_HOLE, new Extent.Area(Quantity.of("1", Unit.SQUARE_INCH)))));
  }

  private static Finding tear(String inches) {
    return damage(DefectKind.TEAR, new Extent.Length(Quantity.of(inches, Unit.INCH)));
  }

  private static Finding damage(DefectKind defect, Extent extent) {
    return new Finding(
        new FindingId(defect + " " + extent.hashCode()),
        SHELL,
        "",
        defect,
        extent,
        MarkedDate.of(FitGear.AS_OF));
  }

  /** Beside a row that has the shell replaced where it is burned through. */
  private static Stream<RepairPlan> plans(RepairLimitRow row, List<Finding> found) {
    RepairLimitRow burned =
        limit(
            new RepairSubject.Damage(DefectKind.BURN_HOLE),
            RepairLevel.BASIC_REPLACEMENT,
            Set.of(),
            Set.of());
    RepairOrders orders =
        RepairOrders.of(
            new RepairTables(
                FROZEN.anatomy(),
                FROZEN.defects(),
                RepairLimitTable.of(List.of(burned, row), FROZEN.anatomy()).orElseThrow(),
                FROZEN.permissions(),
                FROZEN.checks()));
    return Stream.of(People.DEPARTMENT, People.PROVIDER)
        .flatMap(
            doer ->
                Stream.of(
                    orders.plan(COAT, found, doer, FitGear.AS_OF),
                    orders.closeLiner(COAT, doer, FitGear.AS_OF)));
  }

  @FewestTries(500)
  @Property
  void repairLimits(
      @ForAll("repairLimits") RepairLimitRow one,
      @ForAll("repairLimits") RepairLimitRow other,
      @ForAll("damage") List<Finding> found) {
    StrictnessLaw.holds(
        one,
        other,
        (strict, mild) -> {
          List<RepairOrder> asStrict = orders(plans(strict, found));
          List<RepairOrder> asMild = orders(plans(mild, found));
          assertThat(asStrict).hasSameSizeAs(asMild);
          return Stream.iterate(0, i -> i + 1)
              .limit(asMild.size())
              .allMatch(i -> noLighter(asStrict.get(i), asMild.get(i)));
        });
  }

  private static List<RepairOrder> orders(Stream<RepairPlan> plans) {
    return plans.flatMap(plan -> plan.orders().stream()).toList();
  }

  /** What is not repaired at all needs no check. */
  private static boolean noLighter(RepairOrder strict, RepairOrder mild) {
    return strict.level().isAtLeast(mild.level())
        && (!strict.may().granted() || mild.may().granted())
        && (strict.level() == RepairLevel.NOT_REPAIRABLE
            || (checks(strict.before()).containsAll(checks(mild.before()))
                && checks(strict.afterward()).containsAll(checks(mild.afterward()))));
  }

  private static Set<Check> checks(List<FollowUp> followUps) {
    return followUps.stream().map(FollowUp::check).collect(Collectors.toSet());
  }
}
