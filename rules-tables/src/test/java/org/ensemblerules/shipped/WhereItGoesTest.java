package org.ensemblerules.shipped;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.ensemblerules.defect.DefectKind;
import org.ensemblerules.defect.DefectRow;
import org.ensemblerules.defect.Extent;
import org.ensemblerules.defect.Finding;
import org.ensemblerules.defect.FindingId;
import org.ensemblerules.effect.CredentialScope;
import org.ensemblerules.effect.Destination;
import org.ensemblerules.effect.DestinationTable;
import org.ensemblerules.effect.EntityKind;
import org.ensemblerules.effect.GoesTo;
import org.ensemblerules.effect.PermissionRow;
import org.ensemblerules.effect.PermittedDoer;
import org.ensemblerules.effect.Task;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.gear.Site;
import org.ensemblerules.gear.Use;
import org.ensemblerules.history.EndEvent;
import org.ensemblerules.history.Event;
import org.ensemblerules.history.Moment;
import org.ensemblerules.history.Transfer;
import org.ensemblerules.history.UseEvent;
import org.ensemblerules.measure.Quantity;
import org.ensemblerules.measure.Unit;
import org.ensemblerules.ruleset.RuleSet;
import org.ensemblerules.testkit.ShippedCase;
import org.ensemblerules.testkit.ShippedGear;
import org.ensemblerules.testkit.ShippedGear.Kind;
import org.ensemblerules.verdict.Headline;
import org.ensemblerules.verdict.OutBecause;
import org.ensemblerules.verdict.Verdict;
import org.ensemblerules.verdict.WayBack;
import org.junit.jupiter.api.Test;

/** Where gear goes next and why it is out, by the shipped tables: one worked case for each. */
class WhereItGoesTest {
  private static final RuleSet RULES = ShippedEditions.rules(ShippedEditions.EDITION_2020);
  private static final Moment TODAY = Moment.on(MarkedDate.of(ShippedGear.AS_OF));

  private static ShippedCase fit(ElementKind kind) {
    return ShippedCase.fit(RULES, new Kind(kind, Use.STRUCTURAL));
  }

  private static Finding found(String id, String site, DefectKind defect, Extent extent) {
    return new Finding(
        new FindingId(id), Site.parse(site), "", defect, extent, MarkedDate.of(ShippedGear.AS_OF));
  }

  private static Finding found(String site, DefectKind defect) {
    return found("F1", site, defect, new Extent.NotMeasured());
  }

  private static Event lost() {
    return new UseEvent.Moved(TODAY, Transfer.LOST, "Nobody knows");
  }

  private static void assertGoes(ShippedCase given, Destination to, OutBecause... because) {
    assertGoes(given, GoesTo.of(to), because);
  }

  private static void assertGoes(ShippedCase given, GoesTo to, OutBecause... because) {
    Verdict verdict = given.verdict();
    assertThat(verdict.goesTo()).contains(to);
    assertThat(verdict.outBecause()).containsExactlyInAnyOrder(because);
  }

  private static GoesTo provider(CredentialScope scope) {
    return new GoesTo(Destination.SERVICE_PROVIDER, Optional.of(scope));
  }

  @Test
  void whatIsInGoesNowhere() {
    Verdict verdict = fit(ElementKind.HOOD).verdict();
    assertThat(verdict.goesTo()).isEmpty();
    assertThat(verdict.outBecause()).isEmpty();
  }

  @Test
  void aUseWithoutALookGoesToItsWearer() {
    ShippedCase used =
        fit(ElementKind.TROUSERS).inspectedBy(List.of()).with(new UseEvent.Used(TODAY));
    assertThat(used.verdict().outBecause()).contains(OutBecause.OVERDUE);
    assertThat(
            ((WayBack.Steps) used.verdict().wayBack())
                .steps().stream()
                    .filter(step -> step.effect().text().contains("ROUTINE"))
                    .map(step -> step.goesTo().destination()))
        .containsOnly(Destination.WEARER_CHECK);
  }

  @Test
  void whatNobodyCanNameIsSealed() {
    ShippedCase sticky =
        fit(ElementKind.GLOVES).with(found("WHOLE_ELEMENT", DefectKind.CONTAMINATION_UNKNOWN));
    assertGoes(sticky, Destination.ISOLATE, OutBecause.CONDITION);
  }

  @Test
  void bloodGoesToTheWash() {
    ShippedCase bloody = fit(ElementKind.HOOD).with(found("FABRIC", DefectKind.BODY_FLUIDS));
    assertThat(bloody.verdict().goesTo()).contains(GoesTo.of(Destination.WASH));
    assertThat(bloody.verdict().outBecause()).contains(OutBecause.CONDITION);
  }

  @Test
  void aShortGapInASeamGoesToTheGearRoomAndALongOneToAProvider() {
    ShippedCase shorter =
        fit(ElementKind.TROUSERS)
            .with(
                found(
                    "F1",
                    "SEAM_MAJOR_A@OUTER_SHELL",
                    DefectKind.BROKEN_STITCHING,
                    new Extent.Length(Quantity.of("20", Unit.MILLIMETER))));
    assertThat(shorter.verdict().goesTo()).contains(GoesTo.of(Destination.GEAR_ROOM));
    ShippedCase longer =
        shorter.withFindings(
            List.of(
                found(
                    "F1",
                    "SEAM_MAJOR_A@OUTER_SHELL",
                    DefectKind.BROKEN_STITCHING,
                    new Extent.Length(Quantity.of("200", Unit.MILLIMETER)))));
    assertThat(longer.verdict().goesTo()).contains(provider(CredentialScope.ADVANCED_REPAIR));
  }

  @Test
  void aCrackedShellOfAHelmetGoesToWhoeverIsVerifiedToJudgeIt() {
    ShippedCase cracked = fit(ElementKind.HELMET).with(found("HELMET_SHELL", DefectKind.CRACKING));
    assertGoes(cracked, provider(CredentialScope.INSPECT), OutBecause.CONDITION);
  }

  @Test
  void aLabelThatIsGoneGoesToTheManufacturer() {
    ShippedCase nameless = fit(ElementKind.HOOD).with(found("LABEL", DefectKind.MISSING));
    assertThat(nameless.verdict().goesTo()).contains(GoesTo.of(Destination.MANUFACTURER));
  }

  @Test
  void whatTheRecordDoesNotSayIsBackIsAMatterOfTheRecords() {
    assertGoes(
        fit(ElementKind.HOOD).with(new UseEvent.TakenOut(TODAY, "sent away for repair")),
        Destination.RECORDS,
        OutBecause.PAPER);
  }

  /** What was sent out needs its return on record, and no correction of what stands there. */
  @Test
  void theWordsAreThoseOfWhatIsToBeDone() {
    assertThat(actions(fit(ElementKind.HOOD).with(new UseEvent.TakenOut(TODAY, "sent for repair"))))
        .containsExactly("EVALUATE by RETURN_TO_SERVICE on ELEMENT");
    for (ElementKind pair : List.of(ElementKind.GLOVES, ElementKind.FOOTWEAR)) {
      ShippedCase odd = fit(pair).with(found("WHOLE_ELEMENT", DefectKind.INCOMPLETE_PAIR));
      assertThat(actions(odd)).contains("EVALUATE by MATCHING_PAIR on ELEMENT");
      assertThat(actions(odd)).noneMatch(action -> action.contains("IDENTIFICATION"));
      assertThat(odd.verdict().goesTo()).contains(GoesTo.of(Destination.GEAR_ROOM));
    }
    ShippedCase scratched =
        fit(ElementKind.HELMET).with(found("FACESHIELD", DefectKind.SCRATCHES_LIMITING_SIGHT));
    assertThat(scratched.verdict().headline()).isEqualTo(Headline.REPLACE_PART);
    for (DefectRow row : RULES.tables().defects().rows()) {
      assertThat(row.wording()).doesNotContainIgnoringCase("overlay");
    }
  }

  private static List<String> actions(ShippedCase given) {
    return given.verdict().actions().stream().map(action -> action.effect().text()).toList();
  }

  @Test
  void holdComesBeforeAwayAwayBeforeSealedAndSealedBeforeDisposal() {
    ShippedCase disposed =
        fit(ElementKind.HOOD).with(new EndEvent.Retired(TODAY, "decided by the chief"));
    assertGoes(disposed, Destination.DISPOSAL, OutBecause.CONDITION);
    ShippedCase sealed = disposed.with(found("WHOLE_ELEMENT", DefectKind.CONTAMINATION_UNKNOWN));
    assertGoes(sealed, Destination.ISOLATE, OutBecause.CONDITION);
    ShippedCase away = sealed.with(lost());
    assertGoes(away, Destination.AWAY, OutBecause.CONDITION, OutBecause.PAPER);
    ShippedCase held =
        away.with(
            found("F2", "WHOLE_ELEMENT", DefectKind.INJURY_TO_WEARER, new Extent.NotMeasured()));
    assertThat(held.verdict().goesTo()).contains(GoesTo.of(Destination.EVIDENCE_HOLD));
  }

  @Test
  void whatIsOverAgeIsOutForADutyNotDone() {
    ShippedCase old = fit(ElementKind.HOOD).on(LocalDate.of(2040, 1, 1));
    assertThat(old.verdict().goesTo()).contains(GoesTo.of(Destination.DISPOSAL));
    assertThat(old.verdict().outBecause()).contains(OutBecause.OVERDUE);
  }

  /**
   * Whoever may do something is named, so that nothing goes to the manufacturer for want of a row.
   */
  @Test
  void everyTaskHasAPlaceForWhoeverMayDoIt() {
    DestinationTable table = RULES.tables().destinations();
    for (PermissionRow row : RULES.tables().permissions().rows()) {
      GoesTo goesTo = table.nearest(row.task(), List.of(row.doer()));
      assertThat(goesTo.destination() == Destination.MANUFACTURER)
          .as("%s by %s", row.task(), row.entity())
          .isEqualTo(row.entity() == EntityKind.MANUFACTURER || row.task() == Task.IDENTIFICATION);
    }
    assertThat(table.nearest(Task.ADVANCED_CLEANING, List.of()))
        .isEqualTo(GoesTo.of(Destination.MANUFACTURER));
  }

  /** What only others may do is not the gear room's; what it may do as well is. */
  @Test
  void theNearestOfThoseWhoMayCounts() {
    DestinationTable table = RULES.tables().destinations();
    PermittedDoer own =
        new PermittedDoer(EntityKind.ORGANIZATION, Optional.of(CredentialScope.INSPECT));
    PermittedDoer outside =
        new PermittedDoer(
            EntityKind.VERIFIED_INDEPENDENT_SERVICE_PROVIDER, Optional.of(CredentialScope.INSPECT));
    assertThat(table.nearest(Task.ADVANCED_INSPECTION, List.of(outside)))
        .isEqualTo(provider(CredentialScope.INSPECT));
    assertThat(table.nearest(Task.ADVANCED_INSPECTION, List.of(outside, own)))
        .isEqualTo(GoesTo.of(Destination.GEAR_ROOM));
  }

  /** Of hold, away, sealed and disposal none is a matter of who may do a task. */
  @Test
  void noRowSendsGearAwayOrToDisposal() {
    Set<Destination> named = EnumSet.noneOf(Destination.class);
    RULES.tables().destinations().rows().forEach(row -> named.add(row.destination()));
    assertThat(named)
        .containsExactlyInAnyOrder(
            Destination.WEARER_CHECK,
            Destination.WASH,
            Destination.GEAR_ROOM,
            Destination.SERVICE_PROVIDER,
            Destination.MANUFACTURER,
            Destination.RECORDS,
            Destination.EVIDENCE_HOLD);
  }
}
