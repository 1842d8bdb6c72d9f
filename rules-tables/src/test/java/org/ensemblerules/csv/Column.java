package org.ensemblerules.csv;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.ensemblerules.defect.Band;
import org.ensemblerules.measure.Limit;
import org.ensemblerules.measure.Quantity;
import org.ensemblerules.source.Row;

/**
 * A column of a file.
 *
 * @param name its name in the first line
 * @param cell what it says of a row; empty where the row says nothing
 * @param <R> the rows
 */
record Column<R>(String name, Function<R, String> cell) {
  /** Says of a name that its values stand in brackets, which the file leaves out. */
  private static final String IN_BRACKETS = "[]";

  /** The canonical values of rows, one column for each, in their order. */
  static <R extends Row> List<Column<R>> canonical(String... names) {
    List<Column<R>> columns = new ArrayList<>();
    for (int at = 0; at < names.length; at++) {
      int place = at;
      columns.add(
          names[at].endsWith(IN_BRACKETS)
              ? new Column<>(
                  names[at].replace(IN_BRACKETS, ""),
                  row -> withoutBrackets(row.canonical().get(place)))
              : new Column<>(names[at], row -> row.canonical().get(place)));
    }
    return columns;
  }

  private static String withoutBrackets(String value) {
    return value.substring(1, value.length() - 1);
  }

  static <R> Column<R> optional(String name, Function<R, Optional<?>> value) {
    return new Column<>(name, row -> value.apply(row).map(Object::toString).orElse(""));
  }

  /** A limit: which way it binds, the number and unit printed first, and those printed beside. */
  static <R> List<Column<R>> limit(String before, Function<R, Optional<Limit>> limit) {
    return List.of(
        optional(name(before, "bound"), row -> limit.apply(row).map(Limit::bound)),
        number(name(before, "value"), row -> limit.apply(row).map(Limit::value)),
        unit(name(before, "unit"), row -> limit.apply(row).map(Limit::value)),
        number(name(before, "alsoValue"), row -> limit.apply(row).flatMap(Limit::alsoPrinted)),
        unit(name(before, "alsoUnit"), row -> limit.apply(row).flatMap(Limit::alsoPrinted)));
  }

  private static String name(String before, String name) {
    return before.isEmpty()
        ? name
        : before + Character.toUpperCase(name.charAt(0)) + name.substring(1);
  }

  static <R> Column<R> number(String name, Function<R, Optional<Quantity>> quantity) {
    return optional(name, row -> quantity.apply(row).map(each -> each.value().toPlainString()));
  }

  static <R> Column<R> unit(String name, Function<R, Optional<Quantity>> quantity) {
    return optional(name, row -> quantity.apply(row).map(each -> each.unit().symbol()));
  }

  /** The ends of a band; a count has no unit, and presence and grades have no ends. */
  static <R> List<Column<R>> band(Function<R, Band> band) {
    return List.of(
        new Column<>("over", row -> counted(band.apply(row), true)),
        unit("overUnit", row -> end(band.apply(row), true)),
        new Column<>("upTo", row -> counted(band.apply(row), false)),
        unit("upToUnit", row -> end(band.apply(row), false)));
  }

  private static String counted(Band band, boolean over) {
    if (band instanceof Band.Counts counts) {
      if (over) {
        return Integer.toString(counts.over());
      }
      return counts.upTo() == Integer.MAX_VALUE ? "" : Integer.toString(counts.upTo());
    }
    return end(band, over).map(each -> each.value().toPlainString()).orElse("");
  }

  private static Optional<Quantity> end(Band band, boolean over) {
    return band instanceof Band.Range range ? over ? range.over() : range.upTo() : Optional.empty();
  }
}
