package org.ensemblerules.tables;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.ensemblerules.effect.CleaningKind;
import org.ensemblerules.effect.RepairClass;
import org.ensemblerules.fleet.CareCosts;
import org.ensemblerules.fleet.UnitCost;
import org.ensemblerules.gear.Element;
import org.ensemblerules.gear.ElementId;
import org.ensemblerules.issue.Fitting;
import org.ensemblerules.issue.Join;
import org.ensemblerules.issue.Member;
import org.ensemblerules.issue.Order;
import org.ensemblerules.issue.SafetyNotice;
import org.ensemblerules.issue.SetRow;
import org.ensemblerules.issue.SizeFit;
import org.ensemblerules.issue.Whereabouts;
import org.ensemblerules.repair.CostPolicy;
import org.ensemblerules.source.Checked;
import org.ensemblerules.source.InvalidValueException;
import org.ensemblerules.tables.codec.AssessmentTree;
import org.ensemblerules.tables.codec.ListsTree;
import org.ensemblerules.tables.json.JsonDecoder;
import org.ensemblerules.tables.json.JsonLine;
import org.ensemblerules.tables.json.JsonReader;

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
   * Where an element is.
   *
   * @param element the name of the element; not null
   * @param where who has it and where it is; not null
   */
  public record Kept(ElementId element, Whereabouts where) {
    /** Checks for nulls. */
    public Kept {
      Objects.requireNonNull(element, "element");
      Objects.requireNonNull(where, "where");
    }
  }

  /** An entry of what a department decided about sets. */
  public sealed interface SetEntry {
    /**
     * What a set must have.
     *
     * @param row the row; not null
     */
    record Needs(SetRow row) implements SetEntry {
      /** Checks for null. */
      public Needs {
        Objects.requireNonNull(row, "row");
      }
    }

    /**
     * Where two elements of a set must be shown to meet.
     *
     * @param join the place; not null
     */
    record Meets(Join join) implements SetEntry {
      /** Checks for null. */
      public Meets {
        Objects.requireNonNull(join, "join");
      }
    }

    /**
     * Which sizes fit who needs another.
     *
     * @param fit the sizes; not null
     */
    record Fits(SizeFit fit) implements SetEntry {
      /** Checks for null. */
      public Fits {
        Objects.requireNonNull(fit, "fit");
      }
    }
  }

  /**
   * An order and what came for it.
   *
   * @param order the order; not null
   * @param delivered the elements that came; not null
   */
  public record Delivered(Order order, List<Element> delivered) {
    /** Copies the list. */
    public Delivered {
      Objects.requireNonNull(order, "order");
      delivered = List.copyOf(delivered);
    }
  }

  /** An entry of what things cost. */
  public sealed interface CostEntry {
    /**
     * What new gear costs.
     *
     * @param cost the cost; not null
     */
    record NewGear(UnitCost cost) implements CostEntry {
      /** Checks for null. */
      public NewGear {
        Objects.requireNonNull(cost, "cost");
      }
    }

    /**
     * What a cleaning costs.
     *
     * @param cleaning which; not null
     * @param amount what it costs, 0 or more; not null
     */
    record Cleaning(CleaningKind cleaning, BigDecimal amount) implements CostEntry {
      /**
       * Checks the amount.
       *
       * @throws InvalidValueException if it is out of range
       */
      public Cleaning {
        requireAmount(Map.of(cleaning, amount), Map.of());
      }
    }

    /**
     * What a repair costs.
     *
     * @param repair which; not null
     * @param amount what it costs, 0 or more; not null
     */
    record Repair(RepairClass repair, BigDecimal amount) implements CostEntry {
      /**
       * Checks the amount.
       *
       * @throws InvalidValueException if it is out of range
       */
      public Repair {
        requireAmount(Map.of(), Map.of(repair, amount));
      }
    }

    /**
     * Up to what share of a new element the owner thinks care worth its cost.
     *
     * @param policy the policy; not null
     */
    record Worth(CostPolicy policy) implements CostEntry {
      /** Checks for null. */
      public Worth {
        Objects.requireNonNull(policy, "policy");
      }
    }
  }

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
  public static Checked<Kept, JsonFault> readWhereabouts(String sourceName, String json) {
    return read(sourceName, json, ListsTree::readWhereabouts);
  }

  /**
   * Writes where an element is, in the form of {@code whereabouts.schema.json}.
   *
   * @param entry what it says; not null
   * @return one line of JSON without a line end, its fields in a fixed order; never null
   */
  public static String write(Kept entry) {
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
  public static Checked<Delivered, JsonFault> readOrder(String sourceName, String json) {
    return read(sourceName, json, ListsTree::readOrder);
  }

  /**
   * Writes an order and what came for it, in the form of {@code order.schema.json}.
   *
   * @param entry what it says; not null
   * @return one line of JSON without a line end, its fields in a fixed order; never null
   */
  public static String write(Delivered entry) {
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

  /** The costs of care say which amounts there may be. */
  private static void requireAmount(
      Map<CleaningKind, BigDecimal> cleaning, Map<RepairClass, BigDecimal> repair) {
    try {
      new CareCosts(cleaning, repair);
    } catch (InvalidValueException e) {
      throw new InvalidValueException("CostEntry.amount", e.given(), e.allowed());
    }
  }

  private static <T> Checked<T, JsonFault> read(
      String sourceName, String json, JsonDecoder<T> decoder) {
    Objects.requireNonNull(sourceName, "sourceName");
    Objects.requireNonNull(json, "json");
    return READER.read(sourceName, json, decoder);
  }
}
