package org.ensemblerules.tables;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.ensemblerules.GearRules;
import org.ensemblerules.effect.DoerRegister;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.gear.YesNoUnknown;
import org.ensemblerules.history.LookEvent;
import org.ensemblerules.history.Moment;
import org.ensemblerules.record.DisposalNote;
import org.ensemblerules.record.PfasContent;
import org.ensemblerules.record.PfasNotice;
import org.ensemblerules.record.PlaceCode;
import org.ensemblerules.record.RecordDetail;
import org.ensemblerules.record.RecordFile;
import org.ensemblerules.record.RecordItem;
import org.ensemblerules.record.RecordNote;
import org.ensemblerules.retirement.DisposalRoute;
import org.ensemblerules.ruleset.RuleSet;
import org.ensemblerules.source.Checked;
import org.ensemblerules.tables.message.JsonFault;
import org.ensemblerules.tables.message.UnknownDoer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** The JSON form of an element's file. */
class RecordFileJsonTest {
  private static final String ELEMENT =
      "{\"id\": \"HOOD 1\", \"kind\": \"HOOD\", \"use\": \"STRUCTURAL\"}";

  private static final String EVERYTHING =
      """
      {
        "id": "HOOD 1",
        "element": {"id": "HOOD 1", "kind": "HOOD", "use": "STRUCTURAL"},
        "history": [{"event": "ISSUED", "on": "2020-06-01", "holder": "Member 7"}],
        "file": {
          "label": {"manufactured": "2020-03"},
          "layers": {"OUTER_SHELL": {"model": "A"}},
          "inStock": "NO",
          "notes": [
            {"item": "ISSUE_DATE_AND_CONDITION", "on": "2020-06-01", "orderInDay": 2,
             "detail": "CONDITION", "text": "new"}
          ],
          "disposal": {"route": "NON_LIVE_FIRE_TRAINING", "markedForTraining": "YES"},
          "pfasNotices": [
            {"place": "US-WA", "sold": "2020-05-01", "content": "ADDED",
             "reason": "water repellent", "dated": "2020-05"}
          ]
        }
      }
      """;

  @Test
  void everythingIsRead() {
    RecordFile file = RecordFileJson.read("file", EVERYTHING).orElseThrow();
    assertThat(file.element().id()).hasToString("HOOD 1");
    assertThat(file.history().events()).hasSize(1);
    assertThat(file.label().orElseThrow().manufactured()).hasToString("2020-03");
    assertThat(file.layerLabels()).hasSize(1);
    assertThat(file.inStock()).isEqualTo(YesNoUnknown.NO);
    assertThat(file.notes())
        .containsExactly(
            new RecordNote(
                RecordItem.ISSUE_DATE_AND_CONDITION,
                new Moment(MarkedDate.parse("2020-06-01"), 2),
                RecordDetail.CONDITION,
                "new"));
    assertThat(file.disposal())
        .contains(new DisposalNote(DisposalRoute.NON_LIVE_FIRE_TRAINING, YesNoUnknown.YES));
    assertThat(file.pfasNotices())
        .containsExactly(
            new PfasNotice(
                new PlaceCode("US-WA"),
                MarkedDate.parse("2020-05-01"),
                PfasContent.ADDED,
                Optional.of("water repellent"),
                MarkedDate.parse("2020-05")));
    assertThat(TableSchemas.objections("file", EVERYTHING)).isEmpty();
  }

  @Test
  void whatIsLeftOutIsUnknown() {
    RecordFile file =
        RecordFileJson.read(
                "file",
                "{\"element\": "
                    + ELEMENT
                    + ", \"file\": {\"disposal\": {\"route\":"
                    + " \"DESTROY\"}, \"pfasNotices\": [{\"place\": \"US-CO\"}]}}")
            .orElseThrow();
    assertThat(file.history().events()).isEmpty();
    assertThat(file.inStock()).isEqualTo(YesNoUnknown.UNKNOWN);
    assertThat(file.disposal().orElseThrow().markedForTraining()).isEqualTo(YesNoUnknown.UNKNOWN);
    PfasNotice notice = file.pfasNotices().iterator().next();
    assertThat(notice.content()).isEqualTo(PfasContent.UNKNOWN);
    assertThat(notice.sold()).isEqualTo(MarkedDate.unknown());
  }

  static Stream<Arguments> refused() {
    return Stream.of(
        Arguments.of("{}", List.of("file#: found no field \"element\"")),
        Arguments.of(
            "{\"id\": \"HOOD 2\", \"element\": " + ELEMENT + "}",
            List.of("file#/id: found \"HOOD 2\", allowed: the id of the element")),
        Arguments.of(
            filed("\"inStok\": \"YES\", \"label\": null"),
            List.of("file#/file/label: found null", "file#/file/inStok: found unknown field")),
        Arguments.of(
            filed(
                "\"notes\": [{\"item\": \"REPAIRS\", \"on\": \"2020-01-01\", \"detail\":"
                    + " \"DATE\", \"text\": \"x\"}, {\"item\": \"REPAIR\", \"on\": \"May\","
                    + " \"detail\": \"DESCRIPTION\", \"text\": \"\"}]"),
            List.of(
                "file#/file/notes/0/detail: found DATE of REPAIRS, allowed: CONDITION of",
                "file#/file/notes/1/item: found \"REPAIR\", allowed: nearest REPAIRS",
                "file#/file/notes/1/on: found \"May\"",
                "file#/file/notes/1/text: found \"\"")),
        Arguments.of(
            filed("\"disposal\": {\"markedForTraining\": true}"),
            List.of(
                "file#/file/disposal: found no field \"route\"",
                "file#/file/disposal/markedForTraining: found true")),
        Arguments.of(
            filed(
                "\"pfasNotices\": [{\"place\": \"WA\", \"content\": \"MAYBE\", \"reason\": \" \"},"
                    + " {\"place\": \"US-WA\"}, {\"place\": \"US-WA\"}]"),
            List.of(
                "file#/file/pfasNotices/0/place: found \"WA\", allowed: a code of ISO 3166-2",
                "file#/file/pfasNotices/0/content: found \"MAYBE\"",
                "file#/file/pfasNotices/0/reason: found \" \"",
                "file#/file/pfasNotices/2: found")));
  }

  private static String filed(String fields) {
    return "{\"element\": " + ELEMENT + ", \"file\": {" + fields + "}}";
  }

  @ParameterizedTest
  @MethodSource("refused")
  void everyFaultIsNamedInItsPlace(String json, List<String> beginnings) {
    Checked<RecordFile, JsonFault> loaded = RecordFileJson.read("file", json);
    assertThat(loaded).isInstanceOf(Checked.Refused.class);
    List<String> faults =
        ((Checked.Refused<RecordFile, JsonFault>) loaded)
            .faults().stream().map(JsonFault::toString).toList();
    assertThat(faults).hasSameSizeAs(beginnings);
    for (int i = 0; i < faults.size(); i++) {
      assertThat(faults.get(i)).startsWith(beginnings.get(i));
    }
  }

  /** A criterion is called by the end of its family's key, as in an assessment. */
  @Test
  void criteriaAreNamedShort() {
    RuleSet rules = ShippedRules.standard().rules();
    String text =
        """
        {"element": {"id": "HOOD 1", "kind": "HOOD", "use": "STRUCTURAL"},
         "history": [{"event": "INSPECTED", "inspection": {"kind": "ROUTINE",
           "occasion": "PERIODIC", "on": "2026-11-10", "by": "A. Sample",
           "outcomes": {"CLEAR": ["heat"]}}}]}
        """;
    RecordFile file =
        RecordFileJson.naming(
                DoerRegister.empty(), UnknownDoer.COUNTS_FOR_NOTHING, GearRules.of(rules))
            .read("file", text)
            .orElseThrow();
    assertThat(file.history().events(LookEvent.Inspected.class))
        .singleElement()
        .satisfies(
            made ->
                assertThat(made.inspection().outcomes())
                    .singleElement()
                    .matches(each -> each.criterion().value().contains("heat/HOOD/")));
    assertThat(
            RecordFileJson.under(GearRules.of(rules)).read("file", text.replace("heat", "warmth")))
        .isInstanceOfSatisfying(
            Checked.Refused.class, bad -> assertThat(bad.faults().toString()).contains("heat"));
  }
}
