package org.ensemblerules.strength;

import com.google.common.collect.ImmutableSortedMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.ensemblerules.source.ComparableRow;
import org.ensemblerules.source.ComparedFields;
import org.ensemblerules.source.Comparison;
import org.ensemblerules.source.InvalidValueException;
import org.ensemblerules.source.Provenance;

/**
 * Says what a test method needs.
 *
 * @param provenance where the row comes from; not null
 * @param method the method; not null
 * @param title what it is, in our own words, 1 to 200 characters; not null
 * @param destructive whether it cuts the element up
 * @param leastTested how many specimens are tested in a direction that {@code leastTestedIn} does
 *     not name, 1 or more
 * @param leastTestedIn how many in directions with a number of their own, each 1 or more; not null
 * @param leastKept how many must be left in each direction after discarding, 1 or more
 * @since 0.1
 */
public record MethodRow(
    Provenance provenance,
    TestMethod method,
    String title,
    boolean destructive,
    int leastTested,
    Map<Direction, Integer> leastTestedIn,
    int leastKept)
    implements ComparableRow<MethodRow> {
  /**
   * Checks the values.
   *
   * @throws InvalidValueException if the title is blank or a number below 1
   */
  public MethodRow {
    Objects.requireNonNull(provenance, "provenance");
    Objects.requireNonNull(method, "method");
    InvalidValueException.requireText("MethodRow.title", title, 200);
    leastTestedIn = ImmutableSortedMap.copyOf(leastTestedIn);
    InvalidValueException.require(
        leastTested >= 1 && leastTestedIn.values().stream().allMatch(least -> least >= 1),
        "MethodRow.leastTested",
        leastTested + " " + leastTestedIn,
        "1 or more");
    InvalidValueException.require(leastKept >= 1, "MethodRow.leastKept", leastKept, "1 or more");
  }

  /**
   * Returns how many specimens the method tests in a direction.
   *
   * @param direction the direction; not null
   * @return the number, 1 or more
   */
  public int leastTested(Direction direction) {
    return leastTestedIn.getOrDefault(direction, leastTested);
  }

  @Override
  public List<String> canonical() {
    return List.of(
        method.value(),
        title,
        Boolean.toString(destructive),
        Integer.toString(leastTested),
        leastTestedIn.toString(),
        Integer.toString(leastKept));
  }

  @Override
  public List<String> topic() {
    return List.of(method.value());
  }

  @Override
  public List<String> words() {
    return List.of(title);
  }

  @Override
  public ComparedFields compareFields(MethodRow other) {
    ComparedFields compared =
        ComparedFields.on(method.equals(other.method) && destructive == other.destructive)
            .with("leastTested", Comparison.moreIsStricter(leastTested, other.leastTested))
            .with("leastKept", Comparison.moreIsStricter(leastKept, other.leastKept));
    for (Direction direction : Direction.values()) {
      compared =
          compared.with(
              "leastTestedIn",
              Comparison.moreIsStricter(leastTested(direction), other.leastTested(direction)));
    }
    return compared;
  }
}
