package org.ensemblerules.testkit;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.time.LocalDate;
import java.time.YearMonth;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.Tuple;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.source.RowKey;

/** Texts, dates and numbers, among them those that files and programs often spoil. */
public final class ArbitrariesOfTexts {
  private static final LocalDate FIRST = LocalDate.of(MarkedDate.FIRST_YEAR, 1, 1);
  private static final LocalDate LAST = LocalDate.of(MarkedDate.LAST_YEAR, 12, 31);

  private ArbitrariesOfTexts() {}

  /**
   * Returns texts as values hold them: one line, not blank.
   *
   * @param longest the most characters, as Java counts them
   * @return plain texts, texts in any script, and awkward ones
   */
  public static Arbitrary<String> texts(int longest) {
    Arbitrary<String> plain =
        Arbitraries.strings().alpha().numeric().withChars(" -./").ofMinLength(1).ofMaxLength(20);
    Arbitrary<String> awkward =
        Arbitraries.of(
            "\"quoted\" \\ back / slash",
            "{\"event\":\"FOUND\"}",
            "O'Neill & <b>",
            "\u2028line\u2029ends",
            "\uFEFFmark",
            "I\u0131\u0130i\u00DF",
            "\u00A0",
            "\u65E5\u672C\u8A9E",
            "\uD83D\uDE92 engine",
            "e\u0301",
            "null",
            "-0.0",
            "%s ${x}");
    Arbitrary<String> any =
        Arbitraries.integers()
            .between(0x20, 0x2FFFF)
            .filter(point -> Character.getType(point) != Character.SURROGATE)
            .list()
            .ofMinSize(1)
            .ofMaxSize(12)
            .map(
                points -> {
                  StringBuilder text = new StringBuilder();
                  points.forEach(text::appendCodePoint);
                  return text.toString();
                });
    Arbitrary<String> longOnes = Arbitraries.strings().alpha().ofLength(longest);
    return Arbitraries.frequencyOf(
            Tuple.of(6, plain), Tuple.of(3, awkward), Tuple.of(3, any), Tuple.of(1, longOnes))
        .filter(
            text ->
                !text.isBlank()
                    && text.length() <= longest
                    && text.chars().noneMatch(Character::isISOControl));
  }

  /**
   * Returns keys of rows.
   *
   * @return keys
   */
  public static Arbitrary<RowKey> rowKeys() {
    return Arbitraries.strings()
        .alpha()
        .numeric()
        .withChars("-_/@.")
        .ofMinLength(1)
        .ofMaxLength(200)
        .map(RowKey::new);
  }

  /**
   * Returns days of all years that can be given.
   *
   * @return the days
   */
  public static Arbitrary<LocalDate> days() {
    return Arbitraries.longs()
        .between(FIRST.toEpochDay(), LAST.toEpochDay())
        .map(LocalDate::ofEpochDay);
  }

  /**
   * Returns dates to the day, the month, the year, and unknown ones; most in recent years.
   *
   * @return the dates
   */
  public static Arbitrary<MarkedDate> markedDates() {
    Arbitrary<LocalDate> recent =
        Arbitraries.longs()
            .between(LocalDate.of(2005, 1, 1).toEpochDay(), LocalDate.of(2030, 12, 31).toEpochDay())
            .map(LocalDate::ofEpochDay);
    Arbitrary<LocalDate> days = Arbitraries.frequencyOf(Tuple.of(4, recent), Tuple.of(1, days()));
    return Arbitraries.frequencyOf(
        Tuple.of(6, days.map(MarkedDate::of)),
        Tuple.of(3, days.map(day -> new MarkedDate.Month(YearMonth.from(day)))),
        Tuple.of(2, days.map(day -> new MarkedDate.OfYear(day.getYear()))),
        Tuple.of(1, Arbitraries.just(MarkedDate.unknown())));
  }

  /**
   * Returns numbers above zero as quantities hold them, with trailing zeros and exponents.
   *
   * @return the numbers
   */
  public static Arbitrary<BigDecimal> positiveNumbers() {
    Arbitrary<BigDecimal> usual =
        Combinators.combine(
                Arbitraries.integers().between(1, 5000), Arbitraries.integers().between(0, 4))
            .as((digits, scale) -> BigDecimal.valueOf(digits, scale));
    Arbitrary<BigDecimal> widest =
        Combinators.combine(
                Arbitraries.bigIntegers()
                    .between(BigInteger.ONE, BigInteger.TEN.pow(30).subtract(BigInteger.ONE)),
                Arbitraries.integers().between(-9, 20))
            .as(BigDecimal::new);
    return Arbitraries.frequencyOf(Tuple.of(4, usual), Tuple.of(1, widest));
  }
}
