package org.ensemblerules.tables;

import java.util.Objects;
import org.ensemblerules.issue.Fitting;
import org.ensemblerules.issue.Member;
import org.ensemblerules.issue.SafetyNotice;
import org.ensemblerules.source.Checked;
import org.ensemblerules.tables.codec.AssessmentTree;
import org.ensemblerules.tables.codec.ListsTree;
import org.ensemblerules.tables.json.JsonDecoder;
import org.ensemblerules.tables.json.JsonLine;
import org.ensemblerules.tables.json.JsonReader;
import org.ensemblerules.tables.message.CostEntry;
import org.ensemblerules.tables.message.DeliveredOrder;
import org.ensemblerules.tables.message.JsonFault;
import org.ensemblerules.tables.message.KeptGear;
import org.ensemblerules.tables.message.SetEntry;

/**
 * Reads and writes the lists that a department keeps beside the records of its gear: members, where
 * gear is, what a set must have, how sets were seen to meet, orders with what came for them, safety
 * notices and costs. Each entry has the form of the schema of its name in this package's {@code
 * schema} folder, as in {@code member.schema.json}. {@code null} is refused, and so are fields that
 * nobody knows and fields given twice. Safe for use by many threads.
 *
 * <p>Each text that is read has at most 1,048,576 characters and is nested at most 16 deep.
 */
public final class ListsJson {
  private static final int LONGEST = 1024 * 1024;
  private static final JsonReader READER = AssessmentTree.reader(LONGEST);

  private ListsJson() {}

  /**
   * Reads a member, in the form of {@code member.schema.json}.
   *
   * @param sourceName the name of the text, for faults; not null
   * @param json the text; not null
   * @return what it says, or every fault with its place; never null
   */
  public static Checked<Member, JsonFault> readMember(String sourceName, String json) {
    return read(sourceName, json, ListsTree::readMember);
  }

  /**
   * Writes a member, in the form of {@code member.schema.json}.
   *
   * @param entry what it says; not null
   * @return one line of JSON without a line end, its fields in a fixed order; never null
   */
  public static String write(Member entry) {
    return JsonLine.of(ListsTree.write(Objects.requireNonNull(entry, "entry")));
  }

  /**
   * Reads where an element is, in the form of {@code whereabouts.schema.json}.
   *
   * @param sourceName the name of the text, for faults; not null
   * @param json the text; not null
   * @return what it says, or every fault with its place; never null
   */
  public static Checked<KeptGear, JsonFault> readWhereabouts(String sourceName, String json) {
    return read(sourceName, json, ListsTree::readWhereabouts);
  }

  /**
   * Writes where an element is, in the form of {@code whereabouts.schema.json}.
   *
   * @param entry what it says; not null
   * @return one line of JSON without a line end, its fields in a fixed order; never null
   */
  public static String write(KeptGear entry) {
    return JsonLine.of(ListsTree.write(Objects.requireNonNull(entry, "entry")));
  }

  /**
   * Reads an entry about sets, in the form of {@code set-entry.schema.json}.
   *
   * @param sourceName the name of the text, for faults; not null
   * @param json the text; not null
   * @return what it says, or every fault with its place; never null
   */
  public static Checked<SetEntry, JsonFault> readSetEntry(String sourceName, String json) {
    return read(sourceName, json, ListsTree::readSetEntry);
  }

  /**
   * Writes an entry about sets, in the form of {@code set-entry.schema.json}.
   *
   * @param entry what it says; not null
   * @return one line of JSON without a line end, its fields in a fixed order; never null
   */
  public static String write(SetEntry entry) {
    return JsonLine.of(ListsTree.write(Objects.requireNonNull(entry, "entry")));
  }

  /**
   * Reads how two elements were seen to meet, in the form of {@code fitting.schema.json}.
   *
   * @param sourceName the name of the text, for faults; not null
   * @param json the text; not null
   * @return what it says, or every fault with its place; never null
   */
  public static Checked<Fitting, JsonFault> readFitting(String sourceName, String json) {
    return read(sourceName, json, ListsTree::readFitting);
  }

  /**
   * Writes how two elements were seen to meet, in the form of {@code fitting.schema.json}.
   *
   * @param entry what it says; not null
   * @return one line of JSON without a line end, its fields in a fixed order; never null
   */
  public static String write(Fitting entry) {
    return JsonLine.of(ListsTree.write(Objects.requireNonNull(entry, "entry")));
  }

  /**
   * Reads an order and what came for it, in the form of {@code order.schema.json}.
   *
   * @param sourceName the name of the text, for faults; not null
   * @param json the text; not null
   * @return what it says, or every fault with its place; never null
   */
  public static Checked<DeliveredOrder, JsonFault> readOrder(String sourceName, String json) {
    return read(sourceName, json, ListsTree::readOrder);
  }

  /**
   * Writes an order and what came for it, in the form of {@code order.schema.json}.
   *
   * @param entry what it says; not null
   * @return one line of JSON without a line end, its fields in a fixed order; never null
   */
  public static String write(DeliveredOrder entry) {
    return JsonLine.of(ListsTree.write(Objects.requireNonNull(entry, "entry")));
  }

  /**
   * Reads a safety notice, in the form of {@code notice.schema.json}.
   *
   * @param sourceName the name of the text, for faults; not null
   * @param json the text; not null
   * @return what it says, or every fault with its place; never null
   */
  public static Checked<SafetyNotice, JsonFault> readNotice(String sourceName, String json) {
    return read(sourceName, json, ListsTree::readNotice);
  }

  /**
   * Writes a safety notice, in the form of {@code notice.schema.json}.
   *
   * @param entry what it says; not null
   * @return one line of JSON without a line end, its fields in a fixed order; never null
   */
  public static String write(SafetyNotice entry) {
    return JsonLine.of(ListsTree.write(Objects.requireNonNull(entry, "entry")));
  }

  /**
   * Reads an entry of what things cost, in the form of {@code cost.schema.json}.
   *
   * @param sourceName the name of the text, for faults; not null
   * @param json the text; not null
   * @return what it says, or every fault with its place; never null
   */
  public static Checked<CostEntry, JsonFault> readCost(String sourceName, String json) {
    return read(sourceName, json, ListsTree::readCost);
  }

  /**
   * Writes an entry of what things cost, in the form of {@code cost.schema.json}.
   *
   * @param entry what it says; not null
   * @return one line of JSON without a line end, its fields in a fixed order; never null
   */
  public static String write(CostEntry entry) {
    return JsonLine.of(ListsTree.write(Objects.requireNonNull(entry, "entry")));
  }

  private static <T> Checked<T, JsonFault> read(
      String sourceName, String json, JsonDecoder<T> decoder) {
    Objects.requireNonNull(sourceName, "sourceName");
    Objects.requireNonNull(json, "json");
    return READER.read(sourceName, json, decoder);
  }
}
