package org.ensemblerules.laws;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.PropertyDefaults;
import net.jqwik.api.Provide;
import net.jqwik.api.Tuple;
import net.jqwik.api.constraints.Size;
import org.ensemblerules.care.CareAction;
import org.ensemblerules.care.CareDemand;
import org.ensemblerules.care.CareEntry;
import org.ensemblerules.care.CareLimitRow;
import org.ensemblerules.care.CareManner;
import org.ensemblerules.care.CareRoute;
import org.ensemblerules.care.CareRouteRow;
import org.ensemblerules.care.CareRouteTable;
import org.ensemblerules.care.CareRoutes;
import org.ensemblerules.care.Exposure;
import org.ensemblerules.care.ModelCareLimitRow;
import org.ensemblerules.care.RouteStep;
import org.ensemblerules.care.WashAnswer;
import org.ensemblerules.care.WashBoundRow;
import org.ensemblerules.care.WashMeasure;
import org.ensemblerules.care.WashPractice;
import org.ensemblerules.care.WashRecord;
import org.ensemblerules.effect.EffectKind;
import org.ensemblerules.effect.HandlingDuty;
import org.ensemblerules.effect.RepairClass;
import org.ensemblerules.gates.FewestTries;
import org.ensemblerules.gear.Element;
import org.ensemblerules.gear.ElementId;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.GearModel;
import org.ensemblerules.gear.Label;
import org.ensemblerules.gear.LabelBuilder;
import org.ensemblerules.gear.LayerKind;
import org.ensemblerules.gear.Legibility;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.gear.Use;
import org.ensemblerules.gear.YesNoUnknown;
import org.ensemblerules.history.Event;
import org.ensemblerules.history.History;
import org.ensemblerules.history.Moment;
import org.ensemblerules.history.UseEvent;
import org.ensemblerules.history.WorkEvent;
import org.ensemblerules.measure.Limit;
import org.ensemblerules.measure.Quantity;
import org.ensemblerules.measure.Unit;
import org.ensemblerules.record.FileAnswer;
import org.ensemblerules.record.FileReport;
import org.ensemblerules.record.RecordDetail;
import org.ensemblerules.record.RecordFile;
import org.ensemblerules.record.RecordFileBuilder;
import org.ensemblerules.record.RecordItem;
import org.ensemblerules.record.RecordItemRow;
import org.ensemblerules.record.RecordItemTable;
import org.ensemblerules.record.RecordNote;
import org.ensemblerules.ruleset.CautionRow;
import org.ensemblerules.ruleset.CautionTable;
import org.ensemblerules.ruleset.Overlay;
import org.ensemblerules.ruleset.Tables;
import org.ensemblerules.source.Checked;
import org.ensemblerules.testkit.FitGear;
import org.ensemblerules.testkit.FrozenProvenance;
import org.ensemblerules.testkit.FrozenRules;
import org.ensemblerules.testkit.Layering;
import org.ensemblerules.testkit.People;
import org.ensemblerules.testkit.StrictnessLaw;

/**
 * A row on care, on what is written down of it or on what is warned of asks for no less than one
 * that it is at least as strict as, whatever is asked of both.
 */
@PropertyDefaults(tries = 1000, edgeCases = EdgeCasesMode.NONE)
class StricterCareProperties {
  private static final Use USE = Use.STRUCTURAL;
  private static final Tables FROZEN = FrozenRules.tables();
  private static final GearModel MODEL_A = new GearModel(FitGear.MAKER_NAME, "Model A");

  // ------------------------------------------------------------------------------------ routes

  @Provide
  Arbitrary<CareRouteRow> routes() {
    Arbitrary<RouteStep> washes =
        Combinators.combine(Arbitraries.of(CareManner.class), Arbitraries.of(CareEntry.DATE).set())
            .as(
                (manner, entries) ->
                    new RouteStep(CareAction.ADVANCED_CLEANING, Optional.of(manner), entries));
    Arbitrary<List<RouteStep>> back =
        Combinators.combine(
                Arbitraries.of(
                        CareAction.EXPOSURE_REDUCTION, CareAction.ISOLATE, CareAction.SHOW_CLEAN)
                    .set(),
                washes)
            .as((actions, wash) -> steps(actions, wash));
    Arbitrary<List<RouteStep>> away =
        Arbitraries.of(CareAction.ISOLATE, CareAction.CUSTODY)
            .set()
            .map(
                actions ->
                    steps(
                        actions, new RouteStep(CareAction.NO_RETURN, Optional.empty(), Set.of())));
    return Combinators.combine(
            Arbitraries.frequencyOf(Tuple.of(3, back), Tuple.of(1, away)),
            Arbitraries.of(HandlingDuty.BIOHAZARD, HandlingDuty.DO_NOT_WASH).set())
        .as(
            (steps, handling) ->
                route(Exposure.PRODUCTS_OF_COMBUSTION, findingOut(steps), handling));
  }

  private static List<RouteStep> steps(Set<CareAction> actions, RouteStep more) {
    return Stream.concat(
            actions.stream().map(action -> new RouteStep(action, Optional.empty(), Set.of())),
            Stream.of(more))
        .sorted((one, other) -> one.action().compareTo(other.action()))
        .toList();
  }

  /** So that nothing is washed that must not be before it is found out. */
  private static List<RouteStep> findingOut(List<RouteStep> steps) {
    RouteStep findOut = new RouteStep(CareAction.FIND_OUT, Optional.empty(), Set.of());
    return Stream.concat(steps.stream(), Stream.of(findOut))
        .sorted((one, other) -> one.action().compareTo(other.action()))
        .toList();
  }

  private static CareRouteRow route(
      Exposure exposure, List<RouteStep> steps, Set<HandlingDuty> handling) {
    return new CareRouteRow(
        FrozenProvenance.of("route", exposure),
        exposure,
        ElementKind.COAT,
        USE,
        Optional.of(LayerKind.OUTER_SHELL),
        steps,
        handling,
        "Frozen.");
  }

  /** Beside the frozen rows, with one for the unknown that none is stricter than. */
  private static CareRoutes routes(CareRouteRow row) {
    CareRouteRow unknown =
        route(
            Exposure.UNKNOWN,
            Stream.of(CareAction.values())
                .filter(action -> action != CareAction.NO_RETURN)
                .map(
                    action ->
                        new RouteStep(
                            action,
                            action.cleans() ? Optional.of(CareManner.BY_HAND) : Optional.empty(),
                            EnumSet.allOf(CareEntry.class)))
                .toList(),
            EnumSet.complementOf(EnumSet.of(HandlingDuty.ISOLATE)));
    return CareRoutes.of(
        CareRouteTable.of(
                Stream.concat(
                        FROZEN.care().routes().rows().stream()
                            .filter(
                                each ->
                                    !each.topic().equals(row.topic())
                                        && !each.topic().equals(unknown.topic())),
                        Stream.of(row, unknown))
                    .toList())
            .orElseThrow(),
        FROZEN.permissions(),
        Optional.of(FROZEN.checks()));
  }

  @FewestTries(500)
  @Property
  void routes(
      @ForAll("routes") CareRouteRow one,
      @ForAll("routes") CareRouteRow other,
      @ForAll @Size(max = 2) Set<Exposure> besides) {
    Set<Exposure> met = EnumSet.of(Exposure.PRODUCTS_OF_COMBUSTION);
    met.addAll(besides);
    Element coat = FitGear.element(ElementKind.COAT).build();
    StrictnessLaw.holds(
        one,
        other,
        (strict, mild) -> {
          CareRoute asStrict = routes(strict).route(coat, met);
          CareRoute asMild = routes(mild).route(coat, met);
          return asStrict instanceof CareRoute.Steps all
              && asMild instanceof CareRoute.Steps less
              && all.isAtLeastAsStrictAs(less)
              && (!all.mayReturn() || less.mayReturn());
        });
  }

  // ------------------------------------------------------------------------------------ models

  @Provide
  Arbitrary<ModelCareLimitRow> modelLimits() {
    Arbitrary<Limit> limits =
        Arbitraries.of(
            Limit.atMost("30", Unit.DEGREE_CELSIUS),
            Limit.atMost("40", Unit.DEGREE_CELSIUS),
            Limit.atMost("105", Unit.DEGREE_FAHRENHEIT),
            Limit.atMost("50", Unit.DEGREE_CELSIUS));
    return Combinators.combine(
            limits,
            Arbitraries.of(true, true, false),
            Arbitraries.of(LocalDate.of(2024, 1, 1)).optional(0.3))
        .as(
            (limit, inPlace, from) ->
                new ModelCareLimitRow(
                    MODEL_A,
                    water(limit),
                    Optional.of(Layering.frozenWater(ElementKind.COAT)).filter(key -> inPlace),
                    from));
  }

  private static CareLimitRow water(Limit limit) {
    return new CareLimitRow(
        FrozenProvenance.of("maker"),
        ElementKind.COAT,
        USE,
        Optional.empty(),
        new CareDemand.Within(WashMeasure.WATER_TEMPERATURE, limit));
  }

  private static boolean counts(
      ModelCareLimitRow row, String celsius, Optional<String> model, MarkedDate washed) {
    LabelBuilder label =
        Label.builder().manufacturer(FitGear.MAKER_NAME).legibility(Legibility.READABLE);
    model.ifPresent(label::model);
    Element coat =
        FitGear.element(ElementKind.COAT)
            .layer(LayerKind.OUTER_SHELL, label.build())
            .layer(LayerKind.LINER_SYSTEM, label.build())
            .build();
    return FROZEN
            .care()
            .limits()
            .with(List.of(), List.of(row), FROZEN.anatomy())
            .orElseThrow()
            .judge(
                WashRecord.builder()
                    .waterTemperature(Quantity.of(celsius, Unit.DEGREE_CELSIUS))
                    .practice(WashPractice.CHLORINE_BLEACH, YesNoUnknown.NO)
                    .build(),
                coat,
                Set.of(),
                washed,
                false)
        instanceof WashAnswer.Counts;
  }

  @FewestTries(500)
  @Property
  void modelLimits(
      @ForAll("modelLimits") ModelCareLimitRow one,
      @ForAll("modelLimits") ModelCareLimitRow other) {
    for (String celsius : List.of("25", "35", "40", "40.5", "45", "60")) {
      for (String model : List.of("Model A", "Model B", "")) {
        for (String on : List.of("2023-12-31", "2023", "2024-01-01")) {
          Optional<String> printed = Optional.of(model).filter(name -> !name.isEmpty());
          MarkedDate washed = MarkedDate.parse(on);
          StrictnessLaw.holds(
              one,
              other,
              (strict, mild) ->
                  !counts(strict, celsius, printed, washed)
                      || counts(mild, celsius, printed, washed));
        }
      }
    }
  }

  @Provide
  Arbitrary<WashBoundRow> washBounds() {
    return Arbitraries.of(
        bound(WashBoundRow.Reach.LOOSEST, Limit.atMost("45", Unit.DEGREE_CELSIUS)),
        bound(WashBoundRow.Reach.LOOSEST, Limit.atMost("50", Unit.DEGREE_CELSIUS)),
        bound(WashBoundRow.Reach.LOOSEST, Limit.atMost("140", Unit.DEGREE_FAHRENHEIT)),
        bound(WashBoundRow.Reach.POSSIBLE, Limit.atLeast("0", Unit.KELVIN)),
        bound(WashBoundRow.Reach.POSSIBLE, Limit.atLeast("0", Unit.DEGREE_CELSIUS)),
        bound(WashBoundRow.Reach.POSSIBLE, Limit.atLeast("10", Unit.DEGREE_CELSIUS)));
  }

  /** Under the keys of the frozen rows, in whose place they are put. */
  private static WashBoundRow bound(WashBoundRow.Reach reach, Limit limit) {
    return new WashBoundRow(
        FrozenProvenance.of("bound", reach, limit.bound()),
        WashMeasure.WATER_TEMPERATURE,
        reach,
        limit);
  }

  @FewestTries(200)
  @Property(tries = 200)
  void washBounds(
      @ForAll("washBounds") WashBoundRow one, @ForAll("washBounds") WashBoundRow other) {
    for (String celsius : List.of("-300", "-5", "5", "44", "48", "55", "60.5")) {
      Layering maker = Layering.of("MAKER");
      Overlay instructions =
          maker.instructions(Layering.inPlace(MODEL_A, maker.water(ElementKind.COAT, celsius)));
      StrictnessLaw.holds(
          one, other, (strict, mild) -> !taken(strict, instructions) || taken(mild, instructions));
    }
  }

  private static boolean taken(WashBoundRow row, Overlay instructions) {
    return FrozenRules.of(RebuiltTables.with(FROZEN, row))
            .with(List.of(instructions), FitGear.AS_OF)
        instanceof Checked.Sound;
  }

  // ------------------------------------------------------------------------------------ records

  @Provide
  Arbitrary<RecordItemRow> recordItems() {
    return Arbitraries.of(
            RecordItem.REPAIRS, RecordItem.MAKER_AND_MODEL, RecordItem.ISSUE_DATE_AND_CONDITION)
        .flatMap(
            item ->
                Arbitraries.of(item.details())
                    .set()
                    .ofMinSize(1)
                    .map(
                        details ->
                            new RecordItemRow(
                                FrozenProvenance.of(item),
                                ElementKind.HELMET,
                                USE,
                                item,
                                details)));
  }

  @Provide
  Arbitrary<RecordFile> files() {
    Arbitrary<Moment> dates =
        Arbitraries.of("2021-03-04", "2021-03", "")
            .map(text -> Moment.on(text.isEmpty() ? MarkedDate.unknown() : MarkedDate.parse(text)));
    return Combinators.combine(
            dates,
            dates,
            Arbitraries.of(true, false),
            Arbitraries.of(true, false),
            Arbitraries.of("Model A", "").optional(0.7))
        .as(
            (issued, repaired, condition, description, model) -> {
              LabelBuilder label = Label.builder();
              model.ifPresent(
                  name -> {
                    label.manufacturer(FitGear.MAKER_NAME);
                    Optional.of(name).filter(text -> !text.isEmpty()).ifPresent(label::model);
                  });
              List<Event> events = new ArrayList<>();
              events.add(new UseEvent.Issued(issued, "Member 7"));
              events.add(
                  new WorkEvent.Repaired(
                      repaired, RepairClass.BASIC, true, People.DEPARTMENT, Set.of()));
              RecordFileBuilder file =
                  RecordFile.builder(
                      Element.builder(new ElementId("HELMET 1"), ElementKind.HELMET, USE)
                          .label(label.build())
                          .build(),
                      History.of(events));
              if (condition) {
                file.note(
                    new RecordNote(
                        RecordItem.ISSUE_DATE_AND_CONDITION,
                        issued,
                        RecordDetail.CONDITION,
                        "good"));
              }
              if (description) {
                file.note(
                    new RecordNote(
                        RecordItem.REPAIRS, repaired, RecordDetail.DESCRIPTION, "new strap"));
              }
              return file.build();
            });
  }

  @FewestTries(500)
  @Property
  void recordItems(
      @ForAll("recordItems") RecordItemRow one,
      @ForAll("recordItems") RecordItemRow other,
      @ForAll("files") RecordFile file) {
    StrictnessLaw.holds(
        one,
        other,
        (strict, mild) -> {
          FileReport asStrict = report(strict, file);
          FileReport asMild = report(mild, file);
          return missing(asStrict, strict.item()).containsAll(missing(asMild, mild.item()))
              && (!asStrict.complete() || asMild.complete());
        });
  }

  private static FileReport report(RecordItemRow row, RecordFile file) {
    return RecordItemTable.of(List.of(row))
        .orElseThrow()
        .check(file, FrozenRules.rules().evidenceTables(), FitGear.AS_OF);
  }

  private static List<String> missing(FileReport report, RecordItem item) {
    FileAnswer answer = report.answers().get(item);
    if (answer instanceof FileAnswer.Inconsistent inconsistent) {
      return inconsistent.missing();
    }
    return answer instanceof FileAnswer.Missing missing ? missing.what() : List.of();
  }

  // ------------------------------------------------------------------------------------ cautions

  @Provide
  Arbitrary<CautionRow> cautions() {
    return Combinators.combine(
            Arbitraries.of(ElementKind.COAT, ElementKind.HELMET).set(),
            Arbitraries.of(Use.class).set(),
            Arbitraries.of(EffectKind.CLEAN, EffectKind.RETIRE).set())
        .as(
            (elements, uses, effects) ->
                new CautionRow(
                    FrozenProvenance.of("caution"), elements, uses, effects, "Take care."));
  }

  @FewestTries(500)
  @Property
  void cautions(
      @ForAll("cautions") CautionRow one,
      @ForAll("cautions") CautionRow other,
      @ForAll Set<EffectKind> effects) {
    for (ElementKind kind : List.of(ElementKind.COAT, ElementKind.HELMET, ElementKind.GLOVES)) {
      for (Use use : Use.values()) {
        Element element = Element.builder(new ElementId("E-1"), kind, use).build();
        StrictnessLaw.holds(
            one,
            other,
            (strict, mild) -> shown(strict, element, effects) || !shown(mild, element, effects));
      }
    }
  }

  private static boolean shown(CautionRow row, Element element, Set<EffectKind> effects) {
    return !CautionTable.of(List.of(row)).orElseThrow().with(element, effects).isEmpty();
  }
}
