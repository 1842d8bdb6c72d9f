package org.ensemblerules.shipped;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.YearMonth;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.ensemblerules.care.Exposure;
import org.ensemblerules.care.Extraction;
import org.ensemblerules.care.WashRecord;
import org.ensemblerules.care.WashedLayers;
import org.ensemblerules.defect.DefectKind;
import org.ensemblerules.defect.Extent;
import org.ensemblerules.defect.Finding;
import org.ensemblerules.defect.FindingId;
import org.ensemblerules.defect.Grade;
import org.ensemblerules.effect.CleaningKind;
import org.ensemblerules.effect.Task;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.LayerKind;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.gear.Part;
import org.ensemblerules.gear.Site;
import org.ensemblerules.gear.Use;
import org.ensemblerules.history.Event;
import org.ensemblerules.history.When;
import org.ensemblerules.inspection.CriterionRow;
import org.ensemblerules.inspection.Inspection;
import org.ensemblerules.inspection.InspectionKind;
import org.ensemblerules.inspection.Occasion;
import org.ensemblerules.inspection.Outcome;
import org.ensemblerules.measure.Quantity;
import org.ensemblerules.measure.Unit;
import org.ensemblerules.ruleset.RuleSet;
import org.ensemblerules.source.RowKey;
import org.ensemblerules.testkit.ShippedCase;
import org.ensemblerules.testkit.ShippedGear;
import org.ensemblerules.testkit.ShippedGear.Kind;
import org.ensemblerules.verdict.Reason;
import org.ensemblerules.verdict.ReasonKind;
import org.ensemblerules.verdict.Service;
import org.junit.jupiter.api.Test;

/** On one day, what names what it answers counts, and else only the order that the record tells. */
class SameDayTest {
  private static final RuleSet RULES = ShippedEditions.rules(ShippedEditions.EDITION_2020);
  private static final Kind COAT = new Kind(ElementKind.COAT, Use.STRUCTURAL);

  private static MarkedDate before(int days) {
    return MarkedDate.of(ShippedGear.AS_OF.minusDays(days));
  }

  private static When when(int daysBefore, int orderInDay) {
    return new When(before(daysBefore), orderInDay);
  }

  private static Event.Exposed fire(int orderInDay) {
    return new Event.Exposed(when(20, orderInDay), Exposure.PRODUCTS_OF_COMBUSTION);
  }

  private static Event.Cleaned washed(When when) {
    return Event.Cleaned.whole(
        when,
        CleaningKind.ADVANCED,
        ShippedGear.permitted(RULES, Task.ADVANCED_CLEANING),
        Set.of());
  }

  /** A coat that was inspected in full a year ago at most, and looked over on the last day. */
  private static ShippedCase coat(Event... happened) {
    ShippedCase given = ShippedCase.fit(RULES, COAT);
    for (Event event : happened) {
      given = given.with(event);
    }
    return given;
  }

  private static List<String> seen(ShippedCase given, ReasonKind kind) {
    return given.verdict().reasons().stream()
        .filter(reason -> reason.kind() == kind)
        .map(Reason::seen)
        .toList();
  }

  @Test
  void aFireAndAWashOfOneDayAreInNoOrderForTheRouteAndForTheTask() {
    ShippedCase unordered = coat(fire(0), washed(when(20, 0)));
    String how =
        "; Cleaned of " + before(20) + " as well, and in order once both have their orderInDay";
    assertThat(unordered.verdict().service()).isEqualTo(Service.OUT);
    assertThat(seen(unordered, ReasonKind.CARE_OUTSTANDING))
        .anyMatch(text -> text.contains("not certainly done since") && text.contains(how));
    assertThat(seen(unordered, ReasonKind.TASK_DUE))
        .isNotEmpty()
        .allMatch(text -> text.contains(how));
    assertThat(coat(fire(1), washed(when(20, 2))).verdict().service()).isEqualTo(Service.IN);
    assertThat(coat(fire(2), washed(when(20, 1))).verdict().service()).isEqualTo(Service.OUT);
    assertThat(coat(fire(0), washed(when(19, 0))).verdict().service()).isEqualTo(Service.IN);
  }

  private static Event.Inspected looked(MarkedDate on, Occasion occasion, int orderInDay) {
    Inspection clear = ShippedGear.inspection(RULES, InspectionKind.ROUTINE, COAT, on).build();
    Inspection.Builder made =
        Inspection.builder(clear.kind(), occasion, on, clear.by())
            .gearClean(clear.gearClean())
            .atHand(clear.atHand());
    clear.outcomes().forEach(each -> made.outcome(each.criterion(), each.outcome()));
    return new Event.Inspected(made.build(), orderInDay);
  }

  @Test
  void aLookOfTheDayCountsForWhatItNames() {
    Event used = new Event.Used(when(20, 0));
    ShippedCase worn = ShippedCase.fit(RULES, COAT).inspectedBy(List.of()).with(used);
    ShippedCase periodic = worn.with(looked(before(20), Occasion.PERIODIC, 0));
    assertThat(periodic.verdict().service()).isEqualTo(Service.OUT);
    assertThat(seen(periodic, ReasonKind.USED_SINCE_INSPECTION))
        .singleElement()
        .asString()
        .contains("; Inspected of " + before(20) + " as well, and in order once both have");
    assertThat(worn.with(looked(before(20), Occasion.AFTER_USE, 0)).verdict().service())
        .isEqualTo(Service.IN);
  }

  @Test
  void aLookDatedByItsMonthSaysWhyItDoesNotCountYet() {
    MarkedDate month = new MarkedDate.Month(YearMonth.from(ShippedGear.AS_OF));
    ShippedCase worn =
        ShippedCase.fit(RULES, COAT)
            .inspectedBy(List.of())
            .with(new Event.Used(when(60, 0)))
            .with(looked(month, Occasion.AFTER_USE, 0));
    assertThat(seen(worn, ReasonKind.USED_SINCE_INSPECTION))
        .singleElement()
        .asString()
        .contains("dated only " + month + ", not certainly by " + ShippedGear.AS_OF)
        .endsWith(
            "; it counts with its day, or after "
                + YearMonth.from(ShippedGear.AS_OF).atEndOfMonth());
  }

  @Test
  void aWashThatIsDiscardedIsNamedWithItsLimit() {
    Event spun =
        new Event.Cleaned(
            when(10, 0),
            CleaningKind.ADVANCED,
            ShippedGear.permitted(RULES, Task.ADVANCED_CLEANING),
            Set.of(),
            new WashedLayers.Whole(),
            true,
            Optional.of(
                WashRecord.builder()
                    .extraction(new Extraction.Stated(Quantity.of("103.5", Unit.STANDARD_GRAVITY)))
                    .build()));
    assertThat(seen(coat(fire(0), spun), ReasonKind.CARE_OUTSTANDING))
        .anyMatch(text -> text.contains("103.5 g") && text.contains("at most 100 g"));
  }

  private static Event.Inspected inspected(InspectionKind kind, Optional<RowKey> found) {
    Inspection clear = ShippedGear.inspection(RULES, kind, COAT, before(20)).build();
    Inspection.Builder made =
        Inspection.builder(kind, Occasion.PERIODIC, clear.on(), clear.by())
            .gearClean(clear.gearClean())
            .atHand(clear.atHand());
    clear
        .outcomes()
        .forEach(
            each ->
                made.outcome(
                    each.criterion(),
                    found.equals(Optional.of(each.criterion())) ? Outcome.FOUND : each.outcome()));
    return new Event.Inspected(made.build(), 0);
  }

  /**
   * The liner was opened on the day of what spoke against it, in whatever order that was written.
   */
  @Test
  void aLinerOpenedOnTheDayOfTheSuspicionCountsForIt() {
    CriterionRow row =
        RULES
            .tables()
            .criteria()
            .required(InspectionKind.ADVANCED, COAT.element(), COAT.use())
            .stream()
            .filter(each -> each.lookFor().contains(DefectKind.TEAR))
            .filter(each -> each.sites().contains(Site.of(Part.FABRIC, LayerKind.THERMAL_LINER)))
            .findFirst()
            .orElseThrow();
    Finding torn =
        new Finding(
            new FindingId("F1"),
            Site.of(Part.FABRIC, LayerKind.THERMAL_LINER),
            "",
            DefectKind.TEAR,
            new Extent.Graded(Grade.SEVERE),
            before(20));
    ShippedCase suspected =
        coat(new Event.Found(torn), inspected(InspectionKind.ADVANCED, Optional.of(row.key())));
    assertThat(seen(suspected, ReasonKind.TASK_DUE)).hasSize(1);
    assertThat(
            seen(
                suspected.with(inspected(InspectionKind.COMPLETE_LINER, Optional.empty())),
                ReasonKind.TASK_DUE))
        .isEmpty();
  }
}
