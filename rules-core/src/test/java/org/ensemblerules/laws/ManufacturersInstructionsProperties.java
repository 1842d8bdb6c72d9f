package org.ensemblerules.laws;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.Combinators;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.PropertyDefaults;
import net.jqwik.api.Provide;
import net.jqwik.api.Tag;
import net.jqwik.api.Tuple;
import net.jqwik.api.statistics.Statistics;
import org.ensemblerules.GearRules;
import org.ensemblerules.care.WashPractice;
import org.ensemblerules.care.WashRecord;
import org.ensemblerules.effect.CleaningKind;
import org.ensemblerules.effect.Effect;
import org.ensemblerules.effect.RepairClass;
import org.ensemblerules.effect.Task;
import org.ensemblerules.gates.FewestTries;
import org.ensemblerules.gear.Element;
import org.ensemblerules.gear.GearModel;
import org.ensemblerules.gear.Label;
import org.ensemblerules.gear.LayerKind;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.gear.YesNoUnknown;
import org.ensemblerules.history.Event;
import org.ensemblerules.history.Moment;
import org.ensemblerules.history.WorkEvent;
import org.ensemblerules.measure.Quantity;
import org.ensemblerules.measure.Unit;
import org.ensemblerules.ruleset.Overlay;
import org.ensemblerules.ruleset.OverlayFault;
import org.ensemblerules.ruleset.RuleSet;
import org.ensemblerules.source.Checked;
import org.ensemblerules.source.CitedRow;
import org.ensemblerules.source.Row;
import org.ensemblerules.testkit.ArbitrariesOfCases;
import org.ensemblerules.testkit.ArbitrariesOfDates;
import org.ensemblerules.testkit.ArbitrariesOfElements;
import org.ensemblerules.testkit.ArbitrariesOfFindings;
import org.ensemblerules.testkit.ArbitrariesOfOverlays;
import org.ensemblerules.testkit.FitGear;
import org.ensemblerules.testkit.FrozenRules;
import org.ensemblerules.testkit.GearCase;
import org.ensemblerules.testkit.Layering;
import org.ensemblerules.testkit.People;
import org.ensemblerules.testkit.VerdictContent;
import org.ensemblerules.testkit.Washed;
import org.ensemblerules.verdict.Reason;
import org.ensemblerules.verdict.ReasonKind;
import org.ensemblerules.verdict.Service;
import org.ensemblerules.verdict.Verdict;

/** What a manufacturer says of one model bears on its washes, on that model's, and on no other. */
@PropertyDefaults(tries = 300, edgeCases = EdgeCasesMode.NONE)
class ManufacturersInstructionsProperties {
  private static final RuleSet BASE = FrozenRules.rules();
  private static final GearModel MODEL_A = new GearModel(FitGear.MAKER_NAME, "Model A");

  /** Cases with washes on record, of gear whose labels say one thing or another. */
  @Provide
  Arbitrary<GearCase> washed() {
    return ArbitrariesOfCases.cases()
        .flatMap(
            given ->
                Combinators.combine(
                        wash().list().ofMinSize(1).ofMaxSize(3),
                        ArbitrariesOfElements.changed(given.element().kind()),
                        Arbitraries.of(true, false, false))
                    .as(
                        (washes, other, changed) ->
                            (changed ? given.with(other) : given).withEvents(washes)));
  }

  private static Arbitrary<Event> wash() {
    Arbitrary<WashRecord> records =
        Combinators.combine(
                Arbitraries.of("30", "40", "41", "45", "50", "60"),
                Arbitraries.frequency(
                    Tuple.of(8, YesNoUnknown.NO),
                    Tuple.of(1, YesNoUnknown.YES),
                    Tuple.of(1, YesNoUnknown.UNKNOWN)))
            .as(
                (celsius, bleach) ->
                    WashRecord.builder()
                        .waterTemperature(Quantity.of(celsius, Unit.DEGREE_CELSIUS))
                        .practice(WashPractice.CHLORINE_BLEACH, bleach)
                        .build());
    return Combinators.combine(
            ArbitrariesOfDates.days(FitGear.IN_SERVICE, FitGear.AS_OF),
            Arbitraries.of(CleaningKind.class),
            ArbitrariesOfFindings.ids().set().ofMaxSize(2),
            records,
            Arbitraries.of(LayerKind.class).set().ofMaxSize(1))
        .as(
            (day, kind, ids, record, layers) ->
                new WorkEvent.Cleaned(
                    Moment.on(MarkedDate.of(day)),
                    kind,
                    People.permitted(Task.of(kind)),
                    ids,
                    Washed.of(layers),
                    false,
                    Optional.of(record)));
  }

  @Provide
  Arbitrary<Overlay> ofModelA() {
    return ArbitrariesOfOverlays.instructions("MAKER", MODEL_A);
  }

  @Provide
  Arbitrary<Overlay> ofAnyModel() {
    return Arbitraries.of(
            MODEL_A,
            new GearModel(FitGear.MAKER_NAME, "Model B"),
            new GearModel(FitGear.MAKER_NAME, "model a"),
            new GearModel("Another maker", "Model A"))
        .flatMap(model -> ArbitrariesOfOverlays.instructions("MAKER", model));
  }

  private static RuleSet over(GearCase given, Overlay... overlays) {
    Checked<RuleSet, OverlayFault> result = BASE.with(List.of(overlays), given.asOf());
    Assume.that(result instanceof Checked.Sound<RuleSet, OverlayFault>);
    return result.orElseThrow();
  }

  private static Verdict judged(GearCase given, Overlay... overlays) {
    return GearRules.of(over(given, overlays)).assess(given.assessment(), given.asOf());
  }

  private static boolean noMilder(Verdict after, Verdict before) {
    Set<Effect> otherwise = askedOtherwise(before, reason -> false);
    Set<Effect> stillAsked = askedOtherwise(before, reason -> waitsForWork(reason, after));
    Set<VerdictContent.Demanded> kept =
        VerdictContent.demanded(before).stream()
            .filter(each -> stillAsked.contains(each.effect()))
            .collect(Collectors.toSet());
    return VerdictContent.demanded(after).containsAll(kept)
        && after.handling().containsAll(before.handling())
        && (otherwise.stream().noneMatch(Effect::keepsOut) || after.service() == Service.OUT);
  }

  /** What is asked for, but for the look after work, which waits for work that counts. */
  private static Set<Effect> askedOtherwise(Verdict verdict, Predicate<Reason> waits) {
    return verdict.reasons().stream()
        .filter(reason -> reason.kind() != ReasonKind.WORKED_ON_SINCE_INSPECTION)
        .filter(reason -> !waits.test(reason))
        .map(Reason::effect)
        .collect(Collectors.toSet());
  }

  /** Whether the work is asked for again whose check was missing, with that check after it. */
  private static boolean waitsForWork(Reason check, Verdict after) {
    return check.kind() == ReasonKind.FOLLOW_UP_MISSING
        && check.effect() instanceof Effect.Evaluate missing
        && after.reasons().stream()
            .filter(reason -> reason.finding().equals(check.finding()))
            .anyMatch(reason -> reason.afterward().contains(missing.check()));
  }

  @Property
  @FewestTries(100)
  @Tag("slow")
  void noOtherModelIsJudgedMoreMildly(
      @ForAll("washed") GearCase given, @ForAll("ofAnyModel") Overlay instructions) {
    GearModel model = instructions.rows().modelCareLimits().get(0).model();
    Assume.that(labels(given.element()).noneMatch(label -> model.isOn(label) == YesNoUnknown.YES));
    Verdict after = judged(given, instructions);
    assertThat(noMilder(after, given.verdict())).isTrue();
    assertThat(loosened(after)).isEmpty();
    boolean certainlyOther =
        given.assessment().serviceRecord().history().events(WorkEvent.Cleaned.class).stream()
            .allMatch(
                done ->
                    model.isOf(given.element(), done.layers().named(), BASE.tables().anatomy())
                        == YesNoUnknown.NO);
    Statistics.label("certainly another model")
        .collect(certainlyOther)
        .coverage(coverage -> coverage.check(true).count(count -> count > 3));
    if (certainlyOther) {
      assertThat(after.reasons()).isEqualTo(given.verdict().reasons());
      assertThat(after.due()).isEqualTo(given.verdict().due());
    }
  }

  private static Stream<Label> labels(Element element) {
    return Stream.concat(element.label().stream(), element.layerLabels().values().stream());
  }

  @Property
  @FewestTries(200)
  @Tag("slow")
  void whatIsMilderNamesItsLayerAndTheRowReplaced(
      @ForAll("washed") GearCase given, @ForAll("ofModelA") Overlay instructions) {
    Verdict before = given.verdict();
    Verdict after = judged(given, instructions);
    boolean milder = !noMilder(after, before);
    Statistics.label("milder")
        .collect(milder)
        .coverage(coverage -> coverage.check(true).count(count -> count > 3));
    if (milder || !dues(after).containsAll(dues(before))) {
      assertThat(after.reasons())
          .anySatisfy(
              reason -> {
                assertThat(reason.kind())
                    .isIn(
                        milder
                            ? Set.of(ReasonKind.LIMIT_LOOSENED)
                            : Set.of(ReasonKind.LIMIT_LOOSENED, ReasonKind.LIMIT_TIGHTENED));
                assertThat(reason.row().orElseThrow().provenance().origin())
                    .isEqualTo(instructions.id());
              });
    }
    for (Reason reason : loosened(after)) {
      CitedRow row = reason.row().orElseThrow();
      assertThat(row.provenance().origin()).isEqualTo(instructions.id());
      assertThat(reason.seen())
          .contains(
              "loosened by MAKER",
              "by its row " + row.key(),
              "by row " + Layering.frozenWater(given.element().kind()) + " of FROZEN_2020");
    }
  }

  private static List<Reason> loosened(Verdict verdict) {
    return verdict.reasons().stream()
        .filter(reason -> reason.kind() == ReasonKind.LIMIT_LOOSENED)
        .toList();
  }

  private static Set<String> dues(Verdict verdict) {
    return verdict.due().stream()
        .map(due -> due.task() + " " + due.layer() + " " + due.by())
        .collect(Collectors.toSet());
  }

  @Property
  void ageRetirementAndWhoMayDoWhatStayAsTheyWere(
      @ForAll("washed") GearCase given, @ForAll("ofModelA") Overlay instructions) {
    Verdict before = given.verdict();
    Verdict after = judged(given, instructions);
    assertThat(after.ages()).isEqualTo(before.ages());
    assertThat(retired(after)).isEqualTo(retired(before));
    RuleSet rules = over(given, instructions);
    for (Task task : Task.values()) {
      assertThat(rules.tables().permissions().permitted(task))
          .isEqualTo(BASE.tables().permissions().permitted(task));
    }
    Task barriers = Task.of(RepairClass.ADVANCED);
    for (var doer : List.of(People.WEARER, People.DEPARTMENT, People.PROVIDER, People.MAKER)) {
      assertThat(rules.mayPerform(doer, barriers, given.element(), given.asOf()))
          .isEqualTo(BASE.mayPerform(doer, barriers, given.element(), given.asOf()));
    }
  }

  private static Set<VerdictContent.Demanded> retired(Verdict verdict) {
    return VerdictContent.demanded(verdict).stream()
        .filter(each -> each.effect() instanceof Effect.Retire)
        .collect(Collectors.toSet());
  }

  @Provide
  Arbitrary<Overlay> law() {
    return Arbitraries.integers()
        .between(25, 40)
        .flatMap(
            celsius ->
                Arbitraries.of(true, false)
                    .map(
                        ofPlace -> {
                          Layering law = Layering.of("LAW");
                          Row[] rows =
                              FrozenRules.KINDS.stream()
                                  .map(kind -> law.water(kind, Integer.toString(celsius)))
                                  .toArray(Row[]::new);
                          return ofPlace ? law.law(rows) : law.policy(rows);
                        }));
  }

  @Property
  void noLawAndNoPolicyIsLoosened(
      @ForAll("washed") GearCase given,
      @ForAll("ofModelA") Overlay instructions,
      @ForAll("law") Overlay law) {
    Verdict alone = judged(given, law);
    Verdict both = judged(given, instructions, law);
    assertThat(noMilder(both, alone)).isTrue();
    assertThat(both.reasons())
        .containsAll(
            alone.reasons().stream()
                .filter(reason -> reason.kind() == ReasonKind.LIMIT_TIGHTENED)
                .toList());
    assertThat(over(given, law, instructions).identity())
        .isEqualTo(over(given, instructions, law).identity());
  }
}
