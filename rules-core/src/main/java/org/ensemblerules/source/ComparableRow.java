package org.ensemblerules.source;

import java.util.ArrayList;
import java.util.List;

/**
 * A row that says how strict it is, set against another of its type, and what it speaks of. This is
 * the one home of both questions: whoever lays rows beside each other, audits them or tells what
 * differs between two sets asks the rows.
 *
 * @param <R> the row's own type
 * @since 0.1
 */
public interface ComparableRow<R extends ComparableRow<R>> extends Row {
  /**
   * Returns what the row speaks of, as element, use, part and defect.
   *
   * @return the values, spelled as in {@link #canonical()}; never null
   */
  List<String> topic();

  /**
   * Returns what narrows the topic: rows that differ only in it speak of neighboring cases.
   *
   * @return the values; empty if nothing does; never null
   */
  default List<String> narrowedTo() {
    return List.of();
  }

  /**
   * Returns the values that are mere words, or a place in a list: others in their stead ask for the
   * same.
   *
   * @return the values, spelled as in {@link #canonical()}; never null
   */
  default List<String> words() {
    return List.of();
  }

  /**
   * Returns the values without mere words, so that none can be forgotten.
   *
   * @return the values; never null
   */
  default List<String> meaning() {
    List<String> values = new ArrayList<>(canonical());
    words().forEach(values::remove);
    return List.copyOf(values);
  }

  /**
   * Compares the row with another of its type. A row is at least as strict as another if it applies
   * wherever the other does and, whatever is asked there, answers no milder. Rows on different
   * matters are undecided.
   *
   * @param other the other row; not null
   * @return how strict this row is, set against the other, with the fields that decided; never null
   */
  ComparedFields compareFields(R other);

  /**
   * Compares the row with another of its type.
   *
   * @param other the other row; not null
   * @return how strict this row is, set against the other; never null
   */
  default Comparison compareStrictness(R other) {
    return compareFields(other).strictness();
  }

  /**
   * Tells how strict a table becomes by this row beside those that it has.
   *
   * @return stricter if it can only ask for more, milder if it can only allow more; undecided
   *     unless the type says so; never null
   */
  default Comparison asOneMore() {
    return Comparison.UNDECIDED;
  }
}
