package org.ensemblerules.ruleset;

import com.google.common.collect.ImmutableList;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.ensemblerules.record.PlaceCode;
import org.ensemblerules.source.Checked;
import org.ensemblerules.source.Edition;
import org.ensemblerules.source.FaultCode;
import org.ensemblerules.source.OriginId;
import org.ensemblerules.source.RowKey;
import org.ensemblerules.source.TableFault;

/**
 * What the laws of places ask to go by: which edition, or whose word, for which subject.
 *
 * @since 0.1
 */
public final class AdoptionTable {
  private final ImmutableList<AdoptionRow> rows;

  private AdoptionTable(List<AdoptionRow> rows) {
    this.rows = ImmutableList.copyOf(rows);
  }

  /**
   * Compiles rows.
   *
   * @param rows the rows; not null
   * @return the table, or a fault for each key named twice and each row that says again what
   *     another says
   */
  public static Checked<AdoptionTable, TableFault> of(List<AdoptionRow> rows) {
    List<TableFault> faults = new ArrayList<>();
    Set<RowKey> keys = new HashSet<>();
    Set<List<String>> said = new HashSet<>();
    for (AdoptionRow row : rows) {
      if (!keys.add(row.key())) {
        faults.add(
            new TableFault(
                FaultCode.DUPLICATE, row.key(), "key", row.key().value(), "each key once"));
      } else if (!said.add(row.canonical())) {
        faults.add(
            new TableFault(
                FaultCode.DUPLICATE,
                row.key(),
                "rule",
                row.kind().name(),
                "each rule of a place once"));
      }
    }
    return Checked.of(faults, () -> new AdoptionTable(rows));
  }

  /**
   * Lists what holds at a place on a day, with what holds in its whole country.
   *
   * @param place the place; not null
   * @param day the day; not null
   * @param subject the subject; not null
   * @return every rule that holds or may, or that none is known; never null
   */
  public AdoptionAnswer inForce(PlaceCode place, LocalDate day, Subject subject) {
    Objects.requireNonNull(day, "day");
    Objects.requireNonNull(subject, "subject");
    List<AdoptionAnswer.Held> held =
        Stream.of(place.value(), place.country())
            .flatMap(where -> rows.stream().filter(row -> row.where().equals(where)))
            .filter(row -> row.subject() == subject && row.mayHold(day))
            .map(
                row ->
                    new AdoptionAnswer.Held(
                        row, row.from().isPresent(), row.provenance().isStale(day)))
            .toList();
    return held.isEmpty()
        ? new AdoptionAnswer.NotKnown(place, subject)
        : new AdoptionAnswer.Rules(held);
  }

  /**
   * Finds the edition that a rule chooses, to compose a rule set of.
   *
   * @param row the rule; not null
   * @param editions the editions there are of the standard it names; not null
   * @param day the day on which gear is judged; not null
   * @param bought the day on which it was bought or contracted for; empty if not known
   * @return the edition named; of the newest, and of that at purchase, the last of those known to
   *     have taken effect by the day; empty if the rule names none, or that day is not known
   */
  public static Optional<OriginId> choose(
      AdoptionRow row, List<Edition> editions, LocalDate day, Optional<LocalDate> bought) {
    return switch (row.kind()) {
      case FIXED -> row.edition();
      case NEWEST -> last(editions, day);
      case AT_PURCHASE -> bought.flatMap(then -> last(editions, then));
      case MANUFACTURER, NONE_NAMED, OWN_RULE -> Optional.empty();
    };
  }

  private static Optional<OriginId> last(List<Edition> editions, LocalDate day) {
    return editions.stream()
        .filter(edition -> edition.effective().map(first -> !day.isBefore(first)).orElse(false))
        .max(Comparator.naturalOrder())
        .map(Edition::id);
  }

  /**
   * Returns all rows.
   *
   * @return the rows in table order; never null
   */
  public List<AdoptionRow> rows() {
    return rows;
  }
}
