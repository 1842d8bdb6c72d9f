package org.ensemblerules;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import org.ensemblerules.assess.Assess;
import org.ensemblerules.assess.StillMatters;
import org.ensemblerules.care.Exposure;
import org.ensemblerules.catalog.Catalog;
import org.ensemblerules.defect.DefectKind;
import org.ensemblerules.defect.Extent;
import org.ensemblerules.defect.Finding;
import org.ensemblerules.defect.FindingId;
import org.ensemblerules.effect.Task;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.gear.Site;
import org.ensemblerules.history.LookEvent;
import org.ensemblerules.inspection.InspectionKind;
import org.ensemblerules.inspection.IntervalRow;
import org.ensemblerules.record.RecordFile;
import org.ensemblerules.ruleset.Overlay;
import org.ensemblerules.ruleset.RuleSet;
import org.ensemblerules.schedule.Schedule;
import org.ensemblerules.schedule.ServiceRecord;
import org.ensemblerules.source.Checked;
import org.ensemblerules.testkit.FitGear;
import org.ensemblerules.testkit.FrozenRules;
import org.ensemblerules.testkit.GearCase;
import org.ensemblerules.testkit.Layering;
import org.ensemblerules.testkit.People;
import org.ensemblerules.verdict.Assessment;
import org.ensemblerules.verdict.Recompute;
import org.ensemblerules.verdict.Verdict;
import org.junit.jupiter.api.Test;

/** What is asked at the door is answered by the package whose question it is. */
class GearRulesTest {
  private static final RuleSet RULES = FrozenRules.rules();
  private static final GearRules DOOR = GearRules.of(RULES);
  private static final GearCase FIT = FitGear.fit(ElementKind.COAT);
  // Two years later, so that something is due and was missed.
  private static final LocalDate DAY = FIT.asOf().plusYears(2);
  private static final Assessment COAT = FIT.assessment();
  private static final Finding TORN =
      new Finding(
          new FindingId("F1"),
          Site.parse("FABRIC@OUTER_SHELL"),
          "",
          DefectKind.TEAR,
          new Extent.NotMeasured(),
          MarkedDate.of(DAY));

  @Test
  void whatServesAndWhy() {
    Verdict verdict = Assess.assess(RULES, COAT, DAY);
    assertThat(verdict.reasons()).isNotEmpty();
    assertThat(DOOR.assess(COAT, DAY)).isEqualTo(verdict);
    assertThat(DOOR.service(COAT, DAY)).isEqualTo(verdict.service());
    assertThat(DOOR.trace(COAT, DAY)).isNotEmpty().isEqualTo(Assess.trace(RULES, COAT, DAY));
    assertThat(DOOR.recompute(COAT, verdict)).isEqualTo(new Recompute.Same(verdict));
    assertThat(DOOR.stillMatters(COAT, DAY)).isEqualTo(StillMatters.of(RULES, COAT, DAY));
    Assessment torn =
        Assessment.builder(COAT.element())
            .history(COAT.history())
            .event(new LookEvent.Found(TORN))
            .build();
    assertThat(DOOR.openFindings(torn, DAY))
        .isNotEmpty()
        .isEqualTo(RULES.evidence(torn.element(), torn.history(), DAY).findings().ofHistory());
    assertThat(DOOR.evidence(torn.element(), torn.history(), DAY).history())
        .isEqualTo(torn.history());
  }

  @Test
  void whatIsDue() {
    Schedule schedule = RULES.schedule();
    ServiceRecord record = COAT.serviceRecord();
    assertThat(DOOR.schedule()).isSameAs(schedule);
    assertThat(DOOR.due(COAT, DAY)).isNotEmpty().isEqualTo(schedule.due(record, DAY));
    assertThat(DOOR.missed(COAT, DAY)).isNotEmpty().isEqualTo(schedule.missed(record, DAY));
    assertThat(DOOR.exempt(COAT, DAY)).isEqualTo(schedule.exempt(record, DAY));
    assertThat(DOOR.calendar(COAT, DAY, DAY, DAY.plusYears(1)))
        .isNotEmpty()
        .isEqualTo(schedule.calendar(record, DAY, DAY, DAY.plusYears(1)));
  }

  @Test
  void howTheWorkIsDone() {
    Set<Exposure> soot = Set.of(Exposure.PRODUCTS_OF_COMBUSTION);
    assertThat(DOOR.criteria(InspectionKind.ADVANCED, ElementKind.COAT, COAT.element().use()))
        .isEqualTo(FitGear.criteria(InspectionKind.ADVANCED, ElementKind.COAT));
    assertThat(DOOR.care(COAT.element(), soot))
        .isEqualTo(RULES.careRoutes().route(COAT.element(), soot));
    List<Finding> torn = List.of(TORN);
    assertThat(DOOR.repair(COAT.element(), torn))
        .isEqualTo(RULES.repairOrders().plan(COAT.element(), torn));
    assertThat(DOOR.repair(COAT.element(), torn, People.DEPARTMENT, DAY))
        .isEqualTo(RULES.repairOrders().plan(COAT.element(), torn, People.DEPARTMENT, DAY));
    assertThat(DOOR.closeLiner(COAT.element()))
        .isEqualTo(RULES.repairOrders().closeLiner(COAT.element()));
    assertThat(DOOR.closeLiner(COAT.element(), People.WEARER, DAY))
        .isEqualTo(RULES.repairOrders().closeLiner(COAT.element(), People.WEARER, DAY));
    assertThat(DOOR.mayPerform(People.DEPARTMENT, Task.ADVANCED_CLEANING, COAT.element(), DAY))
        .isEqualTo(
            RULES.mayPerform(People.DEPARTMENT, Task.ADVANCED_CLEANING, COAT.element(), DAY));
  }

  @Test
  void whatItsPapersSay() {
    RecordFile file = RecordFile.builder(COAT.element(), COAT.history()).build();
    assertThat(DOOR.file(file, DAY))
        .isEqualTo(RULES.tables().records().items().check(file, RULES.evidenceTables(), DAY));
    assertThat(DOOR.retention(file)).isEmpty();
  }

  @Test
  void whichRulesTheseAre() {
    assertThat(DOOR.catalog()).isEqualTo(Catalog.of(RULES));
    assertThat(DOOR.tables()).isSameAs(RULES.tables());
    assertThat(DOOR.editions()).isNotEmpty().isEqualTo(RULES.editions());
    assertThat(DOOR.overlays()).isEmpty();
    List<Overlay> ours = List.of(Layering.of("OURS").policy(everyMonths(6)));
    assertThat(DOOR.with(ours, DAY).orElseThrow().overlays()).isEqualTo(ours);
    assertThat(DOOR.identity()).isEqualTo(RULES.identity());
    assertThat(DOOR.rules()).isSameAs(RULES);
    assertThat(DOOR).hasToString("GearRules[" + RULES.identity() + "]");
  }

  @Test
  void overlaysAreLaidOrRefusedAsOverTheRules() {
    List<Overlay> stricter = List.of(Layering.of("OURS").policy(everyMonths(6)));
    assertThat(DOOR.with(stricter, DAY).orElseThrow().identity())
        .isEqualTo(RULES.with(stricter, DAY).orElseThrow().identity())
        .isNotEqualTo(RULES.identity());
    List<Overlay> looser = List.of(Layering.of("OURS").policy(everyMonths(60)));
    assertThat(DOOR.with(looser, DAY))
        .isInstanceOfSatisfying(
            Checked.Refused.class,
            refused ->
                assertThat(refused.faults())
                    .isEqualTo(((Checked.Refused<?, ?>) RULES.with(looser, DAY)).faults()));
  }

  private static IntervalRow everyMonths(int months) {
    return Layering.of("OURS").interval(ElementKind.COAT, months, months);
  }
}
