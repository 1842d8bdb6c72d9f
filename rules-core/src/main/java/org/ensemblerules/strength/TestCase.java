package org.ensemblerules.strength;

import java.util.Objects;
import org.ensemblerules.source.InvalidValueException;
import org.ensemblerules.source.OriginId;

/**
 * A laboratory's report with what it is to be judged by.
 *
 * @param id the owner's name for it, 1 to 100 characters; not null
 * @param product the product edition whose requirement it is judged against; not null
 * @param report the report; not null
 * @param purpose what it is judged for; not null
 * @param rule the decision rule; not null
 * @since 0.1
 */
public record TestCase(
    String id, OriginId product, TestReport report, Purpose purpose, DecisionRule rule) {
  /**
   * Checks the name.
   *
   * @throws InvalidValueException if the name is blank or too long
   */
  public TestCase {
    requireId(id);
    Objects.requireNonNull(product, "product");
    Objects.requireNonNull(report, "report");
    Objects.requireNonNull(purpose, "purpose");
    Objects.requireNonNull(rule, "rule");
  }

  /**
   * Checks a name alone.
   *
   * @param id the name; not null
   * @return the name
   * @throws InvalidValueException if it is blank or too long
   */
  public static String requireId(String id) {
    return InvalidValueException.requireText("TestCase.id", id, 100);
  }
}
