package org.ensemblerules.tables.codec;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Optional;
import org.ensemblerules.source.OriginId;
import org.ensemblerules.strength.DecisionRule;
import org.ensemblerules.strength.Purpose;
import org.ensemblerules.strength.TestCase;
import org.ensemblerules.strength.TestReport;
import org.ensemblerules.tables.json.JsonCursor;
import org.ensemblerules.tables.json.ObjectCursor;
import org.ensemblerules.tables.json.ValueReaders;

/** The JSON form of a report with what it is judged by. */
public final class TestCaseTree {
  private TestCaseTree() {}

  /** Reads a case. */
  public static Optional<TestCase> read(JsonCursor at) {
    ObjectCursor object = at.object();
    Optional<String> id = object.required("id", value -> value.parsed(TestCase::requireId));
    Optional<OriginId> product = object.required("product", ValueReaders::editionId);
    Optional<TestReport> report = object.required("report", TestReportJson::read);
    Optional<Purpose> purpose = object.required("purpose", PurposeJson::read);
    Optional<DecisionRule> rule = object.required("rule", DecisionRuleJson::read);
    return object.make(
        () ->
            new TestCase(
                id.orElseThrow(),
                product.orElseThrow(),
                report.orElseThrow(),
                purpose.orElseThrow(),
                rule.orElseThrow()));
  }

  /** Writes a case. */
  public static JsonNode write(TestCase given) {
    return new Fields()
        .put("id", given.id())
        .put("product", given.product())
        .put("report", TestReportJson.write(given.report()))
        .put("purpose", PurposeJson.write(given.purpose()))
        .put("rule", DecisionRuleJson.write(given.rule()))
        .node();
  }
}
