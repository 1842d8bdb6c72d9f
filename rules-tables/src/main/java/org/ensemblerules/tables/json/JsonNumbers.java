package org.ensemblerules.tables.json;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.regex.Pattern;

/** Which values are numbers, and which. */
final class JsonNumbers {
  // As JSON writes numbers; BigDecimal itself would take digits of any script.
  private static final Pattern DECIMAL =
      Pattern.compile("-?(0|[1-9][0-9]*)(\\.[0-9]+)?([eE][+-]?[0-9]{1,9})?");

  // Longer ones are refused by their size anyway; to work them out takes time.
  private static final int LONGEST_DECIMAL = 100;

  private JsonNumbers() {}

  /** Returns the whole number that a value is; empty if it is none of that range. */
  static Optional<Long> whole(JsonValue value, long least, long most) {
    // Range first: a large exponent must not be written out.
    return value instanceof JsonValue.Decimal number
            && number.value().compareTo(BigDecimal.valueOf(least)) >= 0
            && number.value().compareTo(BigDecimal.valueOf(most)) <= 0
            && number.value().stripTrailingZeros().scale() <= 0
        ? Optional.of(number.value().longValueExact())
        : Optional.empty();
  }

  /** Returns the number that a value is, or that its text writes; empty if there is none. */
  static Optional<BigDecimal> decimal(JsonValue value) {
    if (value instanceof JsonValue.Text text
        && text.value().length() <= LONGEST_DECIMAL
        && DECIMAL.matcher(text.value()).matches()) {
      return Optional.of(new BigDecimal(text.value()));
    }
    return value instanceof JsonValue.Decimal number
        ? Optional.of(number.value())
        : Optional.empty();
  }
}
