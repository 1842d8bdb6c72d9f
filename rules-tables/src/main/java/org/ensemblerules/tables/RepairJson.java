package org.ensemblerules.tables;

import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.ensemblerules.defect.Finding;
import org.ensemblerules.effect.Doer;
import org.ensemblerules.gear.Element;
import org.ensemblerules.repair.CostPolicy;
import org.ensemblerules.repair.RepairCost;
import org.ensemblerules.repair.RepairOrders;
import org.ensemblerules.repair.RepairPlan;
import org.ensemblerules.source.Checked;
import org.ensemblerules.source.InvalidValueException;
import org.ensemblerules.tables.codec.AssessmentTree;
import org.ensemblerules.tables.codec.RepairTree;
import org.ensemblerules.tables.json.JsonLine;
import org.ensemblerules.tables.json.JsonReader;

/**
 * Reads what is to be repaired on an element and by whom, in the form of {@code
 * repair-request.schema.json} of this package's {@code schema} folder, and writes what becomes of
 * it, in the form of {@code repair-answer.schema.json}. {@code null} is refused, and so are fields
 * that nobody knows and fields given twice. Safe for use by many threads.
 */
public final class RepairJson {
  private static final int LONGEST = 1024 * 1024;
  private static final JsonReader READER = AssessmentTree.reader(LONGEST);

  private RepairJson() {}

  /**
   * Who is to do it.
   *
   * @param doer who; not null
   * @param on on which day; not null
   */
  public record Work(Doer doer, LocalDate on) {
    /** Checks for nulls. */
    public Work {
      Objects.requireNonNull(doer, "doer");
      Objects.requireNonNull(on, "on");
    }
  }

  /**
   * What it costs, and what the owner thinks worth it.
   *
   * @param policy the owner's policy; not null
   * @param cost the cost; not null
   */
  public record Cost(CostPolicy policy, RepairCost cost) {
    /** Checks for nulls. */
    public Cost {
      Objects.requireNonNull(policy, "policy");
      Objects.requireNonNull(cost, "cost");
    }
  }

  /** What the work is about. */
  public sealed interface Subject {
    /**
     * Damage that was found.
     *
     * @param findings what was found, at least one; not null
     */
    record Damage(List<Finding> findings) implements Subject {
      /**
       * Copies the list.
       *
       * @throws InvalidValueException if it is empty
       */
      public Damage {
        findings = List.copyOf(findings);
        InvalidValueException.require(
            !findings.isEmpty(), "Damage.findings", findings, "at least one");
      }
    }

    /** A liner that was opened for its complete inspection, and is to be sewn shut. */
    record LinerOpened() implements Subject {}
  }

  /**
   * What is asked.
   *
   * @param element the element; not null
   * @param subject what the work is about; not null
   * @param work who is to do it; empty if nobody is named
   * @param cost what it costs; empty if nobody asks for advice on that
   */
  public record Request(
      Element element, Subject subject, Optional<Work> work, Optional<Cost> cost) {
    /** Checks for nulls. */
    public Request {
      Objects.requireNonNull(element, "element");
      Objects.requireNonNull(subject, "subject");
      Objects.requireNonNull(work, "work");
      Objects.requireNonNull(cost, "cost");
    }

    /**
     * Asks for the answer.
     *
     * @param orders the function that answers; not null
     * @return the plan; never null
     */
    public RepairPlan plan(RepairOrders orders) {
      if (subject instanceof Subject.Damage damage) {
        return work.map(who -> orders.plan(element, damage.findings(), who.doer(), who.on()))
            .orElseGet(() -> orders.plan(element, damage.findings()));
      }
      return work.map(who -> orders.closeLiner(element, who.doer(), who.on()))
          .orElseGet(() -> orders.closeLiner(element));
    }
  }

  /**
   * Reads what is asked.
   *
   * @param sourceName the name of the text, for faults, such as a file's path; not null
   * @param json the text, at most 1,048,576 characters, nested at most 16 deep; not null
   * @return what is asked, or every fault with its place; never null
   */
  public static Checked<Request, JsonFault> read(String sourceName, String json) {
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
  public static String write(Request request, RepairPlan plan) {
    Objects.requireNonNull(request, "request");
    Objects.requireNonNull(plan, "plan");
    return JsonLine.of(RepairTree.write(request, plan));
  }
}
