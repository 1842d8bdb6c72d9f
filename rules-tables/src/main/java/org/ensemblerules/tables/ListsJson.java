package org.ensemblerules.tables;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Objects;
import java.util.function.Function;
import org.ensemblerules.issue.Fitting;
import org.ensemblerules.issue.Member;
import org.ensemblerules.issue.SafetyNotice;
import org.ensemblerules.source.Checked;
import org.ensemblerules.tables.codec.AssessmentTree;
import org.ensemblerules.tables.codec.CostTree;
import org.ensemblerules.tables.codec.FittingTree;
import org.ensemblerules.tables.codec.MemberTree;
import org.ensemblerules.tables.codec.NoticeTree;
import org.ensemblerules.tables.codec.OrderTree;
import org.ensemblerules.tables.codec.SetEntryTree;
import org.ensemblerules.tables.codec.WhereaboutsTree;
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
 * @since 0.1
 */
public final class ListsJson {
  private static final int LONGEST = 1024 * 1024;
  private static final JsonReader READER = AssessmentTree.reader(LONGEST);

  /** Members, in the form of {@code member.schema.json}. */
  public static final Form<Member> MEMBERS = new Form<>(MemberTree::read, MemberTree::write);

  /** Where elements are, in the form of {@code whereabouts.schema.json}. */
  public static final Form<KeptGear> WHEREABOUTS =
      new Form<>(WhereaboutsTree::read, WhereaboutsTree::write);

  /** Entries about sets, in the form of {@code set-entry.schema.json}. */
  public static final Form<SetEntry> SETS = new Form<>(SetEntryTree::read, SetEntryTree::write);

  /** How elements were seen to meet, in the form of {@code fitting.schema.json}. */
  public static final Form<Fitting> FITTINGS = new Form<>(FittingTree::read, FittingTree::write);

  /** Orders and what came for them, in the form of {@code order.schema.json}. */
  public static final Form<DeliveredOrder> ORDERS = new Form<>(OrderTree::read, OrderTree::write);

  /** Safety notices, in the form of {@code notice.schema.json}. */
  public static final Form<SafetyNotice> NOTICES = new Form<>(NoticeTree::read, NoticeTree::write);

  /** What things cost, in the form of {@code cost.schema.json}. */
  public static final Form<CostEntry> COSTS = new Form<>(CostTree::read, CostTree::write);

  private ListsJson() {}

  /**
   * How the entries of a list are read and written.
   *
   * @param <T> what an entry says
   */
  public static final class Form<T> implements JsonLines.Reading<T> {
    private final JsonDecoder<T> decoder;
    private final Function<T, JsonNode> writer;

    private Form(JsonDecoder<T> decoder, Function<T, JsonNode> writer) {
      this.decoder = decoder;
      this.writer = writer;
    }

    /**
     * Reads an entry.
     *
     * @param sourceName the name of the text, for faults; not null
     * @param json the text, at most 1,048,576 characters, nested at most 16 deep; not null
     * @return what it says, or every fault with its place; never null
     */
    @Override
    public Checked<T, JsonFault> read(String sourceName, String json) {
      Objects.requireNonNull(sourceName, "sourceName");
      Objects.requireNonNull(json, "json");
      return READER.read(sourceName, json, decoder);
    }

    /**
     * Writes an entry.
     *
     * @param entry what it says; not null
     * @return one line of JSON without a line end, its fields in a fixed order; reading it gives an
     *     equal entry; never null
     */
    public String write(T entry) {
      return JsonLine.of(writer.apply(Objects.requireNonNull(entry, "entry")));
    }
  }
}
