package org.ensemblerules.shipped;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.util.List;
import org.ensemblerules.GearRules;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.gear.Use;
import org.ensemblerules.history.LookEvent;
import org.ensemblerules.history.Moment;
import org.ensemblerules.history.Transfer;
import org.ensemblerules.history.UseEvent;
import org.ensemblerules.inspection.Inspection;
import org.ensemblerules.inspection.InspectionBuilder;
import org.ensemblerules.inspection.InspectionKind;
import org.ensemblerules.inspection.Occasion;
import org.ensemblerules.ruleset.RuleSet;
import org.ensemblerules.source.Checked;
import org.ensemblerules.tables.OverlayJson;
import org.ensemblerules.tables.message.JsonFault;
import org.ensemblerules.testkit.ShippedCase;
import org.ensemblerules.testkit.ShippedGear;
import org.ensemblerules.testkit.ShippedGear.Kind;
import org.ensemblerules.verdict.ReasonKind;
import org.ensemblerules.verdict.Service;
import org.ensemblerules.verdict.Step;
import org.ensemblerules.verdict.Verdict;
import org.ensemblerules.verdict.WayBack;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Gear that is lent, at a provider, lost or stolen, and comes back, by the shipped tables. */
class AwayTest {
  private static final RuleSet RULES = ShippedEditions.rules(ShippedEditions.EDITION_2020);
  private static final Kind GLOVES = new Kind(ElementKind.GLOVES, Use.STRUCTURAL);
  private static final LocalDate GONE = ShippedGear.AS_OF.minusDays(9);
  private static final LocalDate BACK = ShippedGear.AS_OF.minusDays(4);

  private static ShippedCase moved(ShippedCase given, Transfer transfer, LocalDate day) {
    return given.with(
        new UseEvent.Moved(Moment.on(MarkedDate.of(day)), transfer, "The other side"));
  }

  private static ShippedCase gone(Transfer transfer) {
    return moved(ShippedCase.fit(RULES, GLOVES), transfer, GONE);
  }

  private static ShippedCase looked(ShippedCase given, InspectionKind kind, LocalDate day) {
    return given.with(
        new LookEvent.Inspected(
            ShippedGear.inspection(RULES, kind, GLOVES, MarkedDate.of(day)).build(), 0));
  }

  private static List<ReasonKind> out(Verdict verdict) {
    return verdict.reasons().stream()
        .filter(reason -> reason.effect().keepsOut())
        .map(reason -> reason.kind())
        .toList();
  }

  @ParameterizedTest
  @CsvSource({
    "LENT, BACK_FROM_LOAN",
    "LOST, FOUND_AGAIN",
    "STOLEN, FOUND_AGAIN",
  })
  void whatIsAwayIsOutAndIsInspectedInFullOnceItIsBack(Transfer went, Transfer came) {
    ShippedCase gone = gone(went);
    assertThat(gone.verdict().service()).isEqualTo(Service.OUT);
    assertThat(out(gone.verdict())).containsExactly(ReasonKind.AWAY);
    // A look at it while it is away neither brings it back nor counts for its return.
    ShippedCase unseen = moved(looked(gone, InspectionKind.ADVANCED, GONE.plusDays(1)), came, BACK);
    assertThat(out(unseen.verdict())).containsExactly(ReasonKind.BACK_UNSEEN);
    ShippedCase lookedOver = looked(unseen, InspectionKind.ROUTINE, BACK.plusDays(1));
    assertThat(out(lookedOver.verdict())).containsExactly(ReasonKind.BACK_UNSEEN);
    ShippedCase inspected = looked(unseen, InspectionKind.ADVANCED, BACK.plusDays(1));
    assertThat(inspected.verdict().service()).isEqualTo(Service.IN);
  }

  @Test
  void whatIsAtAProviderIsExpectedBackAndLookedOverThen() {
    Verdict gone = gone(Transfer.TO_PROVIDER).verdict();
    assertThat(out(gone)).containsExactly(ReasonKind.AWAY);
    List<Step> steps = ((WayBack.Steps) gone.wayBack()).steps();
    assertThat(steps)
        .extracting(step -> step.effect().text())
        .containsExactly("EVALUATE by ROUTINE_INSPECTION on ELEMENT");
    assertThat(steps.get(0).shown())
        .startsWith("Once it is back, and the record says so: BACK_FROM_PROVIDER.");
    ShippedCase back = moved(gone(Transfer.TO_PROVIDER), Transfer.BACK_FROM_PROVIDER, BACK);
    assertThat(back.inspectedBy(List.of()).verdict().service()).isEqualTo(Service.OUT);
    assertThat(back.verdict().service()).isEqualTo(Service.IN);
  }

  @Test
  void whatCameFromAnotherDepartmentIsInspectedInFull() {
    ShippedCase came = gone(Transfer.TO_DEPARTMENT);
    assertThat(out(came.verdict())).containsExactly(ReasonKind.BACK_UNSEEN);
    assertThat(looked(came, InspectionKind.ADVANCED, BACK).verdict().service())
        .isEqualTo(Service.IN);
    assertThat(gone(Transfer.TO_STATION).verdict().service()).isEqualTo(Service.IN);
  }

  /** The table decides, so that a department may ask for more by a row of its own. */
  @Test
  void aDepartmentMayAskForMoreAndForNothingLess() {
    RuleSet stricter = laid("BACK_FROM_PROVIDER", "\"ADVANCED\"").orElseThrow().rules();
    ShippedCase gone = moved(ShippedCase.fit(stricter, GLOVES), Transfer.TO_PROVIDER, GONE);
    ShippedCase back = moved(gone, Transfer.BACK_FROM_PROVIDER, BACK);
    Verdict lookedOver = looked(back, InspectionKind.ROUTINE, BACK.plusDays(1)).verdict();
    assertThat(lookedOver.reasons())
        .filteredOn(reason -> reason.effect().keepsOut())
        .singleElement()
        .satisfies(reason -> assertThat(reason.wording()).contains("Our own people look first."));
    assertThat(looked(back, InspectionKind.ADVANCED, BACK.plusDays(1)).verdict().service())
        .isEqualTo(Service.IN);
    assertThatThrownBy(laid("BACK_FROM_LOAN", "\"ROUTINE\", \"ADVANCED\"")::orElseThrow)
        .hasMessageContaining(
            "found [ROUTINE, ADVANCED], looser than [ADVANCED] by row"
                + " back-from-loan/BACK_FROM_LOAN of TRADE")
        .hasMessageContaining("allowed: no kinds of inspection but [ADVANCED]");
  }

  private static Checked<GearRules, JsonFault> laid(String transfer, String inspections) {
    String ours =
        """
        {"overlay": "OURS", "kind": "DEPARTMENT_POLICY", "title": "Ours",
         "reviewedThrough": "2030-12-31",
         "returns": [{"key": "ours", "transfers": ["%s"], "inspections": [%s],
                      "wording": "Our own people look first.",
                      "basis": {"kind": "COMMON_PRACTICE"}}]}
        """;
    return OverlayJson.lay(
        GearRules.of(RULES),
        List.of(OverlayJson.read("ours.json", ours.formatted(transfer, inspections)).orElseThrow()),
        ShippedGear.AS_OF);
  }

  @Test
  void onlyAReturnOfItsOwnKindThatIsCertainlyLaterBringsItBack() {
    ShippedCase otherKind = moved(gone(Transfer.LOST), Transfer.BACK_FROM_LOAN, BACK);
    assertThat(out(otherKind.verdict())).contains(ReasonKind.AWAY);
    ShippedCase sameDay = moved(gone(Transfer.LENT), Transfer.BACK_FROM_LOAN, GONE);
    assertThat(out(sameDay.verdict())).contains(ReasonKind.AWAY);
    assertThat(sameDay.verdict().reasons())
        .filteredOn(reason -> reason.kind() == ReasonKind.AWAY)
        .singleElement()
        .satisfies(
            reason ->
                assertThat(reason.seen())
                    .endsWith(
                        "not certainly BACK_FROM_LOAN since; Moved of "
                            + GONE
                            + " as well, and in order once both have their orderInDay"));
    ShippedCase later =
        moved(gone(Transfer.LENT), Transfer.BACK_FROM_LOAN, ShippedGear.AS_OF.plusDays(1));
    assertThat(out(later.verdict())).contains(ReasonKind.AWAY);
  }

  @Test
  void aLookOfTheSameDayCountsIfTheReturnIsItsOccasion() {
    ShippedCase back = moved(gone(Transfer.LENT), Transfer.BACK_FROM_LOAN, BACK);
    ShippedCase silent = looked(back, InspectionKind.ADVANCED, BACK);
    assertThat(out(silent.verdict())).containsExactly(ReasonKind.BACK_UNSEEN);
    assertThat(silent.verdict().reasons())
        .anySatisfy(
            reason ->
                assertThat(reason.seen())
                    .endsWith(
                        "one on the same day counts if its occasion is AFTER_RETURN; Inspected of "
                            + BACK
                            + " as well, and in order once both have their orderInDay"));
    Inspection clear =
        ShippedGear.inspection(RULES, InspectionKind.ADVANCED, GLOVES, MarkedDate.of(BACK)).build();
    InspectionBuilder onReturn =
        Inspection.builder(clear.kind(), Occasion.AFTER_RETURN, clear.on(), clear.by())
            .gearClean(clear.gearClean())
            .atHand(clear.atHand());
    clear.outcomes().forEach(each -> onReturn.outcome(each.criterion(), each.outcome()));
    assertThat(back.with(new LookEvent.Inspected(onReturn.build(), 0)).verdict().service())
        .isEqualTo(Service.IN);
  }
}
