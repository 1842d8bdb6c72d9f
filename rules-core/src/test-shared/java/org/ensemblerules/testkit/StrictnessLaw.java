package org.ensemblerules.testkit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.function.BiPredicate;
import net.jqwik.api.statistics.Statistics;
import org.ensemblerules.source.ComparableRow;
import org.ensemblerules.source.Comparison;

/** What how strict rows are has to do with what they answer. */
public final class StrictnessLaw {
  private StrictnessLaw() {}

  /**
   * Holds that a row no less strict than another answers no milder, and that both see each other
   * alike. That rows of each outcome were tried is counted.
   *
   * @param one a row
   * @param other another of its type
   * @param noMilder whether the first answers no milder than the second, for what was asked
   * @param <R> the type of the rows
   */
  public static <R extends ComparableRow<R>> void holds(
      R one, R other, BiPredicate<R, R> noMilder) {
    Comparison compared = one.compareStrictness(other);
    assertThat(other.compareStrictness(one)).isEqualTo(compared.seenFromTheOther());
    assertThat(one.compareStrictness(one)).isEqualTo(Comparison.SAME);
    if (compared.isAtLeastAsStrict()) {
      assertThat(noMilder.test(one, other)).as("%s is %s: %s", one, compared, other).isTrue();
    }
    if (compared.seenFromTheOther().isAtLeastAsStrict()) {
      assertThat(noMilder.test(other, one)).as("%s is %s: %s", one, compared, other).isTrue();
    }
    Statistics.label("strictness")
        .collect(compared == Comparison.STRICTER || compared == Comparison.MILDER)
        .coverage(coverage -> coverage.check(true).percentage(share -> share > 3));
  }

  /**
   * Holds that strictness passes on.
   *
   * @param one a row
   * @param two another of its type
   * @param three a third
   * @param <R> the type of the rows
   */
  public static <R extends ComparableRow<R>> void passesOn(R one, R two, R three) {
    Comparison first = one.compareStrictness(two);
    Comparison second = two.compareStrictness(three);
    if (first.isAtLeastAsStrict() && second.isAtLeastAsStrict()) {
      assertThat(one.compareStrictness(three)).isEqualTo(first.and(second));
    }
  }
}
