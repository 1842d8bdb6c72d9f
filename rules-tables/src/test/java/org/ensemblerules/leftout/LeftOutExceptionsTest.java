package org.ensemblerules.leftout;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonPointer;
import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.LayerKind;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.gear.Use;
import org.ensemblerules.history.Event;
import org.ensemblerules.history.History;
import org.ensemblerules.history.LookEvent;
import org.ensemblerules.history.Moment;
import org.ensemblerules.history.UseEvent;
import org.ensemblerules.inspection.CriterionRow;
import org.ensemblerules.inspection.Inspection;
import org.ensemblerules.inspection.InspectionBuilder;
import org.ensemblerules.inspection.InspectionKind;
import org.ensemblerules.inspection.Occasion;
import org.ensemblerules.inspection.Outcome;
import org.ensemblerules.ruleset.RuleSet;
import org.ensemblerules.tables.AssessmentJson;
import org.ensemblerules.tables.ShippedRules;
import org.ensemblerules.testkit.ShippedCase;
import org.ensemblerules.testkit.ShippedGear;
import org.ensemblerules.testkit.ShippedGear.Kind;
import org.ensemblerules.verdict.Assessment;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Each exception is one: it is milder without the thing, and the page names it. */
class LeftOutExceptionsTest {
  private static final RuleSet RULES = ShippedRules.standard().rules();

  /** So few that each can be told; one more is a change of the law. */
  private static final int MOST = 10;

  private static final Kind COAT = new Kind(ElementKind.COAT, Use.STRUCTURAL);

  private static final String HELMET =
      "{\"element\":{\"id\":\"1\",\"kind\":\"HELMET\",\"use\":\"STRUCTURAL\",\"inService\":"
          + "\"2021-04-01\"},\"history\":[%s]}";

  private static String record(LeftOutExceptions exception) {
    return switch (exception) {
      case STOCK_LEFT_THE_SHELF ->
          HELMET.formatted("{\"event\":\"STOCKED\",\"on\":\"2021-03-21\"}");
      case CHECK_AFTER_A_REPAIR ->
          "{\"element\":{\"id\":\"1\",\"kind\":\"FOOTWEAR\",\"use\":\"STRUCTURAL\"},\"history\":["
              + "{\"event\":\"FOUND\",\"finding\":{\"id\":\"F1\",\"site\":\"HARDWARE\","
              + "\"defect\":\"BROKEN_STITCHING\",\"seen\":\"2024-01-13\"}},{\"event\":\"REPAIRED\","
              + "\"on\":\"2024-01-14\",\"class\":\"ADVANCED\",\"by\":{\"name\":\"V\",\"kind\":"
              + "\"VERIFIED_ORGANIZATION\"},\"answers\":[\"F1\"]}]}";
      case RELEASE_LEFT_OUT ->
          "{\"element\":{\"id\":\"1\",\"kind\":\"FOOTWEAR\",\"use\":\"PROXIMITY\"},\"history\":["
              + cleaned("2023-09-15")
              + ","
              + cleaned("2024-02-15")
              + ",{\"event\":\"CHECKED\",\"on\":\"2024-05-25\",\"check\":\"INCIDENT_RELEASE\","
              + "\"result\":\"PASSED\",\"by\":{\"name\":\"V\",\"kind\":\"ORGANIZATION\"},"
              + "\"answers\":[\"F1\"]}],\"findings\":[{\"id\":\"F1\",\"site\":\"WHOLE_ELEMENT\","
              + "\"defect\":\"INJURY_TO_WEARER\",\"seen\":\"2024-05-24\"}]}";
      case ORDER_AGAINST_A_STATEMENT ->
          HELMET.formatted(
              "{\"event\":\"FOUND\",\"finding\":{\"id\":\"F1\",\"site\":\"SUSPENSION\","
                  + "\"defect\":\"CRACKING\",\"seen\":\"2024-01-13\"}},"
                  + cleaned("2024-01-14", ",\"layers\":\"WHOLE\",\"orderInDay\":1")
                  + ",{\"event\":\"INSPECTED\",\"inspection\":{\"kind\":\"ADVANCED\",\"occasion\":"
                  + "\"AFTER_WORK\",\"on\":\"2024-01-14\",\"by\":{\"name\":\"V\",\"kind\":"
                  + "\"ORGANIZATION\",\"credentials\":[{\"scope\":\"INSPECT\",\"from\":"
                  + "\"2000-01-01\",\"through\":\"2199-12-31\"}]},\"gearClean\":\"YES\",\"atHand\":"
                  + "\"ALL\",\"signedOff\":{\"edition\":\"NFPA_1851_2020\",\"clearBut\":[]}},\"orderInDay\":2},"
                  + "{\"event\":\"REPAIRED\",\"on\":\"2024-01-14\",\"orderInDay\":3,\"class\":"
                  + "\"ADVANCED\",\"replaced\":true,\"answers\":[\"F1\"],\"by\":{\"name\":\"P\",\"kind\":"
                  + "\"VERIFIED_INDEPENDENT_SERVICE_PROVIDER\",\"credentials\":[{\"scope\":"
                  + "\"ADVANCED_REPAIR\",\"from\":\"2000-01-01\",\"through\":\"2199-12-31\"}]}}");
      case LAYER_SAID_NOWHERE_ELSE ->
          "{\"element\":{\"id\":\"1\",\"kind\":\"COAT\",\"use\":\"STRUCTURAL\",\"layers\":{"
              + "\"LINER_SYSTEM\":{\"manufactured\":\"2022\"},"
              + "\"MOISTURE_BARRIER\":{\"manufactured\":\"2010\"}}}}";
    };
  }

  private static String cleaned(String on) {
    return cleaned(on, "");
  }

  private static String cleaned(String on, String more) {
    return "{\"event\":\"CLEANED\",\"on\":\""
        + on
        + "\""
        + more
        + ",\"cleaning\":\"ADVANCED\",\"limitsKept\":true,\"by\":{\"name\":\"V\",\"kind\":"
        + "\"ORGANIZATION\",\"credentials\":[{\"scope\":\"CLEAN\",\"from\":\"2000-01-01\","
        + "\"through\":\"2199-12-31\"}]}}";
  }

  private static String leftOut(LeftOutExceptions exception) {
    return switch (exception) {
      case STOCK_LEFT_THE_SHELF -> "/element/inService";
      case CHECK_AFTER_A_REPAIR -> "/history/1";
      case RELEASE_LEFT_OUT -> "/history/2/answers";
      case ORDER_AGAINST_A_STATEMENT -> "/history/3/orderInDay";
      case LAYER_SAID_NOWHERE_ELSE -> "/element/layers/MOISTURE_BARRIER";
    };
  }

  private static void isOne(LeftOutExceptions exception, Assessment given, String leftOut) {
    JsonNode record = LeavingOut.json(given);
    LeavingOut.Way way = new LeavingOut.Way(JsonPointer.compile(leftOut), Optional.empty());
    LeftOutLaw law = new LeftOutLaw(RULES, LocalDate.of(2024, 6, 15));
    assertThat(law.exception(given, law.verdict(given), record, way)).contains(exception);
    assertThat(law.milder(given, law.verdict(given), record, way)).isEmpty();
  }

  @ParameterizedTest
  @EnumSource
  void isMilderWithoutTheThing(LeftOutExceptions exception) {
    isOne(
        exception,
        AssessmentJson.read("assessment", record(exception)).orElseThrow(),
        leftOut(exception));
  }

  @Test
  void soIsTheWholeRelease() {
    LeftOutExceptions release = LeftOutExceptions.RELEASE_LEFT_OUT;
    isOne(release, AssessmentJson.read("assessment", record(release)).orElseThrow(), "/history/2");
  }

  /** A look that says that it came after the one use of its day, whose order says otherwise. */
  @Test
  void soIsTheOrderOfAUseAgainstTheLookAfterIt() {
    Inspection clear =
        ShippedGear.inspection(RULES, InspectionKind.ROUTINE, COAT, MarkedDate.parse("2024-06-10"))
            .build();
    InspectionBuilder afterUse =
        Inspection.builder(clear.kind(), Occasion.AFTER_USE, clear.on(), clear.by())
            .gearClean(clear.gearClean())
            .atHand(clear.atHand());
    clear.outcomes().forEach(each -> afterUse.outcome(each.criterion(), each.outcome()));
    List<Event> events = new ArrayList<>();
    events.add(new UseEvent.Used(new Moment(MarkedDate.parse("2024-06-10"), 2)));
    events.add(new LookEvent.Inspected(afterUse.build(), 1));
    events.addAll(ShippedGear.events(RULES, COAT));
    Assessment given =
        Assessment.builder(ShippedGear.element(RULES, COAT).build())
            .history(History.of(events))
            .build();
    int use = given.history().events().indexOf(events.get(0));
    isOne(LeftOutExceptions.ORDER_AGAINST_A_STATEMENT, given, "/history/" + use + "/orderInDay");
  }

  /** Of two inspections in full only the later one found a winter liner in the coat. */
  @Test
  void soIsTheOnlyLookThatSawAWinterLiner() {
    ShippedCase fit = ShippedCase.fit(RULES, COAT);
    Inspection clear =
        ShippedGear.inspection(RULES, InspectionKind.ADVANCED, COAT, MarkedDate.parse("2024-06-10"))
            .build();
    InspectionBuilder saw =
        Inspection.builder(clear.kind(), clear.occasion(), clear.on(), clear.by())
            .gearClean(clear.gearClean())
            .atHand(clear.atHand());
    for (CriterionRow row :
        RULES.tables().criteria().required(clear.kind(), COAT.element(), COAT.use())) {
      boolean winter =
          row.sites().stream()
              .anyMatch(site -> site.layer().equals(Optional.of(LayerKind.WINTER_LINER)));
      clear
          .outcomes(row.key())
          .forEach(outcome -> saw.outcome(row.key(), winter ? Outcome.CLEAR : outcome));
    }
    Event looked = new LookEvent.Inspected(saw.build(), 0);
    Assessment given = fit.with(looked).assessment();
    isOne(
        LeftOutExceptions.LAYER_SAID_NOWHERE_ELSE,
        given,
        "/history/" + given.history().events().indexOf(looked));
  }

  @Test
  void thePageNamesEach() throws IOException {
    String page = Files.readString(Path.of("../docs/left-out.md"));
    for (LeftOutExceptions exception : LeftOutExceptions.values()) {
      assertThat(page).contains("`" + exception + "`");
    }
    assertThat(LeftOutExceptions.values()).hasSizeLessThanOrEqualTo(MOST);
  }
}
