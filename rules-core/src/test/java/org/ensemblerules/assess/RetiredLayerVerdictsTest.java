package org.ensemblerules.assess;

import static org.assertj.core.api.Assertions.assertThat;
import static org.ensemblerules.assess.Verdicts.kinds;
import static org.ensemblerules.assess.Verdicts.onlyReason;

import java.util.Optional;
import java.util.Set;
import org.ensemblerules.defect.FindingId;
import org.ensemblerules.effect.Check;
import org.ensemblerules.effect.Effect;
import org.ensemblerules.effect.Scope;
import org.ensemblerules.gear.Element;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.Label;
import org.ensemblerules.gear.LabelBuilder;
import org.ensemblerules.gear.LayerKind;
import org.ensemblerules.gear.Legibility;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.gear.YesNoUnknown;
import org.ensemblerules.history.CheckResult;
import org.ensemblerules.history.EndEvent;
import org.ensemblerules.history.Event;
import org.ensemblerules.history.LookEvent;
import org.ensemblerules.history.Moment;
import org.ensemblerules.testkit.FitGear;
import org.ensemblerules.testkit.FrozenRules;
import org.ensemblerules.testkit.GearCase;
import org.ensemblerules.testkit.People;
import org.ensemblerules.verdict.Headline;
import org.ensemblerules.verdict.Reason;
import org.ensemblerules.verdict.ReasonKind;
import org.ensemblerules.verdict.Service;
import org.ensemblerules.verdict.Verdict;
import org.ensemblerules.verdict.WayBack;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A layer that was retired never returns; another in its place is shown by its own label. */
class RetiredLayerVerdictsTest {
  private static final GearCase COAT = FitGear.fit(ElementKind.COAT);

  private static Event retired(LayerKind layer, String identification, String date) {
    return new EndEvent.LayerRetired(
        Moment.on(MarkedDate.parse(date)),
        layer,
        Optional.ofNullable(identification),
        "seams gone");
  }

  private static Element coat(Label liner) {
    return FitGear.element(ElementKind.COAT).layer(LayerKind.LINER_SYSTEM, liner).build();
  }

  @ParameterizedTest
  @CsvSource({"Lot 1, 2024-02-01", "LOT-1, 2024-02-01", "lot1, UNKNOWN", "Lot 1, 2020-03-01"})
  void theSameLayerLeavesServiceAgain(String identification, String date) {
    GearCase given = COAT.with(retired(LayerKind.LINER_SYSTEM, identification, date));
    assertThat(given.verdict().reasons())
        .filteredOn(reason -> reason.kind() == ReasonKind.LEFT_SERVICE)
        .singleElement()
        .satisfies(
            reason -> {
              assertThat(reason.effect()).isEqualTo(new Effect.Retire(Scope.LAYER));
              assertThat(reason.site()).hasToString("WHOLE_ELEMENT@LINER_SYSTEM");
              assertThat(reason.seen())
                  .isEqualTo(
                      "LINER_SYSTEM "
                          + identification
                          + " retired: seams gone, "
                          + date
                          + "; its identification is that of the one in it now");
            });
    assertThat(given.verdict().headline()).isEqualTo(Headline.RETIRE);
    assertThat(given.verdict().wayBack()).isInstanceOf(WayBack.Steps.class);
  }

  @Test
  void anotherIsShownByItsIdentification() {
    assertThat(COAT.with(retired(LayerKind.LINER_SYSTEM, "Lot 0", "2024-02-01")).verdict())
        .extracting(Verdict::service)
        .isEqualTo(Service.IN);
  }

  /** The liner in it was made on 2020-03-01; the one that left may be it all the same. */
  @ParameterizedTest
  @CsvSource({"2020-02-29", "2020-03-01", "2020-03", "2020", "UNKNOWN"})
  void havingBeenMadeAfterwardShowsNoOther(String left) {
    Verdict verdict = COAT.with(retired(LayerKind.LINER_SYSTEM, null, left)).verdict();
    assertThat(kinds(verdict)).contains(ReasonKind.LABEL_UNKNOWN);
  }

  /** Leaving out either identification, or writing a mark for it, shows no other layer. */
  @ParameterizedTest
  @CsvSource({"Lot 1, ?", "?, Lot 1", ", Lot 1", "Lot 1, "})
  void anIdentificationThatIsLeftOutShowsNoOther(String one, String two) {
    LabelBuilder label =
        Label.builder()
            .manufacturer(FitGear.MAKER_NAME)
            .model("Model A")
            .size("M")
            .manufactured(MarkedDate.parse("2024-03-01"))
            .certificationMark(YesNoUnknown.YES)
            .legibility(Legibility.READABLE);
    Label liner = two == null ? label.build() : label.identification(two).build();
    GearCase given =
        COAT.with(coat(liner)).with(retired(LayerKind.LINER_SYSTEM, one, "2024-02-01"));
    assertThat(onlyReason(given, ReasonKind.LABEL_UNKNOWN).seen()).contains("it is not shown");
  }

  /** Where nobody can read both, somebody identifies the one in it; only as it is labeled now. */
  @Test
  void somebodyWhoMayIdentifiesTheOneInIt() {
    GearCase given = COAT.with(retired(LayerKind.LINER_SYSTEM, null, "2024-02-01"));
    String seen = onlyReason(given, ReasonKind.LABEL_UNKNOWN).seen();
    FindingId id = new FindingId(seen.substring(seen.indexOf("label:")));
    assertThat(given.with(identified("2024-02-02", id)).verdict().service()).isEqualTo(Service.IN);
    assertThat(given.with(identified("2024-02-01", id)).verdict().service()).isEqualTo(Service.OUT);
    GearCase other = given.with(coat(FitGear.label().identification("Lot 2").build()));
    assertThat(other.with(identified("2024-02-02", id)).verdict().service()).isEqualTo(Service.OUT);
  }

  private static Event identified(String on, FindingId id) {
    return new LookEvent.Checked(
        Moment.on(MarkedDate.parse(on)),
        Check.IDENTIFICATION,
        CheckResult.PASSED,
        People.permitted(FrozenRules.rules().tables().checks().row(Check.IDENTIFICATION).task()),
        Set.of(id));
  }

  @Test
  void nothingShownIsNotAnother() {
    Reason reason =
        onlyReason(
            COAT.with(retired(LayerKind.LINER_SYSTEM, null, "2024-02-01")),
            ReasonKind.LABEL_UNKNOWN);
    assertThat(reason.seen())
        .matches(
            "LINER_SYSTEM retired: seams gone, 2024-02-01; it is not shown that the one in it now"
                + " is another: read the identification of both, or pass IDENTIFICATION for"
                + " label:LABEL@LINER_SYSTEM:RETIRED:[0-9a-f]{12}");
    assertThat(reason.effect().text()).isEqualTo("EVALUATE by IDENTIFICATION on LAYER");
    assertThat(reason.site()).hasToString("LABEL@LINER_SYSTEM");
  }

  @Test
  void aLabelThatCannotBeReadInFullShowsNoOther() {
    for (Legibility legibility : Legibility.values()) {
      GearCase given =
          COAT.with(coat(FitGear.label().identification("Lot 2").legibility(legibility).build()))
              .with(retired(LayerKind.LINER_SYSTEM, "Lot 1", "2024-02-01"));
      assertThat(
              given.verdict().reasons().stream()
                  .anyMatch(reason -> reason.seen().contains("it is not shown")))
          .as("%s", legibility)
          .isEqualTo(legibility != Legibility.READABLE);
    }
  }

  /** A date that contradicts the identification retires nothing and clears nothing. */
  @Test
  void theSameIdentificationMadeAfterTheOtherLeftIsIdentifiedFirst() {
    Reason reason =
        COAT
            .with(retired(LayerKind.LINER_SYSTEM, "Lot 1", "2019-01-01"))
            .verdict()
            .reasons()
            .stream()
            .filter(each -> each.kind() == ReasonKind.LABEL_UNKNOWN)
            .findFirst()
            .orElseThrow();
    assertThat(reason.effect().text()).isEqualTo("EVALUATE by IDENTIFICATION on LAYER");
  }

  @Test
  void aDashIdentifiesNothing() {
    Reason reason =
        onlyReason(
            COAT.with(coat(FitGear.label().identification("--").build()))
                .with(retired(LayerKind.LINER_SYSTEM, "-", "2024-02-01")),
            ReasonKind.LABEL_UNKNOWN);
    assertThat(reason.seen()).contains("it is not shown");
  }

  @Test
  void aLayerJoinedInAnotherIsToldByTheLabelOfThat() {
    for (LayerKind layer : new LayerKind[] {LayerKind.MOISTURE_BARRIER, LayerKind.THERMAL_LINER}) {
      assertThat(COAT.with(retired(layer, "Lot 1", "2024-02-01")).verdict().actions())
          .anySatisfy(
              action -> assertThat(action.target()).hasToString("WHOLE_ELEMENT@LINER_SYSTEM"));
    }
    Element apart =
        Element.builder(COAT.element().id(), ElementKind.COAT, COAT.element().use())
            .inService(COAT.element().inService())
            .cbrnOption(COAT.element().cbrnOption())
            .layer(LayerKind.OUTER_SHELL, FitGear.label().build())
            .layer(LayerKind.MOISTURE_BARRIER, FitGear.label().identification("Lot 8").build())
            .layer(LayerKind.THERMAL_LINER, FitGear.label().build())
            .build();
    assertThat(
            COAT.with(apart)
                .with(retired(LayerKind.LINER_SYSTEM, "Lot 8", "2024-02-01"))
                .verdict()
                .reasons())
        .filteredOn(reason -> reason.kind() == ReasonKind.LEFT_SERVICE)
        .singleElement()
        .satisfies(
            reason -> assertThat(reason.site()).hasToString("WHOLE_ELEMENT@MOISTURE_BARRIER"));
  }

  @Test
  void whatNobodyKnowsOfTheLabelIsNotShown() {
    Element unlabeled =
        Element.builder(COAT.element().id(), ElementKind.COAT, COAT.element().use()).build();
    assertThat(
            COAT.with(unlabeled)
                .with(retired(LayerKind.OUTER_SHELL, "Lot 1", "2024-02-01"))
                .verdict()
                .reasons())
        .anySatisfy(reason -> assertThat(reason.seen()).contains("it is not shown"));
    Label blank = FitGear.label().build();
    Label noLot =
        Label.builder()
            .manufacturer(FitGear.MAKER_NAME)
            .model("Model A")
            .size("M")
            .manufactured(blank.manufactured())
            .claimedEdition("Invented edition")
            .certificationMark(blank.certificationMark())
            .legibility(blank.legibility())
            .build();
    assertThat(
            COAT.with(coat(noLot))
                .with(retired(LayerKind.LINER_SYSTEM, "Lot 0", "2024-02-01"))
                .verdict()
                .reasons())
        .anySatisfy(reason -> assertThat(reason.seen()).contains("it is not shown"));
  }

  @Test
  void aCoatIsOneWithoutItsWinterLiner() {
    assertThat(
            COAT.with(retired(LayerKind.WINTER_LINER, "Lot 1", "2024-02-01")).verdict().reasons())
        .noneMatch(reason -> reason.seen().contains("retired: seams gone"));
  }

  @Test
  void aLayerThatSuchAnElementDoesNotHave() {
    Reason reason =
        onlyReason(
            FitGear.fit(ElementKind.HELMET)
                .with(retired(LayerKind.OUTER_SHELL, "Lot 1", "2024-02-01")),
            ReasonKind.CONTRADICTION);
    assertThat(reason.seen())
        .isEqualTo(
            "history LayerRetired: found OUTER_SHELL, allowed: a layer that such an element has");
  }

  @Test
  void whatIsToHappenLaterIsAFaultOfTheRecordOnly() {
    assertThat(kinds(COAT.with(retired(LayerKind.LINER_SYSTEM, "Lot 1", "2024-06-16")).verdict()))
        .containsExactly(ReasonKind.CONTRADICTION);
  }
}
