package org.ensemblerules.shipped;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.PropertyDefaults;
import net.jqwik.api.Provide;
import org.ensemblerules.defect.DefectKind;
import org.ensemblerules.defect.Demand;
import org.ensemblerules.defect.Extent;
import org.ensemblerules.defect.Finding;
import org.ensemblerules.defect.FindingId;
import org.ensemblerules.gear.Element;
import org.ensemblerules.gear.ElementBuilder;
import org.ensemblerules.gear.Label;
import org.ensemblerules.gear.LabelBuilder;
import org.ensemblerules.gear.LayerKind;
import org.ensemblerules.gear.Legibility;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.gear.Part;
import org.ensemblerules.gear.YesNoUnknown;
import org.ensemblerules.history.Event;
import org.ensemblerules.history.LookEvent;
import org.ensemblerules.history.Moment;
import org.ensemblerules.history.UseEvent;
import org.ensemblerules.inspection.CriterionRow;
import org.ensemblerules.inspection.Inspection;
import org.ensemblerules.inspection.InspectionBuilder;
import org.ensemblerules.inspection.InspectionKind;
import org.ensemblerules.inspection.Outcome;
import org.ensemblerules.source.RowKey;
import org.ensemblerules.testkit.ShippedArbitraries;
import org.ensemblerules.testkit.ShippedCase;
import org.ensemblerules.testkit.ShippedGear;
import org.ensemblerules.verdict.Service;

/** What is not known never leaves an element in service, whichever edition judges it. */
@PropertyDefaults(tries = 250, edgeCases = EdgeCasesMode.NONE)
class ShippedUnknownProperties {
  @Provide
  Arbitrary<ShippedCase> cases() {
    return ShippedArbitraries.cases();
  }

  private static void out(ShippedCase given) {
    assertThat(given.verdict().service()).isEqualTo(Service.OUT);
  }

  @Property
  void whetherItWasInspected(@ForAll("cases") ShippedCase given) {
    out(given.inspections(made -> Optional.empty()));
  }

  @Property
  void whatCameOfOneCriterion(@ForAll("cases") ShippedCase given, @ForAll Random random) {
    Inspection made = given.inspections().get(0);
    int left = random.nextInt(made.outcomes().size());
    InspectionBuilder builder =
        Inspection.builder(made.kind(), made.occasion(), made.on(), made.by())
            .gearClean(made.gearClean())
            .atHand(made.atHand());
    for (int i = 0; i < made.outcomes().size(); i++) {
      if (i != left) {
        builder.outcome(made.outcomes().get(i).criterion(), made.outcomes().get(i).outcome());
      }
    }
    out(given.inspectedBy(List.of(builder.build())));
  }

  @Property
  void whenItWasInspected(@ForAll("cases") ShippedCase given) {
    out(
        given.inspections(
            made ->
                Optional.of(
                    ShippedGear.inspection(
                            given.rules(), made.kind(), given.kind(), MarkedDate.unknown())
                        .build())));
  }

  @Property
  void whetherAFullInspectionIsOnRecord(@ForAll("cases") ShippedCase given) {
    List<Event> events = new ArrayList<>(given.events());
    events.removeIf(LookEvent.Inspected.class::isInstance);
    Element element = changed(given, label -> label).inService(MarkedDate.unknown()).build();
    out(given.withEvents(events).with(element));
  }

  @Property
  void whetherALabelCanBeRead(@ForAll("cases") ShippedCase given) {
    Element unknown = changed(given, label -> label.legibility(Legibility.UNKNOWN)).build();
    out(nobodyReadIt(given).with(unknown));
  }

  @Property
  void whetherItIsCertified(@ForAll("cases") ShippedCase given) {
    Element unknown =
        changed(given, label -> label.certificationMark(YesNoUnknown.UNKNOWN)).build();
    out(nobodyReadIt(given).with(unknown));
  }

  /** No inspection says that the labels are in order: their corners curl, which is only noted. */
  private static ShippedCase nobodyReadIt(ShippedCase given) {
    List<Event> events = new ArrayList<>();
    for (Event event : given.events()) {
      events.add(
          event instanceof LookEvent.Inspected done ? curling(given, done.inspection()) : event);
    }
    for (CriterionRow row : labels(given)) {
      MarkedDate seen = MarkedDate.of(ShippedGear.LAST_IN_FULL);
      row.sites()
          .forEach(
              site ->
                  events.add(
                      new LookEvent.Found(
                          new Finding(
                              new FindingId("curl " + site),
                              site,
                              "",
                              DefectKind.EDGES_LIFTING,
                              new Extent.NotMeasured(),
                              seen))));
    }
    return given.withEvents(events);
  }

  private static Event curling(ShippedCase given, Inspection made) {
    Set<RowKey> labels = labels(given).stream().map(CriterionRow::key).collect(Collectors.toSet());
    InspectionBuilder builder =
        Inspection.builder(made.kind(), made.occasion(), made.on(), made.by())
            .gearClean(made.gearClean())
            .atHand(made.atHand());
    made.outcomes()
        .forEach(
            each ->
                builder.outcome(
                    each.criterion(),
                    labels.contains(each.criterion()) ? Outcome.FOUND : each.outcome()));
    return new LookEvent.Inspected(builder.build(), 0);
  }

  private static List<CriterionRow> labels(ShippedCase given) {
    return given
        .rules()
        .tables()
        .criteria()
        .required(InspectionKind.ADVANCED, given.kind().element(), given.kind().use())
        .stream()
        .filter(row -> row.sites().stream().allMatch(site -> site.part() == Part.LABEL))
        .toList();
  }

  @Property
  void whenItWasMade(@ForAll("cases") ShippedCase given) {
    out(given.with(changed(given, label -> label.manufactured(MarkedDate.unknown())).build()));
  }

  @Property
  void whenItWasUsed(@ForAll("cases") ShippedCase given) {
    out(given.with(new UseEvent.Used(Moment.on(MarkedDate.unknown()))));
  }

  record Found(ShippedCase fit, Finding finding) {}

  @Provide
  Arbitrary<Found> found() {
    return ShippedArbitraries.cases()
        .flatMap(
            given -> ShippedArbitraries.findings(given).map(finding -> new Found(given, finding)));
  }

  private static Finding changed(Finding found, Extent extent, MarkedDate seen) {
    return new Finding(
        new FindingId("unknown"), found.site(), found.place(), found.defect(), extent, seen);
  }

  private static List<Demand> demands(ShippedCase given, Finding finding) {
    return Demand.of(
        finding,
        given.element(),
        given.rules().tables().anatomy(),
        given.rules().tables().defects());
  }

  @Provide
  Arbitrary<Found> unmeasured() {
    return found()
        .map(
            given ->
                new Found(
                    given.fit(),
                    changed(given.finding(), new Extent.NotMeasured(), given.finding().seen())))
        .filter(
            given ->
                demands(given.fit(), given.finding()).stream()
                    .anyMatch(demand -> demand.kind() == Demand.Kind.MUST_MEASURE));
  }

  @Property
  void howLargeADefectIsWhereThatDecides(@ForAll("unmeasured") Found given) {
    out(given.fit().with(given.finding()));
  }

  @Property
  void whenADefectWasFoundUnlessItIsOnlyNoted(@ForAll("found") Found given) {
    Finding undated = changed(given.finding(), given.finding().extent(), MarkedDate.unknown());
    Assume.that(
        demands(given.fit(), undated).stream().anyMatch(demand -> demand.effect().keepsOut()));
    out(given.fit().with(new LookEvent.Found(undated)));
  }

  /** The element with every label changed. */
  private static ElementBuilder changed(ShippedCase given, UnaryOperator<LabelBuilder> change) {
    Element element = given.element();
    ElementBuilder builder =
        Element.builder(element.id(), element.kind(), element.use())
            .inService(element.inService())
            .cbrnOption(element.cbrnOption());
    Label label = change.apply(ShippedGear.label()).build();
    for (LayerKind layer : element.layerLabels().keySet()) {
      builder.layer(layer, label);
    }
    element.label().ifPresent(own -> builder.label(label));
    return builder;
  }
}
