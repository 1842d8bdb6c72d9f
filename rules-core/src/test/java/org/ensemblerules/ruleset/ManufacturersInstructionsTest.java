package org.ensemblerules.ruleset;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.ensemblerules.GearRules;
import org.ensemblerules.care.CareDemand;
import org.ensemblerules.care.CareLimitRow;
import org.ensemblerules.care.CareLimitTable;
import org.ensemblerules.care.Exposure;
import org.ensemblerules.care.ModelCareLimitRow;
import org.ensemblerules.care.WashAnswer;
import org.ensemblerules.care.WashBoundRow;
import org.ensemblerules.care.WashMeasure;
import org.ensemblerules.care.WashPractice;
import org.ensemblerules.care.WashRecord;
import org.ensemblerules.defect.Band;
import org.ensemblerules.defect.DefectKind;
import org.ensemblerules.effect.CleaningKind;
import org.ensemblerules.effect.Effect;
import org.ensemblerules.effect.Scope;
import org.ensemblerules.effect.Task;
import org.ensemblerules.gear.Element;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.GearModel;
import org.ensemblerules.gear.LayerKind;
import org.ensemblerules.gear.Legibility;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.gear.YesNoUnknown;
import org.ensemblerules.history.Event;
import org.ensemblerules.history.ExposureEvent;
import org.ensemblerules.history.History;
import org.ensemblerules.history.Moment;
import org.ensemblerules.history.Objection;
import org.ensemblerules.history.WorkEvent;
import org.ensemblerules.measure.Limit;
import org.ensemblerules.measure.Quantity;
import org.ensemblerules.measure.Unit;
import org.ensemblerules.source.Checked;
import org.ensemblerules.source.FaultCode;
import org.ensemblerules.source.InvalidValueException;
import org.ensemblerules.source.Row;
import org.ensemblerules.testkit.FitGear;
import org.ensemblerules.testkit.FrozenRules;
import org.ensemblerules.testkit.GearCase;
import org.ensemblerules.testkit.Layering;
import org.ensemblerules.testkit.People;
import org.ensemblerules.testkit.Washed;
import org.ensemblerules.verdict.Reason;
import org.ensemblerules.verdict.ReasonKind;
import org.ensemblerules.verdict.Service;
import org.ensemblerules.verdict.Verdict;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** A manufacturer's instructions over the frozen rules, by which the water has 40 °C at most. */
class ManufacturersInstructionsTest {
  private static final GearModel MODEL_A = new GearModel(FitGear.MAKER_NAME, "Model A");
  private static final GearModel MODEL_B = new GearModel(FitGear.MAKER_NAME, "Model B");
  private static final LocalDate WASHED = LocalDate.of(2024, 6, 11);

  private static final String LOOSENED =
      "loosened by MAKER: WATER_TEMPERATURE at most 50 degC by its row maker/1 in place of at most"
          + " 40 degC by row frozen/care/COAT/WATER_TEMPERATURE of FROZEN_2020";

  private final Layering layer = Layering.of("MAKER");

  private static Event washed(LocalDate day, String celsius, LayerKind... layers) {
    return new WorkEvent.Cleaned(
        Moment.on(MarkedDate.of(day)),
        CleaningKind.ADVANCED,
        People.permitted(Task.ADVANCED_CLEANING),
        Set.of(),
        Washed.of(Set.of(layers)),
        false,
        Optional.of(
            WashRecord.builder()
                .waterTemperature(Quantity.of(celsius, Unit.DEGREE_CELSIUS))
                .practice(WashPractice.CHLORINE_BLEACH, YesNoUnknown.NO)
                .build()));
  }

  /** A coat that met something and was washed after it. */
  private static GearCase coat(String celsius) {
    return FitGear.fit(ElementKind.COAT)
        .with(
            new ExposureEvent.Exposed(
                Moment.on(MarkedDate.of(WASHED.minusDays(1))), Exposure.ORDINARY_SOILING))
        .with(washed(WASHED, celsius));
  }

  private Overlay fifty() {
    return layer.instructions(Layering.inPlace(MODEL_A, layer.water(ElementKind.COAT, "50")));
  }

  private static RuleSet over(Overlay... overlays) {
    return FrozenRules.rules().with(List.of(overlays), FitGear.AS_OF).orElseThrow();
  }

  private static Verdict judged(GearCase given, Overlay... overlays) {
    return GearRules.of(over(overlays)).assess(given.assessment(), given.asOf());
  }

  private static List<String> refused(Overlay... overlays) {
    Checked<RuleSet, OverlayFault> result =
        FrozenRules.rules().with(List.of(overlays), FitGear.AS_OF);
    assertThat(result).isInstanceOf(Checked.Refused.class);
    return ((Checked.Refused<RuleSet, OverlayFault>) result)
        .faults().stream().map(fault -> fault.code() + " " + fault).toList();
  }

  private static List<Reason> loosened(Verdict verdict) {
    return verdict.reasons().stream()
        .filter(reason -> reason.kind() == ReasonKind.LIMIT_LOOSENED)
        .toList();
  }

  private static boolean care(Reason reason) {
    return reason.kind() == ReasonKind.CARE_OUTSTANDING;
  }

  @Test
  void aWashByTheInstructionsCountsAndSaysByWhose() {
    GearCase warm = coat("45");
    assertThat(warm.verdict().service()).isEqualTo(Service.OUT);
    assertThat(warm.verdict().reasons()).anyMatch(ManufacturersInstructionsTest::care);
    assertThat(warm.verdict().openFindings())
        .anyMatch(open -> open.finding().defect() == DefectKind.OVERHEATED_IN_WASHING);
    Overlay fifty = fifty();
    Verdict verdict = judged(warm, fifty);
    assertThat(verdict.service()).isEqualTo(Service.IN);
    assertThat(verdict.openFindings()).isEmpty();
    assertThat(verdict.reasons()).hasSize(1);
    Reason reason = loosened(verdict).get(0);
    assertThat(reason.effect()).isEqualTo(new Effect.Note());
    assertThat(reason.row().orElseThrow().provenance().origin().value()).isEqualTo("MAKER");
    assertThat(reason.seen())
        .startsWith(
            "cleaned ADVANCED on 2024-06-11, WATER_TEMPERATURE: found 45 degC, allowed: at most 40"
                + " degC (")
        .endsWith("; " + LOOSENED);
    assertThat(GearRules.of(over(fifty)).trace(warm.assessment(), warm.asOf()))
        .filteredOn(ModelCareLimitRow.class::isInstance)
        .extracting(Row::cited)
        .containsExactly(reason.row().orElseThrow());
  }

  /** What reasons ask for, and by which rows; the limit that their words name is another. */
  private static List<String> asked(Verdict verdict) {
    return verdict.reasons().stream()
        .map(reason -> reason.kind() + " " + reason.effect() + " " + reason.rowKey())
        .sorted()
        .toList();
  }

  @Test
  void beyondTheInstructionsItIsOverheatedAndBothRowsAreNamed() {
    RuleSet rules = over(fifty());
    WorkEvent.Cleaned hot = (WorkEvent.Cleaned) washed(WASHED, "51");
    Element element = coat("51").element();
    assertThat(whyNoCleaning(rules, element, hot).orElseThrow())
        .startsWith("WATER_TEMPERATURE: found 51 degC, allowed: at most 50 degC (")
        .endsWith(", " + LOOSENED);
    Verdict verdict = judged(coat("51"), fifty());
    assertThat(verdict.service()).isEqualTo(Service.OUT);
    assertThat(verdict.openFindings()).hasSize(1);
    // The verdict is no milder for it.
    assertThat(asked(verdict)).isEqualTo(asked(coat("51").verdict()));
  }

  @Test
  void whatKeepsTheEditionTooRestsOnBothAndIsNotMilder() {
    RuleSet rules = over(fifty());
    WashAnswer answer =
        rules.validity().answer((WorkEvent.Cleaned) washed(WASHED, "40"), coat("40").element());
    assertThat(answer).isInstanceOf(WashAnswer.Counts.class);
    assertThat(answer.loosened())
        .singleElement()
        .satisfies(
            each -> {
              assertThat(each.text()).isEqualTo(LOOSENED);
              assertThat(each.spared()).isEmpty();
            });
    assertThat(judged(coat("40"), fifty()).reasons()).isEmpty();
  }

  @Test
  void everyAnswerFromTheHistoryCanBeAskedWhatItRestsOn() {
    GearCase warm = coat("45");
    RuleSet rules = over(fifty());
    assertThat(
            rules.validity().loosened(warm.element(), warm.assessment().serviceRecord().history()))
        .singleElement()
        .satisfies(wash -> assertThat(wash.text()).endsWith(LOOSENED));
    assertThat(rules.schedule().due(warm.assessment().serviceRecord(), warm.asOf()))
        .isNotEqualTo(
            FrozenRules.rules().schedule().due(warm.assessment().serviceRecord(), warm.asOf()));
  }

  @Test
  void otherModelsAreWashedByTheEdition() {
    GearCase warm = coat("45");
    Overlay other =
        layer.instructions(Layering.inPlace(MODEL_B, layer.water(ElementKind.COAT, "50")));
    assertThat(judged(warm, other).reasons()).isEqualTo(warm.verdict().reasons());
    GearCase helmet = FitGear.fit(ElementKind.HELMET).with(washed(WASHED, "45"));
    assertThat(judged(helmet, fifty()).reasons()).isEqualTo(helmet.verdict().reasons());
  }

  @ParameterizedTest
  @EnumSource(Legibility.class)
  void aLabelThatCannotBeReadInFullLoosensNothing(Legibility legibility) {
    GearCase warm = coat("45");
    GearCase unread =
        warm.with(
            FitGear.element(ElementKind.COAT)
                .layer(LayerKind.LINER_SYSTEM, FitGear.label().legibility(legibility).build())
                .build());
    assertThat(loosened(judged(unread, fifty())).isEmpty())
        .isEqualTo(legibility != Legibility.READABLE);
  }

  @Test
  void aLayerGoesByItsOwnLabel() {
    Element mixed =
        FitGear.element(ElementKind.COAT)
            .layer(LayerKind.LINER_SYSTEM, FitGear.label().model("Model B").build())
            .build();
    RuleSet rules = over(fifty());
    assertThat(counts(rules, mixed, washed(WASHED, "45", LayerKind.OUTER_SHELL))).isTrue();
    assertThat(counts(rules, mixed, washed(WASHED, "45", LayerKind.LINER_SYSTEM))).isFalse();
    assertThat(
            counts(
                rules, mixed, washed(WASHED, "45", LayerKind.OUTER_SHELL, LayerKind.LINER_SYSTEM)))
        .isFalse();
    assertThat(counts(rules, mixed, washed(WASHED, "45"))).isFalse();
  }

  private static boolean counts(RuleSet rules, Element element, Event wash) {
    return whyNoCleaning(rules, element, wash).isEmpty();
  }

  private static Optional<String> whyNoCleaning(RuleSet rules, Element element, Event wash) {
    return rules
        .evidence(element, History.of(List.of(wash)), FitGear.AS_OF)
        .judgment(wash)
        .orElseThrow()
        .objection(EnumSet.of(Objection.Code.WASH_OUTSIDE_LIMITS, Objection.Code.NO_RULE))
        .map(Objection::text);
  }

  @Test
  void aStricterLimitHoldsForWhatMayBeOfTheModel() {
    for (ModelCareLimitRow row :
        List.of(
            Layering.beside(MODEL_A, layer.water(ElementKind.COAT, "30")),
            Layering.inPlace(MODEL_A, layer.water(ElementKind.COAT, "30")))) {
      RuleSet rules = over(layer.instructions(row));
      WorkEvent.Cleaned mild = (WorkEvent.Cleaned) washed(WASHED, "35");
      Element its = coat("35").element();
      assertThat(whyNoCleaning(rules, its, mild).orElseThrow())
          .startsWith("WATER_TEMPERATURE: found 35 degC, allowed: at most 30 degC");
      assertThat(rules.validity().answer(mild, its).loosened()).isEmpty();
      Verdict verdict = judged(coat("35"), layer.instructions(row));
      assertThat(verdict.service()).isEqualTo(Service.OUT);
      assertThat(verdict.reasons())
          .filteredOn(reason -> reason.kind() == ReasonKind.LIMIT_TIGHTENED)
          .singleElement()
          .satisfies(reason -> assertThat(reason.row()).contains(row.cited()));
      Element unread =
          FitGear.element(ElementKind.COAT)
              .layer(
                  LayerKind.OUTER_SHELL,
                  FitGear.label().model("Model B").legibility(Legibility.UNREADABLE).build())
              .build();
      assertThat(counts(rules, unread, mild)).isFalse();
      Element other =
          FitGear.element(ElementKind.COAT)
              .layer(LayerKind.OUTER_SHELL, FitGear.label().model("Model B").build())
              .layer(LayerKind.LINER_SYSTEM, FitGear.label().model("Model B").build())
              .build();
      assertThat(counts(rules, other, mild)).isTrue();
    }
  }

  @Test
  void aPracticeMayBeForbiddenBesides() {
    RuleSet rules =
        over(
            layer.instructions(
                Layering.beside(
                    MODEL_A,
                    layer.careLimit(
                        ElementKind.COAT, new CareDemand.Forbidden(WashPractice.MACHINE_DRYING)))));
    // Nobody has said how it was dried.
    assertThat(counts(rules, coat("40").element(), washed(WASHED, "40"))).isFalse();
  }

  @Test
  void aLawAndAPolicyPrevail() {
    Layering law = Layering.of("LAW");
    Overlay atForty = law.law(law.water(ElementKind.COAT, "40"));
    Overlay ours = law.policy(law.water(ElementKind.COAT, "38"));
    for (Overlay prevails : List.of(atForty, ours)) {
      Verdict alone = judged(coat("45"), prevails);
      Verdict both = judged(coat("45"), prevails, fifty());
      assertThat(both.service()).isEqualTo(Service.OUT);
      assertThat(both.actions()).isEqualTo(alone.actions());
      assertThat(asked(both)).containsAll(asked(alone));
    }
  }

  @Test
  void ofTwoInstructionsForOneModelTheStricterDecides() {
    Layering other = Layering.of("MAKER_AGAIN");
    Overlay more =
        other.instructions(Layering.inPlace(MODEL_A, other.water(ElementKind.COAT, "60")));
    assertThat(judged(coat("50"), fifty(), more).service()).isEqualTo(Service.IN);
    Verdict verdict = judged(coat("55"), fifty(), more);
    assertThat(verdict.service()).isEqualTo(Service.OUT);
    assertThat(loosened(verdict)).isEmpty();
  }

  @Test
  void aWashBeforeTheInstructionsHeldIsJudgedByTheEdition() {
    CareLimitRow limit = layer.water(ElementKind.COAT, "50");
    Overlay later =
        layer.instructions(
            new ModelCareLimitRow(
                MODEL_A,
                limit,
                Optional.of(Layering.frozenWater(ElementKind.COAT)),
                Optional.of(WASHED)));
    RuleSet rules = over(later);
    Element element = coat("45").element();
    assertThat(counts(rules, element, washed(WASHED, "45"))).isTrue();
    assertThat(counts(rules, element, washed(WASHED.minusDays(1), "45"))).isFalse();
    WorkEvent.Cleaned done = (WorkEvent.Cleaned) washed(WASHED, "45");
    WorkEvent.Cleaned inThatMonth =
        new WorkEvent.Cleaned(
            Moment.on(MarkedDate.parse("2024-06")),
            done.kind(),
            done.by(),
            done.answers(),
            done.layers(),
            done.limitsKept(),
            done.wash());
    assertThat(counts(rules, element, inThatMonth)).isFalse();
  }

  @Test
  void whereTheEditionSaysNothingNothingCountsByInstructionsAlone() {
    Tables without =
        Tables.of(
            FrozenRules.tables()
                .map()
                .with(CareKinds.CARE_LIMITS, CareLimitTable.of(List.of()).orElseThrow()));
    RuleSet rules =
        FrozenRules.of(without)
            .with(
                List.of(
                    layer.instructions(
                        Layering.beside(MODEL_A, layer.water(ElementKind.COAT, "50")))),
                FitGear.AS_OF)
            .orElseThrow();
    Element element = coat("45").element();
    assertThat(rules.validity().answer((WorkEvent.Cleaned) washed(WASHED, "45"), element))
        .isInstanceOf(WashAnswer.NoRule.class);
    assertThat(counts(rules, element, washed(WASHED, "45"))).isFalse();
    assertThat(rules.validity().answer((WorkEvent.Cleaned) washed(WASHED, "55"), element))
        .isInstanceOf(WashAnswer.OutsideLimits.class);
  }

  @Test
  void whatIsNotNamedIsNotReplaced() {
    CareLimitRow limit = layer.water(ElementKind.COAT, "50");
    assertThat(refused(layer.instructions(Layering.beside(MODEL_A, limit))))
        .containsExactly(
            "LOOSER MAKER, row maker/1, demand: found at most 50 degC, looser than at most 40 degC"
                + " by row frozen/care/COAT/WATER_TEMPERATURE of FROZEN_2020, allowed: at most"
                + " 40 degC or stricter, or to name the row that it replaces");
    Layering law = Layering.of("LAW");
    assertThat(refused(law.law(law.water(ElementKind.COAT, "50"))))
        .containsExactly(
            "LOOSER LAW, row law/1, demand: found at most 50 degC, looser than at most 40 degC by"
                + " row frozen/care/COAT/WATER_TEMPERATURE of FROZEN_2020, allowed: at most"
                + " 40 degC or stricter");
  }

  @Test
  void whatLimitsSomethingElseCannotBeReplaced() {
    CareLimitRow water = layer.water(ElementKind.COAT, "50");
    CareLimitRow acid =
        layer.careLimit(
            ElementKind.COAT,
            new CareDemand.Within(WashMeasure.DETERGENT_PH, Limit.atMost("11", Unit.ONE)));
    CareLimitRow wrongUnit =
        layer.careLimit(
            ElementKind.COAT,
            new CareDemand.Within(WashMeasure.WATER_TEMPERATURE, Limit.atMost("11", Unit.ONE)));
    assertThat(
            refused(
                layer.instructions(
                    new ModelCareLimitRow(
                        MODEL_A,
                        water,
                        Optional.of(Layering.frozenWater(ElementKind.HELMET)),
                        Optional.empty()),
                    new ModelCareLimitRow(
                        MODEL_A,
                        acid,
                        Optional.of(Layering.frozenWater(ElementKind.COAT)),
                        Optional.empty()),
                    Layering.inPlace(MODEL_A, wrongUnit))))
        .containsExactly(
            "NOT_ALLOWED MAKER, row maker/3, demand: found at most 11 1, allowed: a limit of"
                + " dimension TEMPERATURE",
            "NOT_ALLOWED MAKER, row maker/1, replaces: found frozen/care/HELMET/WATER_TEMPERATURE,"
                + " allowed: row frozen/care/COAT/WATER_TEMPERATURE, which limits the same",
            "NOT_ALLOWED MAKER, row maker/2, replaces: found frozen/care/COAT/WATER_TEMPERATURE,"
                + " allowed: nothing, since no row limits the same");
  }

  @Test
  void nothingThatRetiresIsTouched() {
    Layering law = Layering.of("LAW");
    Overlay retires =
        law.law(
            law.defect(
                "WHOLE_ELEMENT",
                DefectKind.OVERHEATED_IN_WASHING,
                new Band.Presence(),
                new Effect.Retire(Scope.ELEMENT)));
    assertThat(refused(retires, fifty()))
        .singleElement()
        .asString()
        .startsWith(
            "LOOSER MAKER, row maker/1, demand: found at most 50 degC, looser than at most 40 degC"
                + " by row frozen/care/COAT/WATER_TEMPERATURE of FROZEN_2020, where"
                + " OVERHEATED_IN_WASHING calls for RETIRE ELEMENT by row law/1 of LAW, allowed: ");
    // It does not matter which was laid first.
    assertThat(over(fifty()).with(List.of(retires), FitGear.AS_OF))
        .isInstanceOf(Checked.Refused.class);
    Overlay stricter =
        layer.instructions(Layering.inPlace(MODEL_A, layer.water(ElementKind.COAT, "30")));
    assertThat(over(retires, stricter)).isNotNull();
  }

  @Test
  void noMakerLoosensBeyondTheLoosest() {
    Overlay hot =
        layer.instructions(Layering.inPlace(MODEL_A, layer.water(ElementKind.COAT, "60.1")));
    Checked<RuleSet, OverlayFault> result = FrozenRules.rules().with(List.of(hot), FitGear.AS_OF);
    assertThat(((Checked.Refused<RuleSet, OverlayFault>) result).faults())
        .singleElement()
        .satisfies(
            fault -> {
              assertThat(fault.code()).isEqualTo(FaultCode.LOOSER);
              assertThat(fault.field()).isEqualTo("demand");
              assertThat(fault.found())
                  .isEqualTo(
                      "at most 60.1 degC, beyond at most 60 degC by row"
                          + " frozen/bound/LOOSEST/MAXIMUM of FROZEN_2020");
              assertThat(fault.allowed())
                  .isEqualTo("at most 60 degC at the loosest, whatever a manufacturer says");
              assertThat(fault.loosens().orElseThrow()).isInstanceOf(WashBoundRow.class);
            });
  }

  @Test
  void aLeastAndAMostOfOneOverlayMayStandTogetherIfSomethingIsBetween() {
    CareLimitRow fifty = layer.water(ElementKind.COAT, "50");
    CareLimitRow least =
        layer.careLimit(
            ElementKind.COAT,
            new CareDemand.Within(
                WashMeasure.WATER_TEMPERATURE, Limit.atLeast("45", Unit.DEGREE_CELSIUS)));
    assertThat(
            over(
                layer.instructions(
                    Layering.inPlace(MODEL_A, fifty), Layering.beside(MODEL_A, least))))
        .isNotNull();
    assertThat(refused(layer.instructions(Layering.beside(MODEL_A, least))))
        .containsExactly(
            "NOT_ALLOWED MAKER, row maker/2, demand: found at least 45 degC, which no wash keeps"
                + " with at most 40 degC by row frozen/care/COAT/WATER_TEMPERATURE of FROZEN_2020,"
                + " allowed: a limit that leaves some value that keeps both");
  }

  @Test
  void otherRowsAreNoInstructionsAndInstructionsAreNoPolicy() {
    for (Runnable made :
        List.<Runnable>of(
            () -> layer.instructions(layer.keep(2)),
            () -> layer.instructions(layer.water(ElementKind.COAT, "30")),
            () -> layer.policy(Layering.beside(MODEL_A, layer.water(ElementKind.COAT, "30"))),
            () ->
                layer.instructions(
                    Layering.beside(MODEL_A, layer.water(ElementKind.COAT, "30")),
                    Layering.beside(MODEL_B, layer.water(ElementKind.COAT, "30"))))) {
      assertThatThrownBy(made::run)
          .isInstanceOf(InvalidValueException.class)
          .hasMessageStartingWith("Overlay.rows: given ");
    }
    assertThatThrownBy(
            () ->
                Layering.inPlace(
                    MODEL_A,
                    layer.careLimit(
                        ElementKind.COAT, new CareDemand.Forbidden(WashPractice.CHLORINE_BLEACH))))
        .isInstanceOf(InvalidValueException.class)
        .hasMessageStartingWith("ModelCareLimitRow.replaces: given ");
  }

  @Test
  void theyBelongToTheRulesAndTheirFingerprint() {
    RuleSet base = FrozenRules.rules();
    RuleSet fifty = over(fifty());
    assertThat(fifty.canonical().lines())
        .anySatisfy(
            line ->
                assertThat(line)
                    .startsWith("model-care-limits\tmaker/1\tMAKER\t")
                    .contains("The maker\tModel A\tCOAT", "at most 50 degC"));
    assertThat(fifty.identity().overlays()).extracting(Object::toString).containsExactly("MAKER");
    assertThat(fifty.identity().fingerprint()).isNotEqualTo(base.identity().fingerprint());
  }
}
