package org.ensemblerules.shipped;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.ensemblerules.GearRules;
import org.ensemblerules.effect.EntityKind;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.gear.Use;
import org.ensemblerules.history.InspectionOnRecord;
import org.ensemblerules.history.LookEvent;
import org.ensemblerules.history.Moment;
import org.ensemblerules.history.UseEvent;
import org.ensemblerules.inspection.CriterionOutcome;
import org.ensemblerules.inspection.CriterionRow;
import org.ensemblerules.inspection.Equipment;
import org.ensemblerules.inspection.Inspection;
import org.ensemblerules.inspection.InspectionBuilder;
import org.ensemblerules.inspection.InspectionKind;
import org.ensemblerules.inspection.Occasion;
import org.ensemblerules.ruleset.RuleSet;
import org.ensemblerules.source.RowKey;
import org.ensemblerules.tables.AssessmentJson;
import org.ensemblerules.tables.ShippedRules;
import org.ensemblerules.testkit.ShippedCase;
import org.ensemblerules.testkit.ShippedGear;
import org.ensemblerules.testkit.ShippedGear.Kind;
import org.ensemblerules.verdict.Service;
import org.ensemblerules.verdict.Verdict;
import org.junit.jupiter.api.Test;

/** A coat's advanced inspection that is broken off, saved, and completed by somebody else. */
class InspectedInPartsTest {
  private static final RuleSet RULES = ShippedRules.standard().rules();
  private static final Kind COAT = new Kind(ElementKind.COAT, Use.STRUCTURAL);
  private static final LocalDate BEGUN = ShippedGear.AS_OF.minusDays(6);
  private static final LocalDate WENT_ON = ShippedGear.AS_OF.minusDays(3);
  private static final int SEEN = 12;

  /** Some of what an advanced inspection looks at, in its order. */
  private static Inspection part(LocalDate day, EntityKind by, int from, int to) {
    Inspection whole =
        ShippedGear.inspection(RULES, InspectionKind.ADVANCED, COAT, MarkedDate.of(day)).build();
    InspectionBuilder part =
        Inspection.builder(whole.kind(), Occasion.PERIODIC, whole.on(), ShippedGear.trained(by))
            .gearClean(whole.gearClean())
            .atHand(whole.atHand());
    for (CriterionOutcome each : whole.outcomes()) {
      int place = criteria().indexOf(each.criterion());
      if (place >= from && place < to) {
        part.outcome(each.criterion(), each.outcome());
      }
    }
    return part.build();
  }

  private static List<RowKey> criteria() {
    return RULES
        .tables()
        .criteria()
        .required(InspectionKind.ADVANCED, COAT.element(), COAT.use())
        .stream()
        .map(CriterionRow::key)
        .toList();
  }

  private static ShippedCase begun() {
    return ShippedCase.fit(RULES, COAT)
        .with(new LookEvent.Inspected(part(BEGUN, EntityKind.ORGANIZATION, 0, SEEN), 0));
  }

  private static ShippedCase completed(ShippedCase begun) {
    return begun.with(
        new LookEvent.Inspected(
            part(
                WENT_ON, EntityKind.VERIFIED_INDEPENDENT_SERVICE_PROVIDER, SEEN, criteria().size()),
            0,
            Optional.of(Moment.on(MarkedDate.of(BEGUN)))));
  }

  private static InspectionOnRecord last(Verdict verdict) {
    return verdict.inspections().stream()
        .filter(each -> each.on().equals(MarkedDate.of(BEGUN)))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void whatIsLeftIsListedInOrderWithWhatToBring() {
    Verdict verdict = begun().verdict();
    assertThat(verdict.service()).isEqualTo(Service.OUT);
    assertThat(last(verdict).left())
        .containsExactlyElementsOf(criteria().subList(SEEN, criteria().size()));
    assertThat(last(verdict).toBring())
        .contains(Equipment.GOOD_LIGHT, Equipment.FOCUSED_FLASHLIGHT);
    assertThat(verdict.checksNotDone()).containsExactlyInAnyOrderElementsOf(last(verdict).left());
  }

  @Test
  void aProviderCompletesWhatTheDepartmentBegan() {
    ShippedCase completed = completed(begun());
    assertThat(completed.verdict().service()).isEqualTo(Service.IN);
    assertThat(last(completed.verdict()).counts()).isTrue();
    assertThat(completed.verdict().due())
        .filteredOn(due -> due.task().value().equals("advanced-inspection"))
        .singleElement()
        .satisfies(due -> assertThat(due.by()).contains(BEGUN.plusYears(1)));
  }

  @Test
  void anotherWholeOneMakesGoodWhatWasBegun() {
    Inspection whole = part(WENT_ON, EntityKind.ORGANIZATION, 0, criteria().size());
    assertThat(begun().with(new LookEvent.Inspected(whole, 0)).verdict().service())
        .isEqualTo(Service.IN);
    Inspection wearers =
        ShippedGear.inspection(RULES, InspectionKind.ROUTINE, COAT, MarkedDate.of(WENT_ON)).build();
    assertThat(begun().with(new LookEvent.Inspected(wearers, 0)).verdict().service())
        .isEqualTo(Service.OUT);
  }

  @Test
  void whatItMetInBetweenIsLookedAtAfterIt() {
    ShippedCase used = begun().with(new UseEvent.Used(Moment.on(MarkedDate.of(BEGUN.plusDays(1)))));
    assertThat(completed(used).inspectedBy(List.of()).verdict().service()).isEqualTo(Service.OUT);
  }

  @Test
  void theRecordKeepsWhichOneItGoesOnWith() {
    ShippedCase completed = completed(begun());
    String json = AssessmentJson.write(completed.assessment());
    assertThat(json).contains("\"completes\":\"" + BEGUN + "\"");
    Verdict again =
        GearRules.of(RULES)
            .assess(AssessmentJson.read("record.json", json).orElseThrow(), ShippedGear.AS_OF);
    assertThat(again).isEqualTo(completed.verdict());
  }
}
