package org.ensemblerules.tables.codec;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Optional;
import java.util.regex.Pattern;
import org.ensemblerules.source.InvalidValueException;
import org.ensemblerules.tables.json.JsonCursor;

/** The JSON form of a day that was computed, which may lie past the years that labels can show. */
public final class DayJson {
  private static final String FORM = "a day as YYYY-MM-DD";
  private static final Pattern DAY = Pattern.compile("[0-9]{4}-[0-9]{2}-[0-9]{2}");

  private DayJson() {}

  public static Optional<LocalDate> read(JsonCursor at) {
    return at.parsed(
        "a text: " + FORM,
        text -> {
          InvalidValueException.require(DAY.matcher(text).matches(), "day", text, FORM);
          try {
            return LocalDate.parse(text);
          } catch (DateTimeException e) {
            throw new InvalidValueException("day", text, FORM);
          }
        });
  }
}
