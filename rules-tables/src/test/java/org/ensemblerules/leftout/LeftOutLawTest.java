package org.ensemblerules.leftout;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonPointer;
import com.fasterxml.jackson.databind.JsonNode;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.ensemblerules.ruleset.RuleSet;
import org.ensemblerules.tables.AssessmentJson;
import org.ensemblerules.tables.ShippedRules;
import org.ensemblerules.verdict.Assessment;
import org.junit.jupiter.api.Test;

/** The law can fail: it tells what is milder, and what was taken. */
class LeftOutLawTest {
  private static final RuleSet RULES = ShippedRules.standard().rules();
  private static final LocalDate AS_OF = LocalDate.of(2024, 6, 15);
  private static final LeftOutLaw LAW = new LeftOutLaw(RULES, AS_OF);

  private static Assessment helmet(String history) {
    return AssessmentJson.read(
            "assessment",
            "{\"element\":{\"id\":\"1\",\"kind\":\"HELMET\",\"use\":\"STRUCTURAL\","
                + "\"inService\":\"2021-04-01\",\"label\":{\"manufactured\":\"2021-03\"}},"
                + "\"history\":["
                + history
                + "]}")
        .orElseThrow();
  }

  private static LeavingOut.Way leftOut(String path) {
    return new LeavingOut.Way(JsonPointer.compile(path), Optional.empty());
  }

  @Test
  void everyFieldAndEveryDateIsAWay() {
    JsonNode record = LeavingOut.json(helmet("{\"event\":\"USED\",\"on\":\"2024-05-01\"}"));
    List<List<LeavingOut.Way>> parts = LeavingOut.ways(record);
    assertThat(parts).hasSize(2);
    assertThat(parts.get(1))
        .extracting(LeavingOut.Way::toString)
        .containsExactlyInAnyOrder(
            "left out at /history/0",
            "left out at /history/0/event",
            "left out at /history/0/on",
            "2024-05 instead at /history/0/on",
            "2024 instead at /history/0/on",
            "UNKNOWN instead at /history/0/on");
    assertThat(parts.get(0)).contains(leftOut("/element/inService"), leftOut("/element/label"));
  }

  @Test
  void whatCannotBeReadIsNoRecord() {
    Assessment given = helmet("{\"event\":\"USED\",\"on\":\"2024-05-01\"}");
    JsonNode record = LeavingOut.json(given);
    assertThat(LeavingOut.take(RULES, AS_OF, given, record, leftOut("/history/0/on"))).isEmpty();
    assertThat(LeavingOut.take(RULES, AS_OF, given, record, leftOut("/element/kind"))).isEmpty();
    assertThat(LeavingOut.take(RULES, AS_OF, given, record, leftOut("/element/label"))).isPresent();
  }

  @Test
  void groundsAreToldApart() {
    Assessment given =
        helmet(
            "{\"event\":\"STOCKED\",\"on\":\"2021-03-20\"},{\"event\":\"USED\",\"on\":"
                + "\"2024-05-01\"}");
    JsonNode record = LeavingOut.json(given);
    assertThat(Grounds.isGround(RULES, AS_OF, given, record, leftOut("/history/0"))).isFalse();
    assertThat(Grounds.isGround(RULES, AS_OF, given, record, leftOut("/history/1"))).isTrue();
    assertThat(Grounds.isGround(RULES, AS_OF, given, record, leftOut("/element/label"))).isFalse();
  }

  /** As if a finding took the use along that another look is asked for: the law sees it. */
  @Test
  void aWholeGroundThatTakesMoreAlongIsSeen() {
    String found =
        "{\"event\":\"FOUND\",\"finding\":{\"id\":\"F1\",\"site\":\"HELMET_SHELL\",\"defect\":"
            + "\"CRACKING\",\"seen\":\"2024-05-02\"}}";
    String used = "{\"event\":\"USED\",\"on\":\"2024-05-01\"}";
    Assessment with = helmet(used + "," + found);
    assertThat(taken(with, helmet(used))).isEmpty();
    assertThat(taken(with, helmet("")).orElseThrow()).endsWith(" gone");
  }

  private static Optional<String> taken(Assessment with, Assessment without) {
    LeavingOut.Way way = leftOut("/history/1");
    JsonNode record = LeavingOut.json(with);
    Taken taken =
        new Taken(way, record.at(way.at()), true, LeavingOut.json(without), without, AS_OF);
    return LAW.milder(LAW.verdict(with), taken);
  }

  /** As if a field were a ground that was none: the law sees it, and shrinks the record to it. */
  @Test
  void whatIsMilderIsSeenAndShrunk() {
    Assessment with =
        helmet(
            "{\"event\":\"TAKEN_OUT\",\"on\":\"2024-05-01\",\"why\":\"a look\"},"
                + "{\"event\":\"RETURNED\",\"on\":\"2023-01-01\"}");
    Assessment without = helmet("{\"event\":\"RETURNED\",\"on\":\"2023-01-01\"}");
    Optional<String> gone =
        LAW.milder(
            LAW.verdict(with),
            new Taken(
                leftOut("/history/1"),
                LeavingOut.json(with),
                false,
                LeavingOut.json(without),
                without,
                AS_OF));
    assertThat(gone).contains("EVALUATE by RETURN_TO_SERVICE on ELEMENT at WHOLE_ELEMENT gone");
  }
}
