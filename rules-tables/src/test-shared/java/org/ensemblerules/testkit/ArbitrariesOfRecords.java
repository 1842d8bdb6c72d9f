package org.ensemblerules.testkit;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import org.ensemblerules.care.Exposure;
import org.ensemblerules.care.WashRecord;
import org.ensemblerules.care.WashRecordBuilder;
import org.ensemblerules.care.WashedLayers;
import org.ensemblerules.defect.Band;
import org.ensemblerules.defect.DefectRow;
import org.ensemblerules.defect.Extent;
import org.ensemblerules.defect.Finding;
import org.ensemblerules.defect.FindingId;
import org.ensemblerules.defect.GradeScale;
import org.ensemblerules.effect.Check;
import org.ensemblerules.effect.CleaningKind;
import org.ensemblerules.effect.Doer;
import org.ensemblerules.effect.Effect;
import org.ensemblerules.effect.EntityKind;
import org.ensemblerules.effect.RepairClass;
import org.ensemblerules.effect.Scope;
import org.ensemblerules.effect.Task;
import org.ensemblerules.fieldcheck.Applicability;
import org.ensemblerules.gear.AnatomyRow;
import org.ensemblerules.gear.Element;
import org.ensemblerules.gear.ElementBuilder;
import org.ensemblerules.gear.ElementId;
import org.ensemblerules.gear.Label;
import org.ensemblerules.gear.LabelBuilder;
import org.ensemblerules.gear.LayerKind;
import org.ensemblerules.gear.Legibility;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.gear.Part;
import org.ensemblerules.gear.Presence;
import org.ensemblerules.gear.Site;
import org.ensemblerules.gear.YesNoUnknown;
import org.ensemblerules.history.CheckResult;
import org.ensemblerules.history.DecisionEvent;
import org.ensemblerules.history.EndEvent;
import org.ensemblerules.history.Event;
import org.ensemblerules.history.ExposureEvent;
import org.ensemblerules.history.History;
import org.ensemblerules.history.LookEvent;
import org.ensemblerules.history.Moment;
import org.ensemblerules.history.Transfer;
import org.ensemblerules.history.UseEvent;
import org.ensemblerules.history.WorkEvent;
import org.ensemblerules.inspection.CriterionOutcome;
import org.ensemblerules.inspection.Inspection;
import org.ensemblerules.inspection.InspectionBuilder;
import org.ensemblerules.inspection.InspectionKind;
import org.ensemblerules.inspection.Occasion;
import org.ensemblerules.inspection.Outcome;
import org.ensemblerules.inspection.SignOff;
import org.ensemblerules.measure.Quantity;
import org.ensemblerules.measure.Unit;
import org.ensemblerules.ruleset.RuleSet;
import org.ensemblerules.ruleset.Subject;
import org.ensemblerules.source.OriginId;
import org.ensemblerules.verdict.Assessment;
import org.ensemblerules.verdict.AssessmentBuilder;

/**
 * Records of single elements as records systems hold them: an element cared for as the rules ask,
 * to which some things happened and were answered more or less well, with fields left out here and
 * there. All of them are judged for {@link #AS_OF}.
 */
public final class ArbitrariesOfRecords {
  /** The day for which the records are judged. */
  public static final LocalDate AS_OF = ShippedGear.AS_OF;

  private final RuleSet rules;
  private final Random random;
  private final ShippedGear.Kind kind;
  private final double thin;
  private final boolean odd;
  private final boolean isUnseen;
  private final LocalDate since;
  private final List<Event> events = new ArrayList<>();
  private final List<Finding> findings = new ArrayList<>();

  private ArbitrariesOfRecords(RuleSet rules, Random random, double thin, boolean odd) {
    this.rules = rules;
    this.random = random;
    this.kind = one(ShippedGear.kinds(rules));
    this.thin = thin;
    this.odd = odd;
    boolean isNew = odd && random.nextInt(5) == 0;
    this.isUnseen = isNew && random.nextBoolean();
    this.since = isNew ? AS_OF.minusDays(random.nextInt(360)) : ShippedGear.IN_SERVICE;
  }

  /**
   * Returns records of every kind of element.
   *
   * @param rules the rules by which they are cared for
   * @return the records, some full and some thin
   */
  public static Arbitrary<Assessment> records(RuleSet rules) {
    return Arbitraries.randomValue(
        random -> {
          double thin = Math.max(0, random.nextInt(5) - 2) * 0.04;
          var made = new ArbitrariesOfRecords(rules, random, thin, true);
          return made.record(made::happened);
        });
  }

  /**
   * Returns records with one finding each, answered or not, and nothing else that speaks against
   * the element.
   *
   * @param rules the rules by which they are cared for
   * @return the records, with nothing left out
   */
  public static Arbitrary<Assessment> findings(RuleSet rules) {
    return Arbitraries.randomValue(
        random -> {
          var made = new ArbitrariesOfRecords(rules, random, 0, false);
          return made.record(element -> made.found(element, new FindingId("F1"), made.before(200)));
        });
  }

  /**
   * Returns records of elements to which one thing happened each.
   *
   * @param rules the rules by which they are cared for
   * @return the records, with nothing left out
   */
  public static Arbitrary<Assessment> things(RuleSet rules) {
    return Arbitraries.randomValue(
        random -> {
          var made = new ArbitrariesOfRecords(rules, random, 0, false);
          return made.record(made::something);
        });
  }

  private Assessment record(Consumer<Element> things) {
    Element element = element();
    cared(element);
    things.accept(element);
    if (!leftOut() && !(isUnseen && random.nextBoolean())) {
      looked(element, AS_OF);
    }
    AssessmentBuilder record = Assessment.builder(element).history(History.of(events));
    findings.forEach(record::finding);
    return record.build();
  }

  private <T> T one(List<T> from) {
    return from.get(random.nextInt(from.size()));
  }

  private <T> T one(T[] from) {
    return from[random.nextInt(from.length)];
  }

  private boolean leftOut() {
    return random.nextDouble() < thin;
  }

  private boolean rarely() {
    return odd && random.nextInt(14 * 14) == 0;
  }

  private boolean seldom() {
    return odd && random.nextInt(14) == 0;
  }

  private MarkedDate date(LocalDate day) {
    if (!seldom()) {
      return MarkedDate.of(day);
    }
    String text = day.toString();
    return MarkedDate.parse(one(List.of(text.substring(0, 7), text.substring(0, 4), "UNKNOWN")));
  }

  private LocalDate before(int days) {
    return AS_OF.minusDays(random.nextInt(days));
  }

  private Moment when(LocalDate day) {
    return new Moment(date(day), seldom() ? 1 + random.nextInt(3) : 0);
  }

  // What it is.

  private Element element() {
    ElementBuilder element =
        Element.builder(new ElementId("1"), kind.element(), kind.use())
            .cbrnOption(leftOut() ? YesNoUnknown.UNKNOWN : one(YesNoUnknown.values()));
    if (!leftOut()) {
      element.inService(date(since));
    }
    for (Optional<LayerKind> layer : labels()) {
      if (!leftOut()) {
        Label label = label();
        layer.ifPresentOrElse(own -> element.layer(own, label), () -> element.label(label));
      }
    }
    Element described = element.build();
    for (AnatomyRow part : rules.tables().anatomy().of(kind.element(), kind.use())) {
      boolean labeled =
          part.site().layer().filter(described.layerLabels()::containsKey).isPresent();
      if (part.presence() == Presence.OPTIONAL && !labeled && seldom()) {
        element.notFitted(part.site());
      }
    }
    return element.build();
  }

  private List<Optional<LayerKind>> labels() {
    List<Optional<LayerKind>> labels =
        new ArrayList<>(rules.tables().anatomy().labels(ShippedGear.element(rules, kind).build()));
    if (labels.contains(Optional.of(LayerKind.OUTER_SHELL))) {
      if (seldom()) {
        labels.add(Optional.of(LayerKind.WINTER_LINER));
      }
      if (seldom()) {
        labels.remove(Optional.of(LayerKind.LINER_SYSTEM));
        labels.add(Optional.of(LayerKind.MOISTURE_BARRIER));
        labels.add(Optional.of(LayerKind.THERMAL_LINER));
      }
    }
    return labels;
  }

  private Label label() {
    LabelBuilder label =
        Label.builder()
            .manufactured(
                leftOut()
                    ? MarkedDate.unknown()
                    : date(seldom() ? LocalDate.of(2012, 5, 1) : ShippedGear.MADE))
            .certificationMark(leftOut() ? YesNoUnknown.UNKNOWN : YesNoUnknown.YES)
            .legibility(leftOut() ? one(Legibility.values()) : Legibility.READABLE);
    if (!leftOut()) {
      label.manufacturer(rarely() ? "Another maker" : ShippedGear.MAKER);
    }
    if (!leftOut()) {
      label.model("Model A");
    }
    if (!leftOut()) {
      label.size("M");
    }
    if (!leftOut()) {
      label.identification(seldom() ? "Lot 2" : "Lot 1");
    }
    if (!leftOut()) {
      label.claimedEdition("NFPA 1971, 2018");
    }
    return label.build();
  }

  // How it was cared for.

  private void cared(Element element) {
    if (seldom()) {
      events.add(new UseEvent.Stocked(when(ShippedGear.MADE.plusDays(20))));
    }
    if (!leftOut()) {
      events.add(new UseEvent.Issued(when(since), "Member 7"));
    }
    if (isUnseen) {
      return;
    }
    for (int months : new int[] {14, 9, 4}) {
      if (!leftOut()) {
        cleaned(AS_OF.minusMonths(months), CleaningKind.ADVANCED, Set.of());
      }
    }
    for (InspectionKind inspection : ShippedGear.inspections(rules, kind)) {
      if (inspection != InspectionKind.ROUTINE && !leftOut()) {
        inspected(inspection(element, inspection, date(AS_OF.minusMonths(4).plusDays(2))), element);
      }
    }
  }

  /** At once or in two parts, of which the second goes on with the first a day later or so. */
  private void inspected(Inspection whole, Element element) {
    if (random.nextInt(4) > 0) {
      events.add(new LookEvent.Inspected(whole, 0));
      return;
    }
    LookEvent.Inspected begun =
        new LookEvent.Inspected(part(whole, whole, true), random.nextInt(3));
    Inspection again =
        inspection(
            element,
            whole.kind(),
            whole
                .on()
                .earliest()
                .map(day -> date(day.plusDays(random.nextInt(3))))
                .orElse(whole.on()));
    events.add(begun);
    events.add(
        new LookEvent.Inspected(
            part(whole, again, false),
            random.nextInt(4),
            Optional.of(begun.when()).filter(when -> !leftOut())));
  }

  /** Every other outcome of one, as if somebody had made it as the other was made. */
  private Inspection part(Inspection of, Inspection made, boolean first) {
    InspectionBuilder part =
        Inspection.builder(of.kind(), made.occasion(), made.on(), made.by())
            .gearClean(made.gearClean())
            .atHand(made.atHand());
    int half = of.outcomes().size() / 2;
    (first ? of.outcomes().subList(0, half) : of.outcomes().subList(half, of.outcomes().size()))
        .forEach(each -> part.outcome(each.criterion(), each.outcome()));
    return part.build();
  }

  private void cleaned(LocalDate day, CleaningKind how, Set<FindingId> answers) {
    WashRecordBuilder wash = WashRecord.builder();
    if (seldom()) {
      wash.waterTemperature(Quantity.of(one(List.of("38", "40", "60", "75")), Unit.DEGREE_CELSIUS));
    }
    WashRecord record = wash.build();
    events.add(
        new WorkEvent.Cleaned(
            when(day),
            how,
            doer(Task.of(how)),
            answers,
            leftOut()
                ? new WashedLayers.NotStated()
                : seldom()
                    ? new WashedLayers.Only(Set.of(one(LayerKind.values())))
                    : new WashedLayers.Whole(),
            !leftOut(),
            Optional.of(record).filter(each -> !each.equals(WashRecord.builder().build()))));
  }

  private Doer doer(Task task) {
    Doer permitted = ShippedGear.permitted(rules, task);
    return leftOut()
        ? new Doer(permitted.name(), permitted.kind(), List.of())
        : seldom() ? ShippedGear.trained(EntityKind.MANUFACTURER) : permitted;
  }

  private Inspection inspection(Element element, InspectionKind inspection, MarkedDate on) {
    Inspection fit = ShippedGear.inspection(rules, inspection, kind, on).build();
    InspectionBuilder made =
        Inspection.builder(
                inspection,
                seldom() ? one(Occasion.values()) : fit.occasion(),
                on,
                leftOut()
                    ? Optional.<Doer>empty()
                    : seldom() ? Optional.of(doer(inspection.task())) : fit.by())
            .gearClean(leftOut() ? one(YesNoUnknown.values()) : fit.gearClean())
            .atHand(leftOut() ? Set.of() : fit.atHand());
    Set<String> labeled =
        element.layerLabels().keySet().stream().map(Enum::name).collect(Collectors.toSet());
    boolean finds = seldom();
    double items = signOff(made);
    for (CriterionOutcome each : fit.outcomes()) {
      boolean lacks =
          rules.tables().criteria().rows().stream()
              .filter(row -> row.key().equals(each.criterion()))
              .allMatch(row -> row.sites().stream().allMatch(element::isNotFitted));
      if (lacks && !rarely()) {
        continue;
      }
      if (random.nextDouble() * 20 < thin || random.nextDouble() > items) {
        continue;
      }
      boolean there =
          rules.tables().criteria().rows().stream()
              .filter(row -> row.key().equals(each.criterion()))
              .flatMap(row -> row.sites().stream())
              .flatMap(site -> site.layer().stream())
              .anyMatch(layer -> labeled.contains(layer.name()));
      Outcome outcome = (there || rarely()) ? Outcome.CLEAR : each.outcome();
      made.outcome(each.criterion(), finds && random.nextInt(20) == 0 ? Outcome.FOUND : outcome);
    }
    return made.build();
  }

  /** Signs some inspections off; how much of them is itemized all the same, from 0 to 1. */
  private double signOff(InspectionBuilder made) {
    if (random.nextInt(3) != 0) {
      return 1;
    }
    Set<FindingId> clearBut = new HashSet<>();
    while (seldom()) {
      clearBut.add(new FindingId("F" + (1 + random.nextInt(3))));
    }
    OriginId inForce = rules.editions().get(Subject.INSPECTION).id();
    made.signOff(
        new SignOff(
            seldom()
                ? one(
                    List.of("NFPA_1851_2014", "NFPA_1850_2026", "NFPA_1971_2018").stream()
                        .map(OriginId::new)
                        .toList())
                : inForce,
            clearBut));
    return one(List.of(0.0, 0.0, 0.0, 0.1, 0.5, 1.0));
  }

  // What happened to it.

  private void happened(Element element) {
    for (int things = random.nextInt(4); things > 0; things--) {
      something(element);
    }
  }

  private void something(Element element) {
    LocalDate day = before(200);
    switch (random.nextInt(10)) {
      case 9 -> busy(element, day);
      case 0 -> {
        events.add(new UseEvent.Used(when(day)));
        looked(element, day.plusDays(random.nextInt(2)));
      }
      case 1 -> met(element, day);
      case 2, 3, 4 -> found(element, new FindingId("F" + (1 + random.nextInt(3))), day);
      case 5 -> checked(day);
      case 6 -> away(element, day);
      case 7 ->
          events.add(
              new EndEvent.LayerRetired(
                  when(day),
                  one(LayerKind.values()),
                  Optional.of(one(List.of("Lot 0", "Lot 1"))).filter(id -> !seldom()),
                  "worn"));
      default -> seldomer(day);
    }
  }

  /** Several things of one day, some of them with their order. */
  private void busy(Element element, LocalDate day) {
    for (int things = 2 + random.nextInt(4); things > 0; things--) {
      Moment when = new Moment(date(day), random.nextInt(3) == 0 ? 0 : 1 + random.nextInt(6));
      FindingId id = new FindingId("F" + (1 + random.nextInt(3)));
      switch (random.nextInt(7)) {
        case 0 -> events.add(new UseEvent.Used(when));
        case 1 -> events.add(new ExposureEvent.Exposed(when, Exposure.PRODUCTS_OF_COMBUSTION));
        case 2 ->
            events.add(
                ShippedWork.done(
                    rules,
                    when,
                    new Effect.Clean(CleaningKind.ADVANCED, Scope.ELEMENT),
                    doer(Task.of(CleaningKind.ADVANCED)),
                    random.nextBoolean() ? Set.of(id) : Set.of()));
        case 3 ->
            events.add(
                ShippedWork.done(
                    rules,
                    when,
                    new Effect.Repair(RepairClass.ADVANCED, Scope.PART),
                    doer(Task.ADVANCED_REPAIR),
                    Set.of(id)));
        case 4 -> events.add(new UseEvent.Moved(when, one(Transfer.values()), "Station 2"));
        default ->
            events.add(
                new LookEvent.Inspected(
                    on(
                        one(
                            List.of(
                                Occasion.AFTER_USE, Occasion.AFTER_WORK, Occasion.AFTER_RETURN)),
                        inspection(element, InspectionKind.ADVANCED, when.date())),
                    when.orderInDay()));
      }
    }
  }

  private static Inspection on(Occasion occasion, Inspection made) {
    InspectionBuilder other =
        Inspection.builder(made.kind(), occasion, made.on(), made.by())
            .gearClean(made.gearClean())
            .atHand(made.atHand());
    made.outcomes().forEach(each -> other.outcome(each.criterion(), each.outcome()));
    made.signOff().ifPresent(other::signOff);
    return other.build();
  }

  private void decided(LocalDate day) {
    FindingId id = new FindingId("D" + (1 + random.nextInt(2)));
    Effect asked =
        one(
            List.of(
                new Effect.Evaluate(Check.EXPERT_EVALUATION, Scope.ELEMENT),
                new Effect.Clean(CleaningKind.ADVANCED, Scope.ELEMENT)));
    Doer inspector = doer(InspectionKind.ADVANCED.task());
    events.add(
        new DecisionEvent.InspectorDecided(
            when(day), id, Site.of(Part.WHOLE_ELEMENT), asked, inspector, "looks worn"));
    if (random.nextBoolean()) {
      events.add(
          new DecisionEvent.DecisionWithdrawn(
              when(day.plusDays(random.nextInt(3))), id, inspector, "looked again"));
    }
  }

  private void seldomer(LocalDate day) {
    switch (random.nextInt(6)) {
      case 5 -> decided(day);
      case 0 ->
          events.add(new WorkEvent.Modified(when(day), "a strap", one(YesNoUnknown.values())));
      case 1 -> events.add(new UseEvent.Returned(when(day)));
      case 2 -> {
        events.add(new UseEvent.TakenOut(when(day), "for a look"));
        events.add(new UseEvent.BackInService(when(day.plusDays(random.nextInt(3)))));
      }
      case 3 -> events.add(new UseEvent.Issued(when(day), "Member 7"));
      default -> events.add(new EndEvent.Retired(when(day.plusDays(200)), "worn"));
    }
  }

  private void looked(Element element, LocalDate day) {
    Inspection look = inspection(element, InspectionKind.ROUTINE, date(day));
    events.add(new LookEvent.Inspected(look, 0));
  }

  private void met(Element element, LocalDate day) {
    Exposure what = one(Exposure.values());
    events.add(new ExposureEvent.Exposed(Moment.on(date(day)), what));
    if (what == Exposure.UNKNOWN && random.nextBoolean()) {
      Exposure as = one(Exposure.values());
      if (as != Exposure.UNKNOWN) {
        events.add(
            new ExposureEvent.ExposureIdentified(
                when(day.plusDays(1)),
                Moment.on(MarkedDate.of(day)),
                as,
                doer(rules.tables().checks().row(Check.EXPERT_EVALUATION).task()),
                "a test"));
      }
    }
    LocalDate then = day.plusDays(1 + random.nextInt(2));
    if (random.nextInt(4) > 0) {
      passed(then, Check.EXPERT_EVALUATION, Set.of());
      for (CleaningKind how : EnumSet.complementOf(EnumSet.of(CleaningKind.EXPOSURE_REDUCTION))) {
        cleaned(then.plusDays(1), how, Set.of());
      }
      passed(then.plusDays(2), Check.CONTAMINATION_CLEARANCE, Set.of());
    }
    looked(element, then.plusDays(3));
  }

  private void found(Element element, FindingId id, LocalDate day) {
    DefectRow row = row();
    Extent extent =
        random.nextInt(8) == 0
            ? new Extent.NotMeasured()
            : ShippedExtents.of(rules.tables().defects()).stream()
                .filter(each -> row.band().holds(each))
                .findFirst()
                .orElseThrow();
    Finding finding = new Finding(id, row.site(), "", row.defect(), extent, date(day));
    if (random.nextInt(4) > 0) {
      events.add(new LookEvent.Found(finding));
    } else {
      findings.add(finding);
    }
    if (random.nextInt(4) > 0) {
      answered(
          element, row, day.plusDays(1), seldom() ? Set.of(id, new FindingId("F9")) : Set.of(id));
    }
    looked(element, day.plusDays(5));
  }

  /** Any row of the element, and twice as often one of a place told by whether it held. */
  private DefectRow row() {
    List<DefectRow> rows =
        rules.tables().defects().rows().stream()
            .filter(row -> row.element() == kind.element() && row.use() == kind.use())
            .toList();
    List<DefectRow> tried =
        rows.stream()
            .filter(
                row ->
                    row.band() instanceof Band.Grades graded
                        && graded.grades().stream()
                            .anyMatch(grade -> grade.scale() == GradeScale.STRENGTH))
            .toList();
    return one(tried.isEmpty() || random.nextInt(3) == 0 ? rows : tried);
  }

  /** As its row asks, or by somebody's word alone, or by both. */
  private void answered(Element element, DefectRow row, LocalDate then, Set<FindingId> answers) {
    Optional<Check> word =
        Optional.of(one(List.of(Check.EXPERT_EVALUATION, Check.INSPECTOR_EVALUATION)))
            .filter(each -> random.nextBoolean());
    if (word.isEmpty() || random.nextBoolean()) {
      events.add(ShippedWork.done(rules, when(then), row.effect(), doer(taskOf(row)), answers));
    }
    LocalDate followed = then.plusDays(random.nextInt(2));
    row.afterward().forEach(check -> passed(followed, check, answers));
    if (row.afterward().contains(Check.ADVANCED_INSPECTION)) {
      lookedAtWork(element, followed);
    }
    word.ifPresent(check -> passed(then.plusDays(2), check, answers));
  }

  private Task taskOf(DefectRow row) {
    return row.effect() instanceof Effect.Clean clean
        ? Task.of(clean.kind())
        : row.effect() instanceof Effect.Evaluate evaluate
            ? rules.tables().checks().row(evaluate.check()).task()
            : Task.ADVANCED_REPAIR;
  }

  private void passed(LocalDate day, Check check, Set<FindingId> answers) {
    LookEvent.Checked made =
        ShippedWork.passed(
            rules, when(day), check, doer(rules.tables().checks().row(check).task()), answers);
    events.add(random.nextBoolean() ? made : ShippedWork.afterWork(made));
  }

  private void lookedAtWork(Element element, LocalDate day) {
    Inspection after =
        on(Occasion.AFTER_WORK, inspection(element, InspectionKind.ADVANCED, date(day)));
    events.add(new LookEvent.Inspected(after, seldom() ? 1 + random.nextInt(3) : 0));
  }

  private void checked(LocalDate day) {
    List<Check> checks =
        Arrays.stream(Check.values())
            .filter(
                each ->
                    rules.validity().applicability(each, ShippedGear.element(rules, kind).build())
                        instanceof Applicability.Applies)
            .toList();
    Check check = one(checks);
    Set<FindingId> answers =
        Set.copyOf(Arrays.asList(new FindingId("F1"), new FindingId("F2"))).stream()
            .filter(id -> random.nextBoolean())
            .collect(Collectors.toSet());
    LookEvent.Checked made =
        new LookEvent.Checked(
            when(day),
            check,
            one(List.of(CheckResult.FAILED, CheckResult.VOID, CheckResult.PASSED)),
            doer(rules.tables().checks().row(check).task()),
            answers);
    events.add(made);
    if (random.nextBoolean()) {
      passed(
          day.plusDays(random.nextInt(2)),
          Check.EXPERT_EVALUATION,
          Set.of(new FindingId("F1"), made.failure()));
    }
  }

  private void away(Element element, LocalDate day) {
    events.add(new UseEvent.Moved(when(day), Transfer.LENT, "Station 2"));
    if (random.nextInt(4) > 0) {
      events.add(new UseEvent.Moved(when(day.plusDays(5)), Transfer.BACK_FROM_LOAN, "Station 1"));
      events.add(
          new LookEvent.Inspected(
              inspection(element, InspectionKind.ADVANCED, date(day.plusDays(6))), 0));
    }
  }
}
