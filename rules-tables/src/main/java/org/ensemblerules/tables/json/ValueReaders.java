package org.ensemblerules.tables.json;

import java.math.BigDecimal;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import org.ensemblerules.gear.LayerKind;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.gear.Part;
import org.ensemblerules.gear.Site;
import org.ensemblerules.measure.Dimension;
import org.ensemblerules.measure.Quantity;
import org.ensemblerules.measure.Unit;
import org.ensemblerules.source.InvalidValueException;
import org.ensemblerules.source.OriginId;
import org.ensemblerules.source.SourceId;

/** Readers of the values that tables and other texts share. */
public final class ValueReaders {
  private static final String DAY_FORM =
      "a day as YYYY-MM-DD, years " + MarkedDate.FIRST_YEAR + " to " + MarkedDate.LAST_YEAR;
  private static final Map<String, Unit> UNITS = units(unit -> true);

  private ValueReaders() {}

  private static Map<String, Unit> units(Predicate<Unit> wanted) {
    Map<String, Unit> units = new LinkedHashMap<>();
    Arrays.stream(Unit.values()).filter(wanted).forEach(unit -> units.put(unit.symbol(), unit));
    return Collections.unmodifiableMap(units);
  }

  /** Reads a day, as in {@code 2027-11-30}, in the years that marked dates allow. */
  public static Optional<LocalDate> day(JsonCursor at) {
    return at.parsed(
        "a text: " + DAY_FORM,
        text -> {
          try {
            InvalidValueException.require(isDay(text), "day", text, DAY_FORM);
            LocalDate day =
                LocalDate.of(number(text, 0, 4), number(text, 5, 7), number(text, 8, 10));
            InvalidValueException.require(
                day.getYear() >= MarkedDate.FIRST_YEAR && day.getYear() <= MarkedDate.LAST_YEAR,
                "day",
                text,
                DAY_FORM);
            return day;
          } catch (DateTimeException e) {
            throw new InvalidValueException("day", text, DAY_FORM);
          }
        });
  }

  // A record has hundreds of days, so that they are not matched and parsed by a form.
  private static boolean isDay(String text) {
    for (int i = 0; i < text.length(); i++) {
      char each = text.charAt(i);
      if ((i == 4 || i == 7) ? each != '-' : (each < '0' || each > '9')) {
        return false;
      }
    }
    return text.length() == 10;
  }

  private static int number(String text, int from, int to) {
    return Integer.parseInt(text, from, to, 10);
  }

  /** Reads a date as labels give it: to the day, the month or the year, or UNKNOWN. */
  public static Optional<MarkedDate> markedDate(JsonCursor at) {
    return at.parsed("a text: " + MarkedDate.FORMS, MarkedDate::parse);
  }

  /** Reads a unit by its symbol. */
  public static Optional<Unit> unit(JsonCursor at) {
    return at.named(UNITS);
  }

  /** Reads a quantity, as in {@code {"value": "25.40", "unit": "mm"}}. */
  public static Optional<Quantity> quantity(JsonCursor at) {
    ObjectCursor object = at.object();
    Optional<BigDecimal> value = object.required("value", JsonCursor::decimalOrText);
    Optional<Unit> unit = object.required("unit", ValueReaders::unit);
    return object.make(() -> new Quantity(value.orElseThrow(), unit.orElseThrow()));
  }

  /** Reads a quantity of a dimension; only its units are allowed. */
  public static Optional<Quantity> quantityOf(JsonCursor at, Dimension dimension) {
    ObjectCursor object = at.object();
    Optional<BigDecimal> value = object.required("value", JsonCursor::decimalOrText);
    Optional<Unit> unit =
        object.required(
            "unit", symbol -> symbol.named(units(each -> each.dimension() == dimension)));
    return object.make(() -> new Quantity(value.orElseThrow(), unit.orElseThrow()));
  }

  /** Reads a site, as in {@code FABRIC@OUTER_SHELL} or {@code SUSPENSION}. */
  public static Optional<Site> site(JsonCursor at) {
    return at.text()
        .flatMap(
            text -> {
              int split = text.indexOf('@');
              Optional<Part> part =
                  name(at, text, split < 0 ? text : text.substring(0, split), Part.class);
              if (split < 0) {
                return part.map(Site::of);
              }
              Optional<LayerKind> layer =
                  name(at, text, text.substring(split + 1), LayerKind.class);
              return part.flatMap(on -> layer.map(under -> Site.of(on, under)));
            });
  }

  private static <E extends Enum<E>> Optional<E> name(
      JsonCursor at, String whole, String name, Class<E> type) {
    Map<String, E> names = EnumNames.of(type);
    E value = names.get(name);
    return value == null
        ? at.fault(
            (type == Part.class ? "part " : "layer ")
                + Shown.text(name)
                + " in "
                + Shown.text(whole),
            NearestName.allowed(name, names.keySet()))
        : Optional.of(value);
  }

  /** Reads the short name of a source. */
  public static Optional<SourceId> sourceId(JsonCursor at) {
    return at.parsed(SourceId::new);
  }

  /** Reads the name of an edition. */
  public static Optional<OriginId> editionId(JsonCursor at) {
    return at.parsed(OriginId::new);
  }
}
