package org.ensemblerules.audit.difference;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.ensemblerules.source.Comparison;
import org.ensemblerules.source.Row;
import org.ensemblerules.testkit.FrozenRules;

/** How strict rows of one type are is an order, as far as it goes. */
class OrdersProperties {
  private static final List<Row> ROWS = FrozenRules.rules().tables().rows();

  private static Row row(int of) {
    return ROWS.get(of % ROWS.size());
  }

  private static Comparison compare(Row earlier, Row later) {
    return ComparedTable.of(earlier).compare(earlier, later);
  }

  @Property(tries = 5000)
  void eachIsTheOtherSeenFromTheOtherSide(
      @ForAll @IntRange(max = 100_000) int one, @ForAll @IntRange(max = 100_000) int other) {
    Row earlier = row(one);
    List<Row> alike =
        ROWS.stream().filter(row -> row.getClass().equals(earlier.getClass())).toList();
    Row later = alike.get(other % alike.size());
    assertThat(compare(later, earlier)).isEqualTo(compare(earlier, later).seenFromTheOther());
    assertThat(compare(earlier, earlier)).isEqualTo(Comparison.SAME);
  }

  @Property(tries = 5000)
  void strictnessPassesOn(
      @ForAll @IntRange(max = 100_000) int one,
      @ForAll @IntRange(max = 100_000) int two,
      @ForAll @IntRange(max = 100_000) int three) {
    Row first = row(one);
    List<Row> alike = ROWS.stream().filter(row -> row.getClass().equals(first.getClass())).toList();
    Row second = alike.get(two % alike.size());
    Row third = alike.get(three % alike.size());
    if (compare(first, second) == Comparison.STRICTER
        && compare(second, third) == Comparison.STRICTER) {
      assertThat(compare(first, third)).isEqualTo(Comparison.STRICTER);
    }
  }
}
