package org.ensemblerules.audit;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.function.BiPredicate;
import java.util.function.Function;
import org.ensemblerules.source.Row;

/**
 * How rows of one kind are read to be compared: what they speak of, which of their values are mere
 * words, and when one is at least as strict as another. Whatever a row holds besides is its
 * meaning, so that no value can be forgotten.
 *
 * @param <R> the kind of row
 */
final class RowReading<R extends Row> {
  private final Class<R> type;
  private final String table;
  private final Function<R, List<String>> topic;
  private Function<R, List<String>> extent = row -> List.of();
  private Function<R, List<String>> wording = row -> List.of();
  private BiPredicate<R, R> asStrict = (one, other) -> false;
  private HowStrict ofOneMore = HowStrict.UNDECIDED;

  private RowReading(Class<R> type, String table, Function<R, List<String>> topic) {
    this.type = type;
    this.table = table;
    this.topic = topic;
  }

  static <R extends Row> RowReading<R> of(
      Class<R> type, String table, Function<R, List<String>> topic) {
    return new RowReading<>(type, table, topic);
  }

  /** Names what narrows the topic: rows that differ only in it speak of neighbouring cases. */
  RowReading<R> extent(Function<R, List<String>> of) {
    extent = of;
    return this;
  }

  /** Names the values that are words: another wording asks for the same. */
  RowReading<R> wording(Function<R, List<String>> of) {
    wording = of;
    return this;
  }

  /** Says when one row is at least as strict as another on the same topic. */
  RowReading<R> asStrict(BiPredicate<R, R> order) {
    asStrict = order;
    return this;
  }

  /** Says how strict a table becomes by one more row of this kind, if that can be said. */
  RowReading<R> oneMoreIs(HowStrict strictness) {
    ofOneMore = strictness;
    return this;
  }

  Class<R> type() {
    return type;
  }

  String table() {
    return table;
  }

  HowStrict ofOneMore() {
    return ofOneMore;
  }

  List<String> topic(Row row) {
    return topic.apply(type.cast(row));
  }

  /** The topic with what narrows it. */
  List<String> narrowly(Row row) {
    List<String> all = new ArrayList<>(topic(row));
    all.addAll(extent.apply(type.cast(row)));
    return all;
  }

  /** The values without mere words. */
  List<String> meaning(Row row) {
    List<String> values = new ArrayList<>(row.canonical());
    wording.apply(type.cast(row)).forEach(values::remove);
    return values;
  }

  /** How strict the later row is, set against the earlier. */
  HowStrict compare(Row earlier, Row later) {
    if (meaning(earlier).equals(meaning(later))) {
      return HowStrict.SAME;
    }
    R was = type.cast(earlier);
    R is = type.cast(later);
    return HowStrict.of(asStrict.test(is, was), asStrict.test(was, is));
  }

  static List<String> names(Collection<? extends Enum<?>> values) {
    return values.stream().<String>map(Enum::name).toList();
  }
}
