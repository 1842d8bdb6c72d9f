package org.ensemblerules.assess;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.IntFunction;
import org.ensemblerules.care.Exposure;
import org.ensemblerules.care.WashRecord;
import org.ensemblerules.care.WashedLayers;
import org.ensemblerules.defect.DefectKind;
import org.ensemblerules.defect.Extent;
import org.ensemblerules.defect.Finding;
import org.ensemblerules.defect.FindingId;
import org.ensemblerules.effect.Check;
import org.ensemblerules.effect.CleaningKind;
import org.ensemblerules.effect.RepairClass;
import org.ensemblerules.effect.Task;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.gear.Part;
import org.ensemblerules.gear.Site;
import org.ensemblerules.gear.YesNoUnknown;
import org.ensemblerules.history.CheckResult;
import org.ensemblerules.history.CountedEvidence;
import org.ensemblerules.history.Event;
import org.ensemblerules.history.Evidence;
import org.ensemblerules.history.ExposureEvent;
import org.ensemblerules.history.LookEvent;
import org.ensemblerules.history.Moment;
import org.ensemblerules.history.UseEvent;
import org.ensemblerules.history.WorkEvent;
import org.ensemblerules.inspection.InspectionKind;
import org.ensemblerules.measure.Quantity;
import org.ensemblerules.measure.Unit;
import org.ensemblerules.ruleset.RuleSet;
import org.ensemblerules.testkit.FitGear;
import org.ensemblerules.testkit.FrozenRules;
import org.ensemblerules.testkit.GearCase;
import org.ensemblerules.testkit.People;
import org.ensemblerules.verdict.Assessment;
import org.ensemblerules.verdict.Reason;
import org.ensemblerules.verdict.Verdict;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Twice the record is twice the work and twice the answer: counted in judgments, in events held
 * against findings and in characters, not in time.
 */
class LongRecordsTest {
  private static final RuleSet RULES = FrozenRules.rules();
  private static final int SMALL = 20;
  private static final int MANY = 16;
  private static final FindingId ONE = new FindingId("F1");

  /** Records that grew out of all proportion to their lines. */
  enum Shape {
    /** Some of every kind of event, each finding answered by its own. */
    EVERYTHING(LongRecordsTest::everything),
    /** Incidents that many releases answer, with inspections after them. */
    INCIDENTS(LongRecordsTest::incidents),
    /** Findings of one name, and everything answers all of them. */
    ONE_NAME(LongRecordsTest::oneName),
    /** Washes that keep no limit, each after something that was met. */
    WASHES(LongRecordsTest::washes),
    /** Inspections that do not count, each after a use. */
    NOT_COUNTING(LongRecordsTest::notCounting);

    private final IntFunction<List<Event>> events;

    Shape(IntFunction<List<Event>> events) {
      this.events = events;
    }
  }

  private record Effort(long judged, long held, long characters) {}

  private static Effort effort(Shape shape, int size) {
    List<Event> events = shape.events.apply(size);
    GearCase given =
        new GearCase(
            FitGear.element(ElementKind.COAT).build(), events, List.of(), List.of(), FitGear.AS_OF);
    AtomicLong judged = new AtomicLong();
    AtomicLong held = new AtomicLong();
    Assessment assessment = given.assessment();
    Evidence evidence =
        CountedEvidence.of(
            RULES.evidenceTables(),
            assessment.element(),
            assessment.serviceRecord().history(),
            given.asOf(),
            event -> judged.incrementAndGet(),
            event -> held.incrementAndGet());
    Verdict verdict = Assess.assess(new CaseFile(RULES, assessment, evidence));
    long characters = 0;
    for (Reason reason : verdict.reasons()) {
      characters += reason.seen().length() + String.join("", reason.attempts()).length();
    }
    characters += verdict.openFindings().stream().mapToLong(o -> o.toString().length()).sum();
    characters += verdict.due().stream().mapToLong(due -> due.why().length()).sum();
    assertThat(judged.get()).isLessThanOrEqualTo(evidence.history().events().size());
    return new Effort(judged.get(), held.get(), characters);
  }

  @ParameterizedTest
  @EnumSource
  void sixteenTimesTheRecordIsSixteenTimesTheAnswer(Shape shape) {
    Effort small = effort(shape, SMALL);
    Effort large = effort(shape, SMALL * MANY);
    // What a coat without a record brings with it does not grow; numbers get a digit longer.
    assertThat(large.judged()).isBetween(small.judged(), (small.judged() + 1) * MANY);
    assertThat(large.held()).isBetween(small.held(), (small.held() + 1) * MANY);
    assertThat(large.characters())
        .isBetween(small.characters() * 2, small.characters() * MANY * 11 / 10);
  }

  private static Moment day(int number) {
    LocalDate day = LocalDate.of(2021, 1, 1).plusDays(number % 1200);
    return new Moment(MarkedDate.of(day), 1 + number / 1200);
  }

  private static Event found(FindingId id, DefectKind defect, int number) {
    return new LookEvent.Found(
        new Finding(
            id,
            Site.of(Part.WHOLE_ELEMENT),
            "place " + number,
            defect,
            new Extent.NotMeasured(),
            day(number).date()));
  }

  private static Event inspected(int number, boolean counts) {
    return new LookEvent.Inspected(
        FitGear.inspection(
                InspectionKind.ADVANCED,
                ElementKind.COAT,
                day(number).date(),
                counts ? People.permitted(InspectionKind.ADVANCED.task()) : People.UNTRAINED)
            .build(),
        day(number).orderInDay());
  }

  private static Event checked(Check check, CheckResult result, int number, FindingId... ids) {
    return new LookEvent.Checked(day(number), check, result, People.PROVIDER, Set.of(ids));
  }

  private static Event washed(int number) {
    WashRecord hot =
        WashRecord.builder().waterTemperature(Quantity.of("60", Unit.DEGREE_CELSIUS)).build();
    return new WorkEvent.Cleaned(
        day(number),
        CleaningKind.ADVANCED,
        People.permitted(Task.ADVANCED_CLEANING),
        Set.of(),
        new WashedLayers.Whole(),
        false,
        Optional.of(hot));
  }

  private static List<Event> everything(int size) {
    List<Event> events = new ArrayList<>();
    for (int n = 0; n < size; n++) {
      FindingId id = new FindingId("F" + n);
      events.add(new UseEvent.Issued(day(n), "Member " + n));
      events.add(new UseEvent.Used(day(n)));
      events.add(new UseEvent.Returned(day(n)));
      events.add(new ExposureEvent.Exposed(day(n), Exposure.BLOOD_OR_BODY_FLUIDS));
      events.add(found(id, DefectKind.BODY_FLUIDS, n));
      events.add(
          WorkEvent.Cleaned.whole(day(n), CleaningKind.ADVANCED, People.DEPARTMENT, Set.of(id)));
      events.add(
          new WorkEvent.Repaired(day(n), RepairClass.ADVANCED, false, People.PROVIDER, Set.of(id)));
      events.add(checked(Check.SEAM_PULL, CheckResult.FAILED, n, id));
      events.add(checked(Check.SEAM_PULL, CheckResult.PASSED, n, id));
      events.add(inspected(n, true));
      events.add(new WorkEvent.Modified(day(n), "a pocket sewn on", YesNoUnknown.NO));
      events.add(new UseEvent.TakenOut(day(n), "stored"));
      events.add(new UseEvent.BackInService(day(n)));
    }
    return events;
  }

  private static List<Event> incidents(int size) {
    List<Event> events = new ArrayList<>();
    for (int n = 0; n < size; n++) {
      FindingId id = new FindingId("F" + n);
      events.add(found(id, DefectKind.INJURY_TO_WEARER, n));
      events.add(
          checked(
              Check.INCIDENT_RELEASE, CheckResult.PASSED, n + 1, id, new FindingId("F" + (n + 1))));
      events.add(inspected(n, true));
    }
    return events;
  }

  private static List<Event> oneName(int size) {
    List<Event> events = new ArrayList<>();
    for (int n = 0; n < size; n++) {
      events.add(found(ONE, DefectKind.BODY_FLUIDS, n));
      events.add(
          new WorkEvent.Repaired(day(n), RepairClass.BASIC, false, People.PROVIDER, Set.of(ONE)));
      events.add(checked(Check.SEAM_PULL, CheckResult.FAILED, n));
      events.add(
          WorkEvent.Cleaned.whole(day(n), CleaningKind.SANITIZING, People.UNTRAINED, Set.of(ONE)));
    }
    return events;
  }

  private static List<Event> washes(int size) {
    List<Event> events = new ArrayList<>();
    for (int n = 0; n < size; n++) {
      events.add(new ExposureEvent.Exposed(day(n), Exposure.PRODUCTS_OF_COMBUSTION));
      events.add(washed(n));
    }
    return events;
  }

  private static List<Event> notCounting(int size) {
    List<Event> events = new ArrayList<>();
    for (int n = 0; n < size; n++) {
      events.add(new UseEvent.Used(day(n)));
      events.add(inspected(n, false));
    }
    return events;
  }
}
