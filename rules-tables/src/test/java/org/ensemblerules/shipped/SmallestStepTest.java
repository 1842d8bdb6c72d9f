package org.ensemblerules.shipped;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.ensemblerules.care.Exposure;
import org.ensemblerules.defect.DefectKind;
import org.ensemblerules.defect.Extent;
import org.ensemblerules.defect.Finding;
import org.ensemblerules.defect.FindingId;
import org.ensemblerules.defect.Grade;
import org.ensemblerules.effect.CleaningKind;
import org.ensemblerules.effect.Doer;
import org.ensemblerules.effect.Task;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.LayerKind;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.gear.Part;
import org.ensemblerules.gear.Site;
import org.ensemblerules.gear.Use;
import org.ensemblerules.history.Event;
import org.ensemblerules.history.ExposureEvent;
import org.ensemblerules.history.LookEvent;
import org.ensemblerules.history.Moment;
import org.ensemblerules.history.UseEvent;
import org.ensemblerules.history.WorkEvent;
import org.ensemblerules.inspection.CriterionRow;
import org.ensemblerules.inspection.Inspection;
import org.ensemblerules.inspection.InspectionBuilder;
import org.ensemblerules.inspection.InspectionKind;
import org.ensemblerules.inspection.Occasion;
import org.ensemblerules.inspection.Outcome;
import org.ensemblerules.ruleset.RuleSet;
import org.ensemblerules.source.OriginId;
import org.ensemblerules.source.RowKey;
import org.ensemblerules.testkit.ShippedCase;
import org.ensemblerules.testkit.ShippedGear;
import org.ensemblerules.testkit.ShippedGear.Kind;
import org.ensemblerules.verdict.Service;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** After a fire, an issue or a small finding, no more is asked for than the smallest true step. */
class SmallestStepTest {
  private static final RuleSet RULES = ShippedEditions.rules(ShippedEditions.EDITION_2020);
  private static final Kind COAT = new Kind(ElementKind.COAT, Use.STRUCTURAL);
  private static final FindingId ID = new FindingId("F1");

  static List<OriginId> editions() {
    return ShippedEditions.WITH_INSPECTION;
  }

  private static MarkedDate before(int days) {
    return MarkedDate.of(ShippedGear.AS_OF.minusDays(days));
  }

  private static Moment when(int daysBefore) {
    return Moment.on(before(daysBefore));
  }

  /** An inspection on record that counts, at which something was found at some criteria. */
  private static LookEvent.Inspected inspected(
      InspectionKind kind, Occasion occasion, int daysBefore, String... found) {
    Inspection clear = ShippedGear.inspection(RULES, kind, COAT, before(daysBefore)).build();
    InspectionBuilder made =
        Inspection.builder(kind, occasion, clear.on(), clear.by())
            .gearClean(clear.gearClean())
            .atHand(clear.atHand());
    Set<RowKey> keys =
        Set.of(found).stream()
            .map(family -> new RowKey(family + "/COAT/STRUCTURAL"))
            .collect(Collectors.toSet());
    clear
        .outcomes()
        .forEach(
            each ->
                made.outcome(
                    each.criterion(),
                    keys.contains(each.criterion()) ? Outcome.FOUND : Outcome.CLEAR));
    return new LookEvent.Inspected(made.build(), 0);
  }

  private static LookEvent.Found seen(Site site, DefectKind defect, Extent extent, int daysBefore) {
    return new LookEvent.Found(new Finding(ID, site, "", defect, extent, before(daysBefore)));
  }

  private static WorkEvent.Cleaned washed(int daysBefore) {
    Doer by = ShippedGear.permitted(RULES, Task.ADVANCED_CLEANING);
    return WorkEvent.Cleaned.whole(when(daysBefore), CleaningKind.ADVANCED, by, Set.of(ID));
  }

  /** A coat back from a fire; what its wearer's look reported is handed over with it. */
  private static ShippedCase fire(Event... more) {
    List<Event> events = new ArrayList<>(ShippedGear.events(RULES, COAT));
    events.add(new UseEvent.Used(when(20)));
    events.add(new ExposureEvent.Exposed(when(20), Exposure.PRODUCTS_OF_COMBUSTION));
    events.addAll(List.of(more));
    return ShippedCase.fit(RULES, COAT).withEvents(events).inspectedBy(List.of());
  }

  private static List<String> asked(ShippedCase given) {
    return given.verdict().actions().stream().map(action -> action.effect().text()).toList();
  }

  private static ShippedCase lookedOver(ShippedCase given) {
    return given.inspectedBy(
        List.of(ShippedGear.inspection(RULES, InspectionKind.ROUTINE, COAT, before(0)).build()));
  }

  @Test
  void reportedSootAddsNothingToAFireAndTheWashAndTheLookEndIt() {
    LookEvent.Inspected look =
        inspected(InspectionKind.ROUTINE, Occasion.AFTER_USE, 20, "garment-routine-soil");
    LookEvent.Found soot =
        seen(
            Site.of(Part.WHOLE_ELEMENT),
            DefectKind.COMBUSTION_PRODUCTS,
            new Extent.NotMeasured(),
            20);
    LookEvent.Inspected clear = inspected(InspectionKind.ROUTINE, Occasion.AFTER_USE, 20);
    assertThat(asked(lookedOver(fire(look, soot))))
        .isEqualTo(asked(lookedOver(fire(clear))))
        .containsExactly("EVALUATE by ROUTINE_INSPECTION on ELEMENT", "CLEAN ADVANCED on ELEMENT");
    // Washed, and not looked at since: only the wearer's look is left.
    assertThat(asked(lookedOver(fire(look, soot, washed(10))))).isEmpty();
    ShippedCase unseen =
        fire(look, soot, washed(10))
            .inspectedBy(
                List.of(
                    ShippedGear.inspection(RULES, InspectionKind.ROUTINE, COAT, before(15))
                        .build()));
    assertThat(asked(unseen)).containsExactly("EVALUATE by ROUTINE_INSPECTION on ELEMENT");
    assertThat(lookedOver(fire(look, soot, washed(10))).verdict().service()).isEqualTo(Service.IN);
    assertThat(lookedOver(fire(clear, washed(10))).verdict().service()).isEqualTo(Service.IN);
  }

  @Test
  void aLookThatFindsSoilAgainDoesNotEndIt() {
    LookEvent.Inspected look =
        inspected(InspectionKind.ROUTINE, Occasion.AFTER_USE, 20, "garment-routine-soil");
    LookEvent.Found soil =
        seen(Site.of(Part.WHOLE_ELEMENT), DefectKind.SOILING, new Extent.NotMeasured(), 20);
    ShippedCase again =
        fire(
            look,
            soil,
            washed(10),
            inspected(InspectionKind.ROUTINE, Occasion.SUSPICION, 5, "garment-routine-soil"));
    assertThat(again.verdict().service()).isEqualTo(Service.OUT);
  }

  @ParameterizedTest
  @CsvSource({
    "garment-routine-contamination, WHOLE_ELEMENT, , BODY_FLUIDS, ",
    "garment-routine-shell-damage, FABRIC, OUTER_SHELL, TEAR, SLIGHT",
    "garment-routine-event, WHOLE_ELEMENT, , EXTREME_HEAT_EXPOSURE, ",
    "garment-routine-seams, SEAM_MINOR, OUTER_SHELL, LOOSE_SEAM, "
  })
  void everythingElseThatARoutineLookFoundGoesOn(
      String criterion, Part part, LayerKind layer, DefectKind defect, Grade grade) {
    Site site = layer == null ? Site.of(part) : Site.of(part, layer);
    Extent extent = grade == null ? new Extent.NotMeasured() : new Extent.Graded(grade);
    ShippedCase given =
        fire(
            inspected(InspectionKind.ROUTINE, Occasion.AFTER_USE, 20, criterion),
            seen(site, defect, extent, 20));
    assertThat(asked(lookedOver(given))).contains("EVALUATE by ADVANCED_INSPECTION on ELEMENT");
  }

  /** An imported record: used and issued for years, and no look of its wearer is on it. */
  @Test
  void anAdvancedInspectionDischargesTheWearersLook() {
    List<Event> events = new ArrayList<>(ShippedGear.events(RULES, COAT));
    events.add(new UseEvent.Used(Moment.on(MarkedDate.of(LocalDate.of(2021, 8, 1)))));
    ShippedCase given = ShippedCase.fit(RULES, COAT).withEvents(events);
    assertThat(given.inspectedBy(List.of()).verdict().due())
        .filteredOn(due -> due.task().value().equals("routine-inspection"))
        .isEmpty();
    assertThat(given.verdict().service()).isEqualTo(Service.IN);
    List<Event> without =
        events.stream()
            .filter(
                event ->
                    !(event instanceof LookEvent.Inspected done)
                        || done.inspection().kind() != InspectionKind.ADVANCED)
            .toList();
    assertThat(given.withEvents(without).inspectedBy(List.of()).verdict().due())
        .filteredOn(due -> due.task().value().equals("routine-inspection"))
        .hasSize(2);
  }

  @Test
  void anInspectionDoesNotDischargeWhatItDoesNotCover() {
    List<Event> events = new ArrayList<>(ShippedGear.events(RULES, COAT));
    events.add(new UseEvent.Used(when(20)));
    events.add(inspected(InspectionKind.COMPLETE_LINER, Occasion.PERIODIC, 10));
    ShippedCase given = ShippedCase.fit(RULES, COAT).withEvents(events).inspectedBy(List.of());
    assertThat(given.verdict().due())
        .anyMatch(due -> due.task().value().equals("routine-inspection"));
  }

  /** What is said to cover a criterion looks for all that it looks for, between them. */
  @ParameterizedTest
  @MethodSource("editions")
  void whatCoversACriterionLooksForAllOfIt(OriginId edition) {
    List<CriterionRow> rows = ShippedEditions.rules(edition).tables().criteria().rows();
    int routine = 0;
    for (CriterionRow row : rows) {
      if (row.kinds().contains(InspectionKind.ROUTINE)) {
        routine++;
        List<CriterionRow> fuller =
            rows.stream().filter(each -> row.coveredBy().contains(each.key())).toList();
        Set<DefectKind> looked = EnumSet.noneOf(DefectKind.class);
        fuller.forEach(each -> looked.addAll(each.lookFor()));
        assertThat(looked).as("%s", row.key()).containsAll(row.lookFor());
        Set<Part> parts = EnumSet.noneOf(Part.class);
        fuller.forEach(each -> each.sites().forEach(site -> parts.add(site.part())));
        assertThat(parts)
            .as("%s", row.key())
            .containsAll(row.sites().stream().map(Site::part).toList());
      }
    }
    assertThat(routine).isGreaterThan(100);
  }

  private static ShippedCase afterTheYearlyLook(String criterion, LookEvent.Found found) {
    return ShippedCase.fit(RULES, COAT)
        .with(inspected(InspectionKind.ADVANCED, Occasion.PERIODIC, 20, criterion))
        .with(found);
  }

  private static final String OPENED = "EVALUATE by LINER_INSPECTION on ELEMENT";

  @ParameterizedTest
  @CsvSource({
    "garment-advanced-labels, LABEL, LINER_SYSTEM, EDGES_LIFTING, , false",
    "garment-advanced-labels, LABEL, OUTER_SHELL, ILLEGIBLE, PARTLY, false",
    "garment-advanced-labels, LABEL, LINER_SYSTEM, LOOSE, , true",
    "garment-advanced-soil, WHOLE_ELEMENT, , SOILING, , false",
    "garment-advanced-assembly, WHOLE_ELEMENT, LINER_SYSTEM, MISMATCH_OF_ASSEMBLY, , false",
    "garment-advanced-liner-attachment, LINER_ATTACHMENT, LINER_SYSTEM, CORRODED, SLIGHT, false",
    "garment-advanced-shell-heat, FABRIC, OUTER_SHELL, BURN_HOLE, SLIGHT, false",
    "garment-advanced-thermal-liner, FABRIC, THERMAL_LINER, TEAR, SLIGHT, true",
    "garment-advanced-moisture-barrier, FABRIC, MOISTURE_BARRIER, DISCOLORATION, , true",
    "garment-advanced-seam-tape, SEAM_TAPE, MOISTURE_BARRIER, LIFTING_TAPE, , true",
    "garment-advanced-liner-leakage, FABRIC, MOISTURE_BARRIER, LEAK, , true",
    "garment-advanced-history, WHOLE_ELEMENT, , EXTREME_HEAT_EXPOSURE, , true",
    "garment-advanced-contamination, WHOLE_ELEMENT, , HAZARDOUS_CHEMICALS, , true",
    "garment-advanced-contamination, WHOLE_ELEMENT, , BODY_FLUIDS, , false"
  })
  void theLinerIsOpenedOnlyForWhatSpeaksAgainstIt(
      String criterion,
      Part part,
      LayerKind layer,
      DefectKind defect,
      Grade grade,
      boolean opened) {
    Site site = layer == null ? Site.of(part) : Site.of(part, layer);
    Extent extent = grade == null ? new Extent.NotMeasured() : new Extent.Graded(grade);
    List<String> asked = asked(afterTheYearlyLook(criterion, seen(site, defect, extent, 20)));
    assertThat(asked.contains(OPENED)).as("%s", asked).isEqualTo(opened);
  }

  /** What nobody told of a finding at the liner is taken for the worst. */
  @Test
  void whatNoFindingTellsOpensTheLiner() {
    ShippedCase untold =
        ShippedCase.fit(RULES, COAT)
            .with(
                inspected(
                    InspectionKind.ADVANCED,
                    Occasion.PERIODIC,
                    20,
                    "garment-advanced-moisture-barrier"));
    assertThat(asked(untold)).contains(OPENED);
  }
}
