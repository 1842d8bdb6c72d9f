package org.ensemblerules.csv;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;
import org.ensemblerules.source.OriginId;
import org.ensemblerules.source.Row;

/**
 * A table as a file: the columns that every file has, and between them those of its own.
 *
 * @param type its rows
 * @param name the name of the table, as in the table files
 * @param own its own columns
 * @param <R> its rows
 */
record CsvTable<R extends Row>(Class<R> type, String name, List<Column<R>> own) {
  static final List<String> FIRST = List.of("key", "edition", "origin");

  /** A table of canonical values, and of what is measured in them. */
  @SafeVarargs
  static <R extends Row> CsvTable<R> of(
      Class<R> type, String name, List<Column<R>> canonical, List<Column<R>>... measured) {
    List<Column<R>> own = new ArrayList<>(canonical);
    Stream.of(measured).forEach(own::addAll);
    return new CsvTable<>(type, name, List.copyOf(own));
  }

  List<String> head() {
    return Stream.of(
            FIRST.stream(),
            own.stream().map(Column::name),
            Foundation.columns().stream().map(Column::name))
        .flatMap(names -> names)
        .toList();
  }

  /** The rows, each with the edition in which it is in force, below the names of the columns. */
  String text(List<? extends Row> rows, Function<R, OriginId> edition) {
    List<Column<R>> foundation = Foundation.columns();
    List<List<String>> records = new ArrayList<>(List.of(head()));
    for (Row each : rows) {
      R row = type.cast(each);
      records.add(
          Stream.of(
                  Stream.of(
                      row.key().value(),
                      edition.apply(row).value(),
                      row.provenance().origin().value()),
                  cells(own, row),
                  cells(foundation, row))
              .flatMap(cells -> cells)
              .toList());
    }
    return Csv.of(records);
  }

  private static <R> Stream<String> cells(List<Column<R>> columns, R row) {
    return columns.stream().map(column -> column.cell().apply(row));
  }
}
