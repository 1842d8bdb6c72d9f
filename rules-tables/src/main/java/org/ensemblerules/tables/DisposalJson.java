package org.ensemblerules.tables;

import java.util.List;
import java.util.Objects;
import org.ensemblerules.retirement.RouteAnswer;
import org.ensemblerules.source.Checked;
import org.ensemblerules.tables.codec.AssessmentTree;
import org.ensemblerules.tables.codec.DisposalTree;
import org.ensemblerules.tables.json.JsonLine;
import org.ensemblerules.tables.json.JsonReader;
import org.ensemblerules.tables.message.DisposalRequest;
import org.ensemblerules.tables.message.JsonFault;

/**
 * Reads what is known of a retired element, in the form of {@code disposal-request.schema.json} of
 * this package's {@code schema} folder, and writes what may become of it, in the form of {@code
 * disposal-answer.schema.json}. {@code null} is refused, and so are fields that nobody knows and
 * fields given twice. Safe for use by many threads.
 *
 * @since 0.1
 */
public final class DisposalJson {
  private static final int LONGEST = 1024 * 1024;
  private static final JsonReader READER = AssessmentTree.reader(LONGEST);

  private DisposalJson() {}

  /**
   * Reads what is asked.
   *
   * @param sourceName the name of the text, for faults, such as a file's path; not null
   * @param json the text, at most 1,048,576 characters, nested at most 16 deep; not null
   * @return what is asked, or every fault with its place; never null
   */
  public static Checked<DisposalRequest, JsonFault> read(String sourceName, String json) {
    Objects.requireNonNull(sourceName, "sourceName");
    Objects.requireNonNull(json, "json");
    return READER.read(sourceName, json, DisposalTree::read);
  }

  /**
   * Writes the answer with all its text, so that it can be read when the tables have moved on.
   *
   * @param request what was asked; not null
   * @param answers the answer for each route; not null
   * @return one line of JSON without a line end, its fields in a fixed order; never null
   */
  public static String write(DisposalRequest request, List<RouteAnswer> answers) {
    Objects.requireNonNull(request, "request");
    Objects.requireNonNull(answers, "answers");
    return JsonLine.of(DisposalTree.write(request, answers));
  }
}
