package org.ensemblerules.tables.codec;

import com.fasterxml.jackson.databind.JsonNode;
import org.ensemblerules.measure.Unit;
import org.ensemblerules.strength.DirectionResult;
import org.ensemblerules.strength.Discarded;
import org.ensemblerules.strength.Figure;
import org.ensemblerules.strength.Remark;
import org.ensemblerules.strength.ReportJudge;
import org.ensemblerules.strength.TestCase;

/** The JSON form of what a laboratory's report comes to. */
public final class TestAnswerTree {
  private TestAnswerTree() {}

  /** Writes the answer. */
  public static JsonNode write(TestCase given, ReportJudge.Result result) {
    Fields fields =
        new Fields()
            .put("id", given.id())
            .put("product", given.product())
            .put("element", given.report().element())
            .put("use", given.report().use())
            .put("site", given.report().site())
            .put("property", given.report().property())
            .put("method", given.report().method())
            .put("purpose", PurposeJson.write(result.purpose()))
            .put("purposeText", result.purpose().text())
            .put("rule", DecisionRuleJson.write(result.rule()))
            .put("ruleText", result.rule().text());
    if (result instanceof ReportJudge.Judged judged) {
      return fields
          .put("answer", "JUDGED")
          .put("outcome", judged.outcome())
          .put("origin", judged.origin())
          .list("directions", judged.directions(), direction -> write(judged, direction))
          .list("remarks", judged.remarks(), remark -> write(judged, remark))
          .put("elementCutIsRetired", judged.elementCutIsRetired())
          .put("requirement", RowJson.write(judged.requirement()))
          .put("testMethod", RowJson.write(judged.method()))
          .node();
    }
    ReportJudge.NoResult none = (ReportJudge.NoResult) result;
    return fields
        .put("answer", "NO_RESULT")
        .put("reason", none.reason())
        .put("why", none.detail())
        .known("requirement", none.requirement(), RowJson::write)
        .node();
  }

  private static JsonNode write(ReportJudge.Judged judged, DirectionResult direction) {
    return new Fields()
        .put("direction", direction.direction())
        .put("outcome", direction.outcome())
        .put("text", judged.text(direction))
        .list("figures", direction.figures(), TestAnswerTree::write)
        .list("kept", direction.kept(), specimen -> SpecimenJson.write(specimen))
        .some("discarded", direction.discarded(), TestAnswerTree::write)
        .node();
  }

  private static JsonNode write(Figure figure) {
    return new Fields()
        .put("name", figure.name())
        .put("value", figure.value().toPlainString())
        .known("unit", figure.unit().map(Unit::symbol))
        .put("exact", figure.exact())
        .node();
  }

  private static JsonNode write(Discarded discarded) {
    return new Fields()
        .put("specimen", SpecimenJson.write(discarded.specimen()))
        .put("row", RowJson.write(discarded.row()))
        .node();
  }

  private static JsonNode write(ReportJudge.Judged judged, Remark remark) {
    return new Fields().put("remark", remark).put("text", judged.text(remark)).node();
  }
}
