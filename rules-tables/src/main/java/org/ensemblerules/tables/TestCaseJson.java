package org.ensemblerules.tables;

import java.util.Objects;
import org.ensemblerules.source.Checked;
import org.ensemblerules.strength.ReportJudge;
import org.ensemblerules.strength.TestCase;
import org.ensemblerules.tables.codec.AssessmentTree;
import org.ensemblerules.tables.codec.TestAnswerTree;
import org.ensemblerules.tables.codec.TestCaseTree;
import org.ensemblerules.tables.json.JsonLine;
import org.ensemblerules.tables.json.JsonReader;
import org.ensemblerules.tables.message.JsonFault;

/**
 * Reads and writes laboratory reports as JSON, in the form of {@code test-case.schema.json} of this
 * package's {@code schema} folder. What is not known is left out; {@code null} is refused, and so
 * are fields that nobody knows and fields given twice. Safe for use by many threads.
 *
 * @since 0.1
 */
public final class TestCaseJson {
  private static final int LONGEST = 16 * 1024 * 1024;
  private static final JsonReader READER = AssessmentTree.reader(LONGEST);

  private TestCaseJson() {}

  /**
   * Reads a report.
   *
   * @param sourceName the name of the text, for faults, such as a file's path; not null
   * @param json the text, at most 16,777,216 characters, nested at most 16 deep; not null
   * @return the report with what it is judged by, or every fault with its place; never null
   */
  public static Checked<TestCase, JsonFault> read(String sourceName, String json) {
    Objects.requireNonNull(sourceName, "sourceName");
    Objects.requireNonNull(json, "json");
    return READER.read(sourceName, json, TestCaseTree::read);
  }

  /**
   * Writes what a report comes to, in the form of {@code test-answer.schema.json}, with every
   * number used and all its text, so that it can be read when the tables have moved on.
   *
   * @param given the report with what it was judged by; not null
   * @param result what it comes to; not null
   * @return one line of JSON without a line end, its fields in a fixed order; never null
   */
  public static String write(TestCase given, ReportJudge.Result result) {
    return JsonLine.of(
        TestAnswerTree.write(
            Objects.requireNonNull(given, "given"), Objects.requireNonNull(result, "result")));
  }

  /**
   * Writes a report.
   *
   * @param given the report with what it is judged by; not null
   * @return one line of JSON without a line end, its fields in a fixed order; reading it gives an
   *     equal value; never null
   */
  public static String write(TestCase given) {
    return JsonLine.of(TestCaseTree.write(Objects.requireNonNull(given, "given")));
  }
}
