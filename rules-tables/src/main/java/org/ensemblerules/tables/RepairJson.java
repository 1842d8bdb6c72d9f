package org.ensemblerules.tables;

import java.util.Objects;
import org.ensemblerules.repair.RepairPlan;
import org.ensemblerules.source.Checked;
import org.ensemblerules.tables.codec.AssessmentTree;
import org.ensemblerules.tables.codec.RepairTree;
import org.ensemblerules.tables.json.JsonLine;
import org.ensemblerules.tables.json.JsonReader;
import org.ensemblerules.tables.message.JsonFault;
import org.ensemblerules.tables.message.RepairRequest;

/**
 * Reads what is to be repaired on an element and by whom, in the form of {@code
 * repair-request.schema.json} of this package's {@code schema} folder, and writes what becomes of
 * it, in the form of {@code repair-answer.schema.json}. {@code null} is refused, and so are fields
 * that nobody knows and fields given twice. Safe for use by many threads.
 *
 * @since 0.1
 */
public final class RepairJson {
  private static final int LONGEST = 1024 * 1024;
  private static final JsonReader READER = AssessmentTree.reader(LONGEST);

  private RepairJson() {}

  /**
   * Reads what is asked.
   *
   * @param sourceName the name of the text, for faults, such as a file's path; not null
   * @param json the text, at most 1,048,576 characters, nested at most 16 deep; not null
   * @return what is asked, or every fault with its place; never null
   */
  public static Checked<RepairRequest, JsonFault> read(String sourceName, String json) {
    Objects.requireNonNull(sourceName, "sourceName");
    Objects.requireNonNull(json, "json");
    return READER.read(sourceName, json, RepairTree::read);
  }

  /**
   * Writes the answer with all its text, so that it can be read when the tables have moved on. What
   * is said of cost is marked as advice and stands apart from the orders.
   *
   * @param request what was asked; not null
   * @param plan the answer; not null
   * @return one line of JSON without a line end, its fields in a fixed order; never null
   */
  public static String write(RepairRequest request, RepairPlan plan) {
    Objects.requireNonNull(request, "request");
    Objects.requireNonNull(plan, "plan");
    return JsonLine.of(RepairTree.write(request, plan));
  }
}
