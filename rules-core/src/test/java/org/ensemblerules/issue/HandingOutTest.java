package org.ensemblerules.issue;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import org.ensemblerules.gear.Element;
import org.ensemblerules.gear.ElementId;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.GearModel;
import org.ensemblerules.gear.Label;
import org.ensemblerules.gear.LabelBuilder;
import org.ensemblerules.gear.Legibility;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.gear.Use;
import org.ensemblerules.gear.YesNoUnknown;
import org.ensemblerules.source.InvalidValueException;
import org.ensemblerules.testkit.FitGear;
import org.ensemblerules.testkit.FrozenRules;
import org.ensemblerules.testkit.GearCase;
import org.junit.jupiter.api.Test;

/** Issuing an element to a member, and taking in a delivery. */
class HandingOutTest {
  private static final Order ORDER =
      new Order(
          "O-1",
          ElementKind.HELMET,
          Use.STRUCTURAL,
          Optional.of(new GearModel(FitGear.MAKER_NAME, "Model A")),
          Map.of("M", 2),
          Optional.of("Invented edition"),
          12);

  private static List<String> against(GearCase given, Whereabouts where, Member member) {
    JudgedElement judged =
        JudgedElement.of(
            FrozenRules.rules(),
            new KeptElement(given.assessment(), where),
            List.of(),
            FitGear.AS_OF);
    return IssueAnswer.of(judged, member, Sets.SIZES).against().stream()
        .map(Objection::text)
        .toList();
  }

  @Test
  void whatIsInServiceFreeAndFitsMayBeIssued() {
    GearCase coat = FitGear.fit(ElementKind.COAT);
    assertThat(against(coat, Whereabouts.spare("1", "Shelf"), Sets.MEMBER)).isEmpty();
    assertThat(against(coat, Whereabouts.with("Member 7", "1"), Sets.MEMBER)).isEmpty();
  }

  @Test
  void everyReasonAgainstIsNamed() {
    Member other =
        new Member(
            "Member 9", Optional.empty(), Set.of(Use.PROXIMITY), Map.of(ElementKind.COAT, "S"));
    assertThat(
            against(
                FitGear.fit(ElementKind.COAT).neverInspected(),
                Whereabouts.with("Member 7", "1"),
                other))
        .satisfiesExactly(
            out -> assertThat(out).startsWith("out of service: it goes to "),
            issued -> assertThat(issued).isEqualTo("issued to Member 7"),
            use ->
                assertThat(use).isEqualTo("built for STRUCTURAL, for which Member 9 needs no set"),
            size -> assertThat(size).isEqualTo("size M; Member 9 needs S"));
  }

  @Test
  void anUnknownSizeFitsNobody() {
    Member unmeasured = new Member("Member 9", Optional.empty(), Set.of(Use.STRUCTURAL), Map.of());
    assertThat(against(FitGear.fit(ElementKind.COAT), Whereabouts.unknown(), unmeasured))
        .containsExactly("nobody measured Member 9");
  }

  private static Element helmet(String id, UnaryOperator<LabelBuilder> label) {
    return Element.builder(new ElementId(id), ElementKind.HELMET, Use.STRUCTURAL)
        .label(label.apply(FitGear.label()).build())
        .build();
  }

  private static Delivery delivered(Element... elements) {
    return Delivery.of(
        FrozenRules.rules(),
        ORDER,
        List.of(elements),
        Set.of(new ElementId("H-0")),
        List.of(),
        FitGear.AS_OF);
  }

  @Test
  void whatIsAsOrderedIsAccepted() {
    Delivery delivery = delivered(helmet("H-2", label -> label), helmet("H-1", label -> label));
    assertThat(delivery.isAsOrdered()).isTrue();
    assertThat(delivery.lines().get(0).element().id()).isEqualTo(new ElementId("H-1"));
  }

  @Test
  void eachDiscrepancyIsNamedAndWhatIsMissingToo() {
    Delivery delivery =
        delivered(
            helmet("H-0", label -> label),
            helmet("H-1", label -> label.size("L")),
            helmet("H-2", label -> label.certificationMark(YesNoUnknown.NO)),
            helmet("H-3", label -> label.model("Model B")),
            helmet("H-4", label -> label.manufactured(MarkedDate.of(FitGear.MADE.minusYears(6)))),
            helmet("H-5", label -> label.claimedEdition("Another edition")),
            helmet("H-6", label -> Label.builder().legibility(Legibility.READABLE)),
            helmet("H-7", label -> label.manufactured(MarkedDate.parse("2024-07"))));
    assertThat(delivery.missing()).containsExactly(Map.entry("M", 2));
    assertThat(delivery.lines().stream().map(line -> line.discrepancies().get(0).text()))
        .containsExactly(
            "another element has the id H-0",
            "size L; ordered M",
            "no certification mark",
            "The maker, Model B; ordered The maker, Model A",
            "first day out 2024-03-01; ordered to last 12 months, to 2025-06-15",
            "label claims Another edition; ordered Invented edition",
            "certification mark not seen",
            "made 2024-07, after the day of delivery");
    assertThat(delivery.lines().get(6).discrepancies())
        .extracting(Objection::text)
        .contains(
            "no lot or serial number",
            "size not known",
            "date of manufacture unknown; ordered to" + " last 12 months, to 2025-06-15");
  }

  @Test
  void oneIdForTwoIsAcceptedForNeither() {
    Delivery delivery =
        delivered(helmet("H-1", label -> label), helmet("H-1", label -> label.model("Model A")));
    assertThat(delivery.lines()).noneMatch(DeliveryLine::isAccepted);
    assertThat(delivery.missing()).containsExactly(Map.entry("M", 2));
  }

  @Test
  void moreThanOrderedIsNotAccepted() {
    Delivery delivery =
        delivered(
            helmet("H-1", label -> label),
            helmet("H-2", label -> label),
            helmet("H-3", label -> label));
    assertThat(delivery.lines().get(2).discrepancies())
        .containsExactly(
            new Objection(ObjectionKind.MORE_THAN_ORDERED, "more of size M than ordered"));
    assertThat(delivery.missing()).isEmpty();
    assertThat(delivery.isAsOrdered()).isFalse();
  }

  @Test
  void whatCannotBeOrderedIsRefused() {
    assertThatThrownBy(
            () ->
                new Order(
                    "O-2",
                    ElementKind.HELMET,
                    Use.STRUCTURAL,
                    Optional.empty(),
                    Map.of("M", -1),
                    Optional.empty(),
                    0))
        .isInstanceOf(InvalidValueException.class)
        .hasMessage("Order.sizes: given -1, allowed: 1 to 100000");
    assertThatThrownBy(
            () ->
                new Order(
                    "O-2",
                    ElementKind.HELMET,
                    Use.STRUCTURAL,
                    Optional.empty(),
                    Map.of(),
                    Optional.empty(),
                    0))
        .isInstanceOf(InvalidValueException.class);
  }
}
