package org.ensemblerules.assess;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.ensemblerules.assess.Verdicts.finding;
import static org.ensemblerules.assess.Verdicts.onlyReason;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.ensemblerules.defect.DefectKind;
import org.ensemblerules.defect.Extent;
import org.ensemblerules.defect.Finding;
import org.ensemblerules.defect.FindingId;
import org.ensemblerules.effect.Check;
import org.ensemblerules.effect.RepairClass;
import org.ensemblerules.gear.Element;
import org.ensemblerules.gear.ElementBuilder;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.Label;
import org.ensemblerules.gear.LabelBuilder;
import org.ensemblerules.gear.LayerKind;
import org.ensemblerules.gear.Legibility;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.gear.Use;
import org.ensemblerules.gear.YesNoUnknown;
import org.ensemblerules.history.CheckResult;
import org.ensemblerules.history.EndEvent;
import org.ensemblerules.history.Event;
import org.ensemblerules.history.Evidence;
import org.ensemblerules.history.LookEvent;
import org.ensemblerules.history.Moment;
import org.ensemblerules.history.WorkEvent;
import org.ensemblerules.inspection.CriterionRow;
import org.ensemblerules.inspection.Inspection;
import org.ensemblerules.inspection.InspectionBuilder;
import org.ensemblerules.inspection.InspectionKind;
import org.ensemblerules.inspection.Outcome;
import org.ensemblerules.source.InvalidValueException;
import org.ensemblerules.testkit.FitGear;
import org.ensemblerules.testkit.FrozenRules;
import org.ensemblerules.testkit.GearCase;
import org.ensemblerules.testkit.People;
import org.ensemblerules.verdict.Headline;
import org.ensemblerules.verdict.Reason;
import org.ensemblerules.verdict.ReasonKind;
import org.ensemblerules.verdict.Service;
import org.ensemblerules.verdict.Verdict;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What labels say, leave open, or say against each other. */
class LabelVerdictsTest {
  private static GearCase coat(LayerKind layer, Label label) {
    return FitGear.fit(ElementKind.COAT)
        .with(FitGear.element(ElementKind.COAT).layer(layer, label).build());
  }

  private static GearCase liner(LabelBuilder label) {
    return coat(LayerKind.LINER_SYSTEM, label.build());
  }

  @Test
  void shellAndLinerThatDoNotBelongTogether() {
    for (LabelBuilder other :
        new LabelBuilder[] {
          FitGear.label().model("Model B"),
          FitGear.label().size("L"),
          FitGear.label().manufacturer("Another maker")
        }) {
      Reason reason = onlyReason(liner(other), ReasonKind.RULE);
      assertThat(reason.seen()).isEqualTo("MISMATCH_OF_ASSEMBLY at WHOLE_ELEMENT");
      assertThat(reason.effect().text()).isEqualTo("EVALUATE by EXPERT_EVALUATION on PART");
    }
  }

  @ParameterizedTest
  @CsvSource({
    "PARTLY_READABLE, 'ILLEGIBLE at LABEL@LINER_SYSTEM, PARTLY'",
    "UNREADABLE, 'ILLEGIBLE at LABEL@LINER_SYSTEM, NOT_AT_ALL'",
    "MISSING, MISSING at LABEL@LINER_SYSTEM"
  })
  void aLabelThatCannotBeRead(Legibility legibility, String seen) {
    Reason reason = onlyReason(liner(FitGear.label().legibility(legibility)), ReasonKind.RULE);
    assertThat(reason.seen()).isEqualTo(seen);
    assertThat(reason.finding()).isPresent();
  }

  private static Event passed(String on, Check check, FindingId answered) {
    return new LookEvent.Checked(
        Moment.on(MarkedDate.parse(on)), check, CheckResult.PASSED, People.MAKER, Set.of(answered));
  }

  private static FindingId shown(GearCase given) {
    return given.verdict().openFindings().get(0).finding().id();
  }

  /** The day judged for may lie beyond the years that dates on a record have. */
  @Test
  void aLabelThatCannotBeReadKeepsItOutInAnyYear() {
    GearCase given = liner(FitGear.label().legibility(Legibility.UNREADABLE));
    for (int year : new int[] {1, 1899, 2201, 9999}) {
      assertThat(given.on(LocalDate.of(year, 1, 1)).verdict().service()).isEqualTo(Service.OUT);
    }
  }

  @Test
  void whatALabelShowsCanBeSettledOnRecord() {
    GearCase given = liner(FitGear.label().legibility(Legibility.UNREADABLE));
    assertThat(shown(given).value()).matches("label:LABEL@LINER_SYSTEM:ILLEGIBLE:[0-9a-f]{12}");
    assertThat(given.verdict().openFindings().get(0).finding().seen())
        .isEqualTo(MarkedDate.of(FitGear.AS_OF));
    Event identified = passed("2022-01-01", Check.IDENTIFICATION, shown(given));
    assertThat(given.with(identified).verdict().service()).isEqualTo(Service.IN);
    Event undated = passed("UNKNOWN", Check.IDENTIFICATION, shown(given));
    assertThat(given.with(undated).verdict().service()).isEqualTo(Service.OUT);
  }

  /** Whoever evaluated what labels said then evaluated nothing that they say now. */
  @Test
  void anAnswerIsBoundToWhatTheLabelsSay() {
    GearCase then = liner(FitGear.label().model("Model B"));
    Event evaluated = passed("2022-01-01", Check.EXPERT_EVALUATION, shown(then));
    assertThat(then.with(evaluated).verdict().service()).isEqualTo(Service.IN);
    for (LabelBuilder now :
        new LabelBuilder[] {
          FitGear.label().model("Model C"),
          FitGear.label().model("Model B").size("L"),
          FitGear.label().model("Model B").identification("Lot 2"),
          FitGear.label().model("Model B").manufactured(MarkedDate.parse("2021"))
        }) {
      Verdict verdict = liner(now).with(evaluated).verdict();
      assertThat(verdict.service()).isEqualTo(Service.OUT);
      assertThat(verdict.openFindings())
          .extracting(open -> open.finding().seen().toString())
          .containsOnly(FitGear.AS_OF.toString());
    }
  }

  @Test
  void anOwnerNamesNothingAsLabelsDo() {
    Finding named =
        finding(
            "label:WHOLE_ELEMENT:MISMATCH_OF_ASSEMBLY",
            "WHOLE_ELEMENT",
            DefectKind.MISMATCH_OF_ASSEMBLY,
            new Extent.NotMeasured(),
            "2024-06-01");
    GearCase fit = FitGear.fit(ElementKind.COAT);
    assertThatThrownBy(() -> fit.with(named).assessment())
        .isInstanceOf(InvalidValueException.class)
        .hasMessageContaining("a name that does not begin with label:");
    assertThatThrownBy(() -> new LookEvent.Found(named)).isInstanceOf(InvalidValueException.class);
  }

  /**
   * A liner of another maker whose label does not say so, or is left out, is not known to belong.
   */
  @Test
  void aManufacturerThatIsLeftOutHidesNoOther() {
    Label silent =
        Label.builder()
            .model("Model A")
            .identification("Lot 1")
            .size("M")
            .manufactured(MarkedDate.of(FitGear.MADE))
            .certificationMark(YesNoUnknown.YES)
            .legibility(Legibility.READABLE)
            .build();
    GearCase given = coat(LayerKind.LINER_SYSTEM, silent);
    assertThat(onlyReason(given, ReasonKind.LABEL_UNKNOWN).seen())
        .isEqualTo("LINER_SYSTEM: manufacturer is not known");
  }

  /** A repair by the manufacturer counts only if every label says who that is. */
  @Test
  void nobodyIsTheManufacturerOfWhatDoesNotSaySo() {
    Element bare =
        Element.builder(
                FitGear.element(ElementKind.COAT).build().id(), ElementKind.COAT, Use.STRUCTURAL)
            .inService(MarkedDate.of(FitGear.IN_SERVICE))
            .cbrnOption(YesNoUnknown.NO)
            .layer(LayerKind.OUTER_SHELL, FitGear.label().build())
            .build();
    Event repaired =
        new WorkEvent.Repaired(
            Moment.on(MarkedDate.parse("2024-01-01")),
            RepairClass.ADVANCED,
            false,
            People.MAKER,
            Set.of());
    GearCase fit = FitGear.fit(ElementKind.COAT).with(repaired);
    for (Element element :
        List.of(
            bare,
            liner(FitGear.label().manufacturer("Another maker")).element(),
            liner(Label.builder()).element())) {
      assertThat(evidence(fit.with(element)).counts(repaired)).isFalse();
    }
    assertThat(evidence(fit).counts(repaired)).isTrue();
  }

  private static Evidence evidence(GearCase given) {
    return FrozenRules.rules()
        .evidence(given.element(), given.assessment().history(), given.asOf());
  }

  /** The layer that an inspection saw is there; its label left out does not make it vanish. */
  @Test
  void aLayerThatWasSeenMustBeLabeled() {
    GearCase fit = FitGear.fit(ElementKind.COAT);
    CriterionRow winter =
        FitGear.criteria(InspectionKind.ADVANCED, ElementKind.COAT).stream()
            .filter(row -> row.sites().get(0).toString().equals("FABRIC@WINTER_LINER"))
            .findFirst()
            .orElseThrow();
    Inspection clear =
        FitGear.inspection(InspectionKind.ADVANCED, ElementKind.COAT, LocalDate.of(2024, 2, 1))
            .build();
    InspectionBuilder saw =
        Inspection.builder(clear.kind(), clear.occasion(), clear.on(), clear.by())
            .gearClean(clear.gearClean())
            .atHand(clear.atHand())
            .outcome(winter.key(), Outcome.CLEAR);
    clear.outcomes().stream()
        .filter(each -> !each.criterion().equals(winter.key()))
        .forEach(each -> saw.outcome(each.criterion(), each.outcome()));
    GearCase seen = fit.with(new LookEvent.Inspected(saw.build(), 0));
    assertThat(seen.verdict().reasons())
        .extracting(Reason::seen)
        .contains("WINTER_LINER: label is not known");
    assertThat(seen.verdict().ages())
        .extracting(age -> age.layer().orElseThrow())
        .contains(LayerKind.WINTER_LINER);
    Event left =
        new EndEvent.LayerRetired(
            Moment.on(MarkedDate.parse("2024-03-01")),
            LayerKind.WINTER_LINER,
            Optional.empty(),
            "lost");
    assertThat(seen.with(left).verdict().reasons())
        .extracting(Reason::seen)
        .doesNotContain("WINTER_LINER: label is not known");
    Event notThere =
        new LookEvent.Inspected(
            FitGear.inspection(InspectionKind.ADVANCED, ElementKind.COAT, LocalDate.of(2024, 3, 1))
                .build(),
            0);
    assertThat(seen.with(notThere).verdict().service()).isEqualTo(Service.IN);
  }

  @Test
  void aMarkThatIsMissingAsTheRowSays() {
    GearCase given = liner(FitGear.label().certificationMark(YesNoUnknown.NO));
    Reason reason = onlyReason(given, ReasonKind.RULE);
    assertThat(reason.seen()).isEqualTo("CERTIFICATION_MARK_MISSING at LABEL@LINER_SYSTEM");
    assertThat(given.verdict().headline()).isEqualTo(Headline.RETIRE);
  }

  @Test
  void whatNobodyHasSaidOfALabelMustBeFoundOut() {
    Label bare = Label.builder().manufactured(MarkedDate.of(FitGear.MADE)).build();
    Verdict verdict = coat(LayerKind.LINER_SYSTEM, bare).verdict();
    assertThat(verdict.reasons())
        .allMatch(reason -> reason.kind() == ReasonKind.LABEL_UNKNOWN)
        .extracting(reason -> reason.site() + ": " + reason.seen())
        .containsExactlyInAnyOrder(
            "LABEL@LINER_SYSTEM: LINER_SYSTEM: legibility is not known",
            "LABEL@LINER_SYSTEM: LINER_SYSTEM: certificationMark is not known",
            "LABEL@LINER_SYSTEM: LINER_SYSTEM: manufacturer is not known",
            "LABEL@LINER_SYSTEM: LINER_SYSTEM: model is not known",
            "LABEL@LINER_SYSTEM: LINER_SYSTEM: size is not known");
    assertThat(verdict.actions())
        .singleElement()
        .satisfies(
            action -> {
              assertThat(action.effect().text()).isEqualTo("EVALUATE by READ_LABEL on LAYER");
              assertThat(action.target()).hasToString("WHOLE_ELEMENT@LINER_SYSTEM");
            });
  }

  @Test
  void anElementWithoutLayersNeedsNoModelOrSize() {
    Label label =
        Label.builder()
            .manufactured(MarkedDate.of(FitGear.MADE))
            .certificationMark(YesNoUnknown.YES)
            .legibility(Legibility.READABLE)
            .build();
    GearCase given =
        FitGear.fit(ElementKind.HELMET)
            .with(FitGear.element(ElementKind.HELMET).label(label).build());
    assertThat(given.verdict().service()).isEqualTo(Service.IN);
  }

  @Test
  void aLabelNotGivenIsNotKnown() {
    Element bare =
        Element.builder(
                FitGear.element(ElementKind.COAT).build().id(), ElementKind.COAT, Use.STRUCTURAL)
            .inService(MarkedDate.of(FitGear.IN_SERVICE))
            .cbrnOption(YesNoUnknown.NO)
            .layer(LayerKind.OUTER_SHELL, FitGear.label().build())
            .build();
    Verdict verdict = FitGear.fit(ElementKind.COAT).with(bare).verdict();
    assertThat(verdict.reasons())
        .extracting(reason -> reason.kind() + " " + reason.seen())
        .containsExactly(
            "AGE_UNKNOWN LINER_SYSTEM: made UNKNOWN; date of manufacture unknown",
            "LABEL_UNKNOWN LINER_SYSTEM: label is not known");
  }

  @Test
  void aLinerOnAHelmet() {
    Element helmet =
        FitGear.element(ElementKind.HELMET)
            .layer(LayerKind.LINER_SYSTEM, FitGear.label().build())
            .build();
    Verdict verdict = FitGear.fit(ElementKind.HELMET).with(helmet).verdict();
    assertThat(verdict.service()).isEqualTo(Service.OUT);
    assertThat(verdict.reasons())
        .extracting(Reason::seen)
        .contains(
            "element.labels: found LABEL@LINER_SYSTEM on HELMET STRUCTURAL, allowed: a label that"
                + " such an element has");
  }

  @Test
  void aLabelOfItsOwnOnACoatWithoutOne() {
    Element coat = FitGear.element(ElementKind.COAT).label(FitGear.label().build()).build();
    assertThat(FitGear.fit(ElementKind.COAT).with(coat).verdict().reasons())
        .extracting(Reason::seen)
        .contains(
            "element.labels: found LABEL on COAT STRUCTURAL, allowed: a label that such an element"
                + " has");
  }

  private static Element linersApart(LayerKind... layers) {
    ElementBuilder coat =
        Element.builder(
                FitGear.element(ElementKind.COAT).build().id(), ElementKind.COAT, Use.STRUCTURAL)
            .inService(MarkedDate.of(FitGear.IN_SERVICE))
            .cbrnOption(YesNoUnknown.NO)
            .layer(LayerKind.OUTER_SHELL, FitGear.label().build());
    for (LayerKind layer : layers) {
      coat.layer(layer, FitGear.label().build());
    }
    return coat.build();
  }

  @Test
  void linersLabeledApartNeedNoLabelOfTheSystem() {
    GearCase fit = FitGear.fit(ElementKind.COAT);
    Element both = linersApart(LayerKind.MOISTURE_BARRIER, LayerKind.THERMAL_LINER);
    assertThat(fit.with(both).verdict().service()).isEqualTo(Service.IN);
    assertThat(fit.with(both).verdict().ages())
        .extracting(age -> age.layer().orElseThrow())
        .containsExactly(
            LayerKind.OUTER_SHELL, LayerKind.MOISTURE_BARRIER, LayerKind.THERMAL_LINER);
    for (LayerKind only : new LayerKind[] {LayerKind.MOISTURE_BARRIER, LayerKind.THERMAL_LINER}) {
      assertThat(fit.with(linersApart(only)).verdict().service()).isEqualTo(Service.OUT);
    }
  }

  @Test
  void theLabeledLayerIsWhatAnEffectOnALayerFallsOn() {
    GearCase joined =
        FitGear.fit(ElementKind.COAT).with(finding("FABRIC@MOISTURE_BARRIER", DefectKind.CHARRING));
    assertThat(joined.verdict().actions())
        .extracting(action -> action.target().toString())
        .containsExactly("WHOLE_ELEMENT@LINER_SYSTEM");
    GearCase apart = joined.with(linersApart(LayerKind.MOISTURE_BARRIER, LayerKind.THERMAL_LINER));
    assertThat(apart.verdict().actions())
        .extracting(action -> action.target().toString())
        .containsExactly("WHOLE_ELEMENT@MOISTURE_BARRIER");
  }
}
