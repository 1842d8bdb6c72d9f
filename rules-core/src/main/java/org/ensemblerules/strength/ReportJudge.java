package org.ensemblerules.strength;

import com.google.common.collect.Sets;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.ensemblerules.measure.Quantity;
import org.ensemblerules.source.InvalidValueException;
import org.ensemblerules.source.OriginId;

/**
 * Judges laboratory reports for a named purpose and under a named decision rule: each direction on
 * its own, the strictest counts. Neither the purpose nor the rule has a usual value; whoever asks
 * says both, and each result names them.
 *
 * <p>Immutable, and safe for use by many threads. {@code GearRules.judge} hands it out.
 *
 * @see DecisionRule
 * @see Purpose
 * @since 0.1
 */
public final class ReportJudge {
  private final StrengthTables tables;
  private final Purpose purpose;
  private final DecisionRule rule;

  ReportJudge(StrengthTables tables, Purpose purpose, DecisionRule rule) {
    this.tables = tables;
    this.purpose = Objects.requireNonNull(purpose, "purpose");
    this.rule = Objects.requireNonNull(rule, "rule");
  }

  /**
   * Returns what it judges for.
   *
   * @return the purpose; never null
   */
  public Purpose purpose() {
    return purpose;
  }

  /**
   * Returns the rule that it applies.
   *
   * @return the rule; never null
   */
  public DecisionRule rule() {
    return rule;
  }

  /**
   * Judges for another purpose.
   *
   * @param other the purpose; not null
   * @return the same under the same rule; never null
   */
  public ReportJudge with(Purpose other) {
    return new ReportJudge(tables, other, rule);
  }

  /**
   * Judges under another decision rule.
   *
   * @param other the rule; not null
   * @return the same for the same purpose; never null
   */
  public ReportJudge with(DecisionRule other) {
    return new ReportJudge(tables, purpose, other);
  }

  /**
   * Judges a report against what a product edition requires.
   *
   * @param product the edition that the element's label claims; not null
   * @param report the report; not null
   * @return the outcome with every number used, or why there is no result; never null
   */
  public Result judge(OriginId product, TestReport report) {
    Objects.requireNonNull(product, "product");
    return new Judging(tables, purpose, rule).judge(product, report);
  }

  /** What a test report comes to, for a named purpose and under a named rule. */
  public sealed interface Result {
    /**
     * Returns what it was judged for.
     *
     * @return the purpose; never null
     */
    Purpose purpose();

    /**
     * Returns the rule that was applied, or was to be.
     *
     * @return the rule; never null
     */
    DecisionRule rule();
  }

  /**
   * The specimens were judged.
   *
   * @param outcome the strictest outcome of all directions; not null
   * @param directions each direction on its own, at least one
   * @param requirement the requirement judged against; not null
   * @param method the test method; not null
   * @param purpose what it was judged for; not null
   * @param rule the decision rule applied; not null
   * @param origin where the specimens came from; not null
   * @param remarks what else a reader must know; not null
   */
  public record Judged(
      TestOutcome outcome,
      List<DirectionResult> directions,
      RequirementRow requirement,
      MethodRow method,
      Purpose purpose,
      DecisionRule rule,
      SpecimenOrigin origin,
      Set<Remark> remarks)
      implements Result {
    /**
     * Copies the lists.
     *
     * @throws InvalidValueException if there is no direction
     */
    public Judged {
      Objects.requireNonNull(outcome, "outcome");
      directions = List.copyOf(directions);
      InvalidValueException.require(
          !directions.isEmpty(), "Judged.directions", directions, "at least one");
      Objects.requireNonNull(requirement, "requirement");
      Objects.requireNonNull(method, "method");
      Objects.requireNonNull(origin, "origin");
      remarks = Sets.immutableEnumSet(remarks);
    }

    /**
     * Returns what one direction comes to, on one line: its outcome, every number used and, of a
     * seam or wherever a laboratory recorded it, what gave way.
     *
     * @param direction one of the directions; not null
     * @return the text; never null
     */
    public String text(DirectionResult direction) {
      String numbers =
          direction.direction()
              + " "
              + direction.outcome()
              + ", "
              + direction.figures().stream()
                  .map(Object::toString)
                  .collect(Collectors.joining(", "));
      Map<FailureMode, Integer> failures = direction.failures();
      boolean recorded = !failures.keySet().equals(Set.of(FailureMode.NOT_RECORDED));
      if (!recorded && !requirement.fabricFailsFirst()) {
        return numbers;
      }
      return numbers
          + ", gave way: "
          + failures.entrySet().stream()
              .map(each -> each.getKey() + " " + each.getValue())
              .collect(Collectors.joining(", "));
    }

    /**
     * Returns a remark in words, with the numbers that it is about.
     *
     * @param remark one of the remarks; not null
     * @return the text; never null
     */
    public String text(Remark remark) {
      Optional<Quantity> second = requirement.limit().alsoPrinted();
      return remark == Remark.SECOND_UNIT_WOULD_DIFFER && second.isPresent()
          ? "the limit is printed as "
              + requirement.limit().value()
              + " and as "
              + second.get()
              + "; "
              + remark.text()
          : remark.text();
    }

    /**
     * Tells whether the element asked about was cut up and is to be retired, whatever the outcome.
     *
     * @return true if a destructive test cut this element
     */
    public boolean elementCutIsRetired() {
      return remarks.contains(Remark.ELEMENT_CUT_IS_RETIRED);
    }
  }

  /**
   * The specimens could not be judged. This is never a pass.
   *
   * @param reason why; not null
   * @param detail the particulars in words; not null
   * @param requirement the requirement looked at; empty if none was found
   * @param purpose what was to be judged for; not null
   * @param rule the decision rule that was to be applied; not null
   */
  public record NoResult(
      NoResultReason reason,
      String detail,
      Optional<RequirementRow> requirement,
      Purpose purpose,
      DecisionRule rule)
      implements Result {
    /** Checks for nulls. */
    public NoResult {
      Objects.requireNonNull(reason, "reason");
      Objects.requireNonNull(detail, "detail");
      Objects.requireNonNull(requirement, "requirement");
    }
  }
}
