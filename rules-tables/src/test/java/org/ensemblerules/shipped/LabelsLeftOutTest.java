package org.ensemblerules.shipped;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.ensemblerules.defect.DefectKind;
import org.ensemblerules.defect.Extent;
import org.ensemblerules.defect.Finding;
import org.ensemblerules.defect.FindingId;
import org.ensemblerules.effect.Check;
import org.ensemblerules.effect.EntityKind;
import org.ensemblerules.effect.RepairClass;
import org.ensemblerules.gear.Element;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.Label;
import org.ensemblerules.gear.LabelBuilder;
import org.ensemblerules.gear.LayerKind;
import org.ensemblerules.gear.Legibility;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.gear.Part;
import org.ensemblerules.gear.Site;
import org.ensemblerules.gear.Use;
import org.ensemblerules.gear.YesNoUnknown;
import org.ensemblerules.history.EndEvent;
import org.ensemblerules.history.Event;
import org.ensemblerules.history.LookEvent;
import org.ensemblerules.history.Moment;
import org.ensemblerules.history.WorkEvent;
import org.ensemblerules.inspection.CriterionOutcome;
import org.ensemblerules.inspection.CriterionRow;
import org.ensemblerules.inspection.Inspection;
import org.ensemblerules.inspection.InspectionBuilder;
import org.ensemblerules.inspection.InspectionKind;
import org.ensemblerules.inspection.Outcome;
import org.ensemblerules.ruleset.RuleSet;
import org.ensemblerules.source.InvalidValueException;
import org.ensemblerules.source.RowKey;
import org.ensemblerules.tables.ShippedRules;
import org.ensemblerules.testkit.ShippedCase;
import org.ensemblerules.testkit.ShippedGear;
import org.ensemblerules.testkit.ShippedGear.Kind;
import org.ensemblerules.testkit.ShippedWork;
import org.ensemblerules.verdict.Action;
import org.ensemblerules.verdict.Service;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Coats that are out of service for what their labels say, by the shipped rules, and the same with
 * less said of them: they stay out.
 */
class LabelsLeftOutTest {
  private static final RuleSet RULES = ShippedRules.standard().rules();
  private static final Kind COAT = new Kind(ElementKind.COAT, Use.STRUCTURAL);
  private static final String READ = "EVALUATE by READ_LABEL on LAYER";

  private static ShippedCase coat(LayerKind layer, Label label) {
    Element coat = ShippedGear.element(RULES, COAT).layer(layer, label).build();
    return ShippedCase.fit(RULES, COAT).with(coat);
  }

  /** The label of a liner that fits its shell, but for who made it and which one it is. */
  private static LabelBuilder liner() {
    return Label.builder()
        .model("Model A")
        .size("M")
        .manufactured(MarkedDate.of(ShippedGear.MADE))
        .certificationMark(YesNoUnknown.YES)
        .legibility(Legibility.READABLE);
  }

  private static ShippedCase madeBy(Optional<String> maker) {
    LabelBuilder label = liner().identification("Lot 1");
    maker.ifPresent(label::manufacturer);
    return coat(LayerKind.LINER_SYSTEM, label.build());
  }

  private static Moment on(String date) {
    return Moment.on(MarkedDate.parse(date));
  }

  private static List<String> asked(ShippedCase given) {
    return given.verdict().actions().stream().map(action -> action.effect().text()).toList();
  }

  @Test
  void aLinerThatDoesNotSayWhoMadeItMayBeOfAnotherMaker() {
    assertThat(madeBy(Optional.of(ShippedGear.MAKER)).verdict().service()).isEqualTo(Service.IN);
    assertThat(asked(madeBy(Optional.of("Another maker"))))
        .containsExactly("EVALUATE by EXPERT_EVALUATION on ELEMENT");
    assertThat(asked(madeBy(Optional.empty()))).containsExactly(READ);
  }

  private static ShippedCase mendedByTheMaker(Optional<String> ofTheLiner) {
    FindingId open = new FindingId("F1");
    return madeBy(ofTheLiner)
        .with(
            new LookEvent.Found(
                new Finding(
                    open,
                    Site.of(Part.POCKET, LayerKind.OUTER_SHELL),
                    "",
                    DefectKind.CLOSURE_FAILURE,
                    new Extent.NotMeasured(),
                    MarkedDate.parse("2024-05-01"))))
        .with(
            new WorkEvent.Repaired(
                on("2024-05-10"),
                RepairClass.ADVANCED,
                false,
                ShippedGear.trained(EntityKind.MANUFACTURER),
                Set.of(open)))
        .with(ShippedWork.passed(RULES, on("2024-05-11"), Check.CLOSURE_OPERATION, Set.of(open)));
  }

  @Test
  void aRepairByTheManufacturerNeedsEveryLabelToSayWhoThatIs() {
    assertThat(mendedByTheMaker(Optional.of(ShippedGear.MAKER)).verdict().service())
        .isEqualTo(Service.IN);
    for (Optional<String> other : List.of(Optional.of("Another maker"), Optional.<String>empty())) {
      assertThat(asked(mendedByTheMaker(other)))
          .as("%s", other)
          .contains("REPAIR ADVANCED on PART");
    }
  }

  private static ShippedCase inPlaceOfARetired(String gone, String inItsPlace) {
    LabelBuilder label =
        liner().manufacturer(ShippedGear.MAKER).manufactured(MarkedDate.parse("2024-04-01"));
    Optional.ofNullable(inItsPlace).ifPresent(label::identification);
    return coat(LayerKind.LINER_SYSTEM, label.build())
        .with(
            new EndEvent.LayerRetired(
                on("2024-03-01"), LayerKind.LINER_SYSTEM, Optional.ofNullable(gone), "torn"));
  }

  /** Made after the other left, and bearing its name: nobody knows which of the two it is. */
  @ParameterizedTest
  @CsvSource({"Lot 1, Lot 1", ", Lot 1", "Lot 1, ", "?, Lot 1", "Lot 1, ?", ", "})
  void aLinerInPlaceOfARetiredOneIsIdentifiedFirst(String gone, String inItsPlace) {
    assertThat(asked(inPlaceOfARetired(gone, inItsPlace)))
        .contains("EVALUATE by IDENTIFICATION on LAYER");
    assertThat(inPlaceOfARetired("Lot 1", "Lot 2").verdict().service()).isEqualTo(Service.IN);
  }

  private static Event evaluated(String day, FindingId what) {
    return ShippedWork.passed(RULES, on(day), Check.EXPERT_EVALUATION, Set.of(what));
  }

  @Test
  void aMismatchIsClearedOnlyByWhoeverJudgedTheseLabels() {
    ShippedCase mixed = madeBy(Optional.of("Another maker"));
    Finding shown = mixed.verdict().openFindings().get(0).finding();
    assertThat(shown.seen()).isEqualTo(MarkedDate.of(ShippedGear.AS_OF));
    FindingId ofNoLabels = new FindingId("label:WHOLE_ELEMENT:MISMATCH_OF_ASSEMBLY");
    assertThat(mixed.with(evaluated("2022-05-10", ofNoLabels)).verdict().service())
        .isEqualTo(Service.OUT);
    Event judged = evaluated("2024-06-10", shown.id());
    assertThat(mixed.with(judged).verdict().service()).isEqualTo(Service.IN);
    assertThat(madeBy(Optional.of("A third maker")).with(judged).verdict().service())
        .isEqualTo(Service.OUT);
    Finding owners =
        new Finding(
            ofNoLabels,
            Site.of(Part.WHOLE_ELEMENT),
            "",
            DefectKind.MISMATCH_OF_ASSEMBLY,
            new Extent.NotMeasured(),
            MarkedDate.parse("2022-05-01"));
    assertThatThrownBy(() -> new LookEvent.Found(owners)).isInstanceOf(InvalidValueException.class);
  }

  /** A coat whose inspections all say that a layer is there that only some coats have. */
  private static ShippedCase seenIn(ShippedCase given, LayerKind layer) {
    return given.inspections(
        made -> {
          InspectionBuilder saw =
              Inspection.builder(made.kind(), made.occasion(), made.on(), made.by())
                  .gearClean(made.gearClean())
                  .atHand(made.atHand());
          Set<RowKey> ofTheLayer = criteria(made.kind(), layer);
          for (CriterionOutcome each : made.outcomes()) {
            saw.outcome(
                each.criterion(),
                ofTheLayer.contains(each.criterion()) ? Outcome.CLEAR : each.outcome());
          }
          return Optional.of(saw.build());
        });
  }

  private static Set<RowKey> criteria(InspectionKind kind, LayerKind layer) {
    return RULES.tables().criteria().required(kind, COAT.element(), COAT.use()).stream()
        .filter(
            row -> row.sites().stream().anyMatch(site -> site.layer().equals(Optional.of(layer))))
        .map(CriterionRow::key)
        .collect(Collectors.toSet());
  }

  @ParameterizedTest
  @EnumSource(names = {"WINTER_LINER", "MOISTURE_BARRIER"})
  void aLayerThatAnInspectionSawDoesNotVanishWithItsLabel(LayerKind layer) {
    Label old = ShippedGear.label().manufactured(MarkedDate.parse("2010-03")).build();
    assertThat(asked(seenIn(coat(layer, old), layer))).containsExactly("RETIRE LAYER");
    ShippedCase without = ShippedCase.fit(RULES, COAT);
    assertThat(without.verdict().service()).isEqualTo(Service.IN);
    assertThat(asked(seenIn(without, layer))).containsOnly(READ);
    assertThat(seenIn(without, layer).verdict().actions())
        .extracting(Action::target)
        .contains(Site.of(Part.WHOLE_ELEMENT, layer))
        .doesNotContain(Site.of(Part.WHOLE_ELEMENT, LayerKind.LINER_SYSTEM));
  }

  /** What may come only later in the month has not taken the liner out yet. */
  @ParameterizedTest
  @CsvSource({"2024-05-12, IN", "2024-05, IN", "2024-06, OUT", "2024-06-20, OUT"})
  void aWinterLinerIsGoneOnceThatIsCertainlySaid(String left, Service service) {
    ShippedCase seen = seenIn(ShippedCase.fit(RULES, COAT), LayerKind.WINTER_LINER);
    ShippedCase gone =
        seen.with(
            new EndEvent.LayerRetired(on(left), LayerKind.WINTER_LINER, Optional.empty(), "lost"));
    assertThat(gone.verdict().service()).isEqualTo(service);
    assertThat(asked(gone).contains(READ)).isEqualTo(service == Service.OUT);
  }
}
