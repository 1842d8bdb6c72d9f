package org.ensemblerules.shipped;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;
import org.ensemblerules.GearRules;
import org.ensemblerules.care.WashBoundRow;
import org.ensemblerules.care.WashMeasure;
import org.ensemblerules.care.WashRecord;
import org.ensemblerules.care.WashedLayers;
import org.ensemblerules.defect.DefectKind;
import org.ensemblerules.effect.CleaningKind;
import org.ensemblerules.effect.Doer;
import org.ensemblerules.effect.EntityKind;
import org.ensemblerules.effect.Task;
import org.ensemblerules.gear.Element;
import org.ensemblerules.gear.ElementId;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.Label;
import org.ensemblerules.gear.LayerKind;
import org.ensemblerules.gear.Legibility;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.gear.Use;
import org.ensemblerules.history.Event;
import org.ensemblerules.history.History;
import org.ensemblerules.history.LookEvent;
import org.ensemblerules.history.Moment;
import org.ensemblerules.history.UseEvent;
import org.ensemblerules.history.WorkEvent;
import org.ensemblerules.inspection.Inspection;
import org.ensemblerules.inspection.InspectionBuilder;
import org.ensemblerules.inspection.InspectionKind;
import org.ensemblerules.inspection.Outcome;
import org.ensemblerules.measure.Bound;
import org.ensemblerules.measure.Quantity;
import org.ensemblerules.measure.Unit;
import org.ensemblerules.ruleset.CareKinds;
import org.ensemblerules.ruleset.RuleSet;
import org.ensemblerules.source.Basis;
import org.ensemblerules.source.CitedRow;
import org.ensemblerules.source.HowSeen;
import org.ensemblerules.source.OriginId;
import org.ensemblerules.source.Row;
import org.ensemblerules.source.RowKey;
import org.ensemblerules.tables.OverlayJson;
import org.ensemblerules.tables.ShippedOverlays;
import org.ensemblerules.tables.ShippedRules;
import org.ensemblerules.tables.set.OverlayFile;
import org.ensemblerules.testkit.ShippedGear;
import org.ensemblerules.testkit.ShippedGear.Kind;
import org.ensemblerules.verdict.Assessment;
import org.ensemblerules.verdict.Reason;
import org.ensemblerules.verdict.ReasonKind;
import org.ensemblerules.verdict.Service;
import org.ensemblerules.verdict.Verdict;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What laws of places add, held against the regulations themselves. */
class ShippedOverlaysTest {
  private static final Kind COAT = new Kind(ElementKind.COAT, Use.STRUCTURAL);

  static List<OriginId> editions() {
    return ShippedEditions.WITH_INSPECTION;
  }

  private record Laid(OriginId edition, Set<String> overlays) {}

  private static final Map<Laid, RuleSet> LAID = new ConcurrentHashMap<>();

  private static RuleSet with(OriginId edition, String... overlays) {
    return LAID.computeIfAbsent(new Laid(edition, Set.of(overlays)), ShippedOverlaysTest::lay);
  }

  private static RuleSet lay(Laid laid) {
    return OverlayJson.lay(
            GearRules.of(ShippedEditions.rules(laid.edition())),
            laid.overlays().stream()
                .map(name -> ShippedOverlays.of(new OriginId(name)).orElseThrow())
                .toList(),
            ShippedGear.AS_OF)
        .orElseThrow()
        .rules();
  }

  private static Assessment lookedOver(RuleSet rules, List<Event> besides, LocalDate day) {
    List<Event> events = new ArrayList<>(ShippedGear.events(rules, COAT));
    events.addAll(besides);
    events.add(
        new LookEvent.Inspected(
            ShippedGear.inspection(rules, InspectionKind.ROUTINE, COAT, MarkedDate.of(day)).build(),
            0));
    return Assessment.builder(ShippedGear.element(rules, COAT).build())
        .history(History.of(events))
        .build();
  }

  // WAC 296-305-02002(5), State of Washington: structural clothing is inspected twice a year by a
  // person whom the employer has qualified, never more than six months apart.
  @ParameterizedTest
  @MethodSource("editions")
  void aCoatInspectedSevenMonthsAgoIsOutInWashington(OriginId edition) {
    RuleSet base = ShippedEditions.rules(edition);
    RuleSet rules = with(edition, "WASHINGTON");
    LocalDate last = ShippedGear.LAST_IN_FULL;
    LocalDate day = last.plusMonths(7);
    // The look of the wearer on the day itself is none by a person whom the employer qualified.
    assertThat(GearRules.of(base).service(lookedOver(base, List.of(), day), day))
        .isEqualTo(Service.IN);
    Verdict verdict = GearRules.of(rules).assess(lookedOver(rules, List.of(), day), day);
    assertThat(verdict.service()).isEqualTo(Service.OUT);
    Reason reason = verdict.reasons().get(0);
    assertThat(verdict.reasons()).hasSize(1);
    assertThat(reason.kind()).isEqualTo(ReasonKind.TASK_DUE);
    assertThat(reason.seen()).contains("due by " + last.plusMonths(6));
    assertThat(reason.row().orElseThrow().provenance().origin())
        .isEqualTo(new OriginId("WASHINGTON"));
    assertThat(verdict.due())
        .anySatisfy(
            due -> {
              assertThat(due.task().value()).isEqualTo("six-month-inspection");
              assertThat(due.by()).contains(last.plusMonths(6));
            });
    LocalDate lastDay = last.plusMonths(6);
    assertThat(GearRules.of(rules).service(lookedOver(rules, List.of(), lastDay), lastDay))
        .isEqualTo(Service.IN);
    assertThat(
            GearRules.of(rules)
                .service(lookedOver(rules, List.of(), lastDay.plusDays(1)), lastDay.plusDays(1)))
        .isEqualTo(Service.OUT);
  }

  // The same rule does not ask that the person hold what an advanced inspection needs; and such an
  // inspection does not discharge the yearly advanced one.
  @ParameterizedTest
  @MethodSource("editions")
  void anInspectionByThePersonQualifiedKeepsTheSixMonthsAndNotTheYear(OriginId edition) {
    RuleSet rules = with(edition, "WASHINGTON");
    LocalDate last = ShippedGear.LAST_IN_FULL;
    Doer qualified = new Doer("The department's person", EntityKind.ORGANIZATION, List.of());
    List<Event> looked = new ArrayList<>();
    for (int months : List.of(5, 10)) {
      Inspection full =
          ShippedGear.inspection(
                  rules, InspectionKind.ROUTINE, COAT, MarkedDate.of(last.plusMonths(months)))
              .build();
      InspectionBuilder theirs =
          Inspection.builder(full.kind(), full.occasion(), full.on(), qualified)
              .gearClean(full.gearClean())
              .atHand(full.atHand());
      full.outcomes().forEach(each -> theirs.outcome(each.criterion(), each.outcome()));
      looked.add(new LookEvent.Inspected(theirs.build(), 0));
    }
    LocalDate inTime = last.plusMonths(11);
    assertThat(GearRules.of(rules).service(lookedOver(rules, looked, inTime), inTime))
        .isEqualTo(Service.IN);
    LocalDate late = last.plusMonths(12).plusDays(1);
    assertThat(GearRules.of(rules).assess(lookedOver(rules, looked, late), late).reasons())
        .anyMatch(reason -> reason.kind() == ReasonKind.INSPECTION_NOT_CURRENT)
        .noneMatch(
            reason ->
                reason.row().orElseThrow().provenance().origin().value().equals("WASHINGTON"));
  }

  // R 408.17431(5), State of Michigan: inspected and cleaned after each use.
  @ParameterizedTest
  @MethodSource("editions")
  void wornGearIsCleanedInMichigan(OriginId edition) {
    RuleSet base = ShippedEditions.rules(edition);
    RuleSet rules = with(edition, "MICHIGAN");
    LocalDate day = ShippedGear.AS_OF;
    Moment worn = Moment.on(MarkedDate.of(day.minusDays(2)));
    List<Event> used = List.of(new UseEvent.Used(worn));
    assertThat(GearRules.of(base).service(lookedOver(base, used, day), day)).isEqualTo(Service.IN);
    Verdict verdict = GearRules.of(rules).assess(lookedOver(rules, used, day), day);
    assertThat(verdict.service()).isEqualTo(Service.OUT);
    assertThat(
            verdict.reasons().stream().flatMap(reason -> reason.row().stream()).map(CitedRow::key))
        .anyMatch(key -> key.value().startsWith("michigan-cleaning-after-use"));
    List<Event> cleaned =
        List.of(
            new UseEvent.Used(worn),
            WorkEvent.Cleaned.whole(
                Moment.on(MarkedDate.of(day.minusDays(1))),
                CleaningKind.ADVANCED,
                ShippedGear.permitted(rules, Task.ADVANCED_CLEANING),
                Set.of()));
    assertThat(GearRules.of(rules).assess(lookedOver(rules, cleaned, day), day).actions())
        .noneMatch(action -> action.effect().text().startsWith("CLEAN"));
  }

  // N.J.A.C. 12:100-10.16(a), State of New Jersey; 11.5.2.10(B)(1) NMAC, State of New Mexico: at
  // least one inspection a year.
  @ParameterizedTest
  @MethodSource("editions")
  void aYearIsTheLongestInNewJerseyAndNewMexico(OriginId edition) {
    for (String place : List.of("NEW_JERSEY", "NEW_MEXICO")) {
      RuleSet rules = with(edition, place);
      LocalDate aYearOn = ShippedGear.LAST_IN_FULL.plusYears(1);
      assertThat(GearRules.of(rules).service(lookedOver(rules, List.of(), aYearOn), aYearOn))
          .isEqualTo(Service.IN);
      LocalDate next = aYearOn.plusDays(1);
      assertThat(GearRules.of(rules).assess(lookedOver(rules, List.of(), next), next).reasons())
          .anySatisfy(
              reason ->
                  assertThat(reason.row().orElseThrow().provenance().origin().value())
                      .isEqualTo(place));
    }
  }

  @Test
  void everyShippedRowNamesItsClauseAsReadInAShippedSource() {
    for (OverlayFile file : ShippedOverlays.all()) {
      assertThat(file.sources()).isEmpty();
      assertThat(file.knownGaps()).isNotEmpty();
      for (Row row : file.overlay().rows().all()) {
        assertThat(row.provenance().basis())
            .isInstanceOfSatisfying(
                Basis.Published.class,
                published -> {
                  assertThat(published.seen()).isEqualTo(HowSeen.READ);
                  assertThat(published.clause()).isPresent();
                  assertThat(ShippedEditions.loaded().sources()).containsKey(published.source());
                });
      }
    }
  }

  @ParameterizedTest
  @MethodSource("editions")
  void allShippedOverlaysLieOverEveryEditionTogether(OriginId edition) {
    RuleSet rules = with(edition, "MICHIGAN", "NEW_JERSEY", "NEW_MEXICO", "WASHINGTON");
    assertThat(rules.identity().overlays())
        .extracting(OriginId::value)
        .containsExactly("MICHIGAN", "NEW_JERSEY", "NEW_MEXICO", "WASHINGTON");
    assertThat(rules.identity().fingerprint())
        .isNotEqualTo(ShippedEditions.rules(edition).identity().fingerprint());
  }

  @Test
  void theExampleOfTheDocumentIsTheFileAndLoads() throws IOException {
    Path root = Path.of("..");
    String file = Files.readString(root.resolve("examples/department/overlays/exampleton.json"));
    assertThat(Files.readString(root.resolve("docs/overlays.md")))
        .contains("```json\n" + file + "```\n");
    OverlayFile overlay = OverlayJson.read("exampleton.json", file).orElseThrow();
    for (OriginId edition : List.of(ShippedEditions.EDITION_2014, ShippedEditions.EDITION_2020)) {
      RuleSet rules =
          OverlayJson.lay(
                  GearRules.of(ShippedEditions.rules(edition)),
                  List.of(overlay, ShippedOverlays.of(new OriginId("WASHINGTON")).orElseThrow()),
                  LocalDate.of(2026, 11, 25))
              .orElseThrow()
              .rules();
      assertThat(rules.tables().retention()).hasSize(1);
    }
  }

  @Test
  void theEndsThatTheDocumentNamesAreThoseOfTheTable() throws IOException {
    String document = Files.readString(Path.of("..", "docs", "overlays.md"));
    assertThat(document)
        .contains(
            "water at most "
                + loosest(WashMeasure.WATER_TEMPERATURE, Bound.MAXIMUM)
                + ", drying at most "
                + loosest(WashMeasure.DRYING_TEMPERATURE, Bound.MAXIMUM)
                + ", the pH of the detergent at least "
                + loosest(WashMeasure.DETERGENT_PH, Bound.MINIMUM)
                + " and at most "
                + loosest(WashMeasure.DETERGENT_PH, Bound.MAXIMUM)
                + ".");
    assertThat(document)
        .contains("washed at " + loosest(WashMeasure.WATER_TEMPERATURE, Bound.MAXIMUM) + ",");
  }

  private static String loosest(WashMeasure measure, Bound bound) {
    return ShippedEditions.rules(ShippedEditions.EDITION_2020)
        .tables()
        .of(CareKinds.WASH_BOUNDS)
        .rows()
        .stream()
        .filter(row -> row.measure() == measure && row.reach() == WashBoundRow.Reach.LOOSEST)
        .map(row -> row.limit())
        .filter(limit -> limit.bound() == bound)
        .map(limit -> limit.value().toString().replaceFirst(" 1$", ""))
        .collect(Collectors.joining(" or "));
  }

  /** A maker's leaflet may let a coat be washed at 60 degrees; that of another maker may not. */
  @Test
  void theInstructionsOfTheDocumentAreTheFileAndHoldForTheirModel() throws IOException {
    Path root = Path.of("..");
    String name = "maker-two-pattern-cs.json";
    String file = Files.readString(root.resolve("examples/department/overlays").resolve(name));
    assertThat(Files.readString(root.resolve("docs/overlays.md")))
        .contains("```json\n" + file + "```\n");
    OverlayFile overlay = OverlayJson.read(name, file).orElseThrow();
    for (OriginId edition : ShippedEditions.WITH_INSPECTION) {
      RuleSet rules =
          OverlayJson.lay(
                  GearRules.of(ShippedEditions.rules(edition)),
                  List.of(overlay),
                  LocalDate.of(2026, 11, 25))
              .orElseThrow()
              .rules();
      WorkEvent.Cleaned warm =
          new WorkEvent.Cleaned(
              Moment.on(MarkedDate.of(LocalDate.of(2026, 6, 1))),
              CleaningKind.ADVANCED,
              ShippedGear.permitted(rules, Task.ADVANCED_CLEANING),
              Set.of(),
              new WashedLayers.Whole(),
              false,
              Optional.of(
                  WashRecord.builder()
                      .waterTemperature(Quantity.of("60", Unit.DEGREE_CELSIUS))
                      .build()));
      assertThat(overheated(rules, warm, "Maker Two")).isFalse();
      // NFPA 1850 is restated to allow hotter water, so that such a wash is unconfirmed there.
      boolean firm = !edition.equals(ShippedEditions.EDITION_2026);
      assertThat(overheated(rules, warm, "Maker Three")).isEqualTo(firm);
      assertThat(overheated(ShippedEditions.rules(edition), warm, "Maker Two")).isEqualTo(firm);
      assertThat(rules.validity().answer(warm, coat("Maker Two")).loosened())
          .singleElement()
          .satisfies(
              each ->
                  assertThat(each.replaced().key().value())
                      .isEqualTo("water-temperature/COAT/STRUCTURAL"));
    }
  }

  private static boolean overheated(RuleSet rules, WorkEvent.Cleaned wash, String maker) {
    return rules.validity().findings(coat(maker), History.of(List.of(wash))).stream()
        .anyMatch(finding -> finding.defect() == DefectKind.OVERHEATED_IN_WASHING);
  }

  private static Element coat(String maker) {
    Label label =
        Label.builder()
            .manufacturer(maker)
            .model("Pattern CS")
            .legibility(Legibility.READABLE)
            .build();
    return Element.builder(new ElementId("coat"), ElementKind.COAT, Use.STRUCTURAL)
        .layer(LayerKind.OUTER_SHELL, label)
        .layer(LayerKind.LINER_SYSTEM, label)
        .build();
  }

  /** Else a limit that an overlay adds could take the contradiction away. */
  @Test
  void theLogOfAWashDoesNotSayWhatAnInspectionFound() {
    OriginId edition = ShippedEditions.EDITION_2020;
    RuleSet rules = ShippedEditions.rules(edition);
    LocalDate day = ShippedGear.AS_OF;
    RowKey event = new RowKey("garment-routine-event/COAT/STRUCTURAL");
    Inspection clear =
        ShippedGear.inspection(rules, InspectionKind.ROUTINE, COAT, MarkedDate.of(day)).build();
    InspectionBuilder found =
        Inspection.builder(clear.kind(), clear.occasion(), clear.on(), clear.by())
            .gearClean(clear.gearClean())
            .atHand(clear.atHand());
    clear
        .outcomes()
        .forEach(
            each ->
                found.outcome(
                    each.criterion(),
                    each.criterion().equals(event) ? Outcome.FOUND : each.outcome()));
    List<Event> events = new ArrayList<>(ShippedGear.events(rules, COAT));
    events.add(
        new WorkEvent.Cleaned(
            Moment.on(MarkedDate.of(day)),
            CleaningKind.ADVANCED,
            ShippedGear.permitted(rules, Task.ADVANCED_CLEANING),
            Set.of(),
            new WashedLayers.Whole(),
            false,
            Optional.of(
                WashRecord.builder()
                    .waterTemperature(Quantity.of("60", Unit.DEGREE_CELSIUS))
                    .build())));
    events.add(new LookEvent.Inspected(found.build(), 0));
    Verdict verdict =
        GearRules.of(rules)
            .assess(
                Assessment.builder(ShippedGear.element(rules, COAT).build())
                    .history(History.of(events))
                    .build(),
                day);
    assertThat(verdict.openFindings())
        .anyMatch(open -> open.finding().defect() == DefectKind.OVERHEATED_IN_WASHING);
    assertThat(verdict.reasons())
        .anyMatch(
            reason ->
                reason.kind() == ReasonKind.CONTRADICTION
                    && reason.seen().contains("no finding says what"));
  }

  @Test
  void theLinesOfTheDocumentAreTheOnesThatRunHere() throws IOException {
    LocalDate asOf = LocalDate.of(2026, 11, 25);
    String text =
        Files.readString(Path.of("..", "examples", "department", "overlays", "exampleton.json"));
    // docs/overlays.md begins
    OverlayFile ours = OverlayJson.read("exampleton.json", text).orElseThrow();
    OverlayFile state = ShippedOverlays.of(new OriginId("WASHINGTON")).orElseThrow();
    GearRules edition = ShippedRules.standard();
    GearRules rules = OverlayJson.lay(edition, List.of(ours, state), asOf).orElseThrow();
    // docs/overlays.md ends
    assertThat(rules.overlays()).hasSize(2);
    Path here = Path.of("src/test/java/org/ensemblerules/shipped", "ShippedOverlaysTest.java");
    assertThat(between(Path.of("..", "docs", "overlays.md"), "```java", "```"))
        .isEqualTo(between(here, "// docs/overlays.md begins", "// docs/overlays.md ends"));
  }

  private static List<String> between(Path file, String begins, String ends) throws IOException {
    return Files.readAllLines(file).stream()
        .map(String::strip)
        .dropWhile(line -> !line.equals(begins))
        .skip(1)
        .takeWhile(line -> !line.equals(ends))
        .toList();
  }
}
