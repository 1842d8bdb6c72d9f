package org.ensemblerules.record;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableListMultimap;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.ensemblerules.source.Checked;
import org.ensemblerules.source.TableFault;
import org.ensemblerules.source.cells.Cells;

/**
 * What the laws of places ask where gear contains added PFAS. The table tells only what was seen; a
 * place or a demand without a row is not known, and never free.
 *
 * @since 0.1
 */
public final class PfasLawTable {
  private record Said(PlaceCode place, Class<?> demand, Optional<LocalDate> from) {}

  private final ImmutableList<PfasLawRow> rows;
  private final ImmutableListMultimap<PlaceCode, PfasLawRow> byPlace;

  private PfasLawTable(List<PfasLawRow> rows) {
    this.rows = ImmutableList.copyOf(rows);
    this.byPlace =
        rows.stream()
            .collect(ImmutableListMultimap.toImmutableListMultimap(PfasLawRow::place, r -> r));
  }

  /**
   * Compiles rows.
   *
   * @param rows the rows; not null
   * @return the table, or a fault for each demand that a place makes twice from the same day
   */
  public static Checked<PfasLawTable, TableFault> of(List<PfasLawRow> rows) {
    Cells<Said, PfasLawRow> said =
        Cells.of(
            rows,
            row -> new Said(row.place(), row.demand().getClass(), row.from()),
            "demand",
            row -> row.demand() + " of " + row.place(),
            "each demand of a place once from a day");
    return Checked.of(said.faults(), () -> new PfasLawTable(rows));
  }

  /**
   * Answers whether a seller must give the buyer a written notice.
   *
   * @param place where it is sold; not null
   * @param on the day of the sale; not null
   * @return the answer; never null
   */
  public PfasAnswer notice(PlaceCode place, LocalDate on) {
    return answer(place, on, PfasDemand.Notice.class);
  }

  /**
   * Answers whether a label fixed to the gear must say whether it contains PFAS.
   *
   * @param place where it is bought; not null
   * @param on the day of the purchase; not null
   * @return the answer; never null
   */
  public PfasAnswer fixedLabel(PlaceCode place, LocalDate on) {
    return answer(place, on, PfasDemand.FixedLabel.class);
  }

  /**
   * Answers whether a notice must be kept, by whom and for how many years.
   *
   * @param place where it is sold; not null
   * @param on the day of the sale; not null
   * @return the answer; the rows say by whom and how long; never null
   */
  public PfasAnswer keeping(PlaceCode place, LocalDate on) {
    return answer(place, on, PfasDemand.KeepNotice.class);
  }

  /**
   * Answers through which day a party keeps a notice: the day of the sale and the years of the row
   * that asks for most. Of a sale that is not dated to the day, the latest possible day counts.
   *
   * @param notice the notice; not null
   * @param party who keeps it; not null
   * @return the answer; never null
   */
  public KeepAnswer keepThrough(PfasNotice notice, SaleParty party) {
    Objects.requireNonNull(party, "party");
    List<PfasLawRow> asking =
        of(notice.place(), PfasDemand.KeepNotice.class).stream()
            .filter(row -> years(row, party) > 0 && row.mayApply(notice.sold()))
            .toList();
    if (asking.isEmpty()) {
      return new KeepAnswer.ForNow("no row says how long it is kept in " + notice.place());
    }
    int years = asking.stream().mapToInt(row -> years(row, party)).max().getAsInt();
    return notice
        .sold()
        .latest()
        .<KeepAnswer>map(day -> new KeepAnswer.Through(day.plusYears(years), asking))
        .orElseGet(() -> new KeepAnswer.ForNow("not known when it was sold"));
  }

  private static int years(PfasLawRow row, SaleParty party) {
    return row.demand() instanceof PfasDemand.KeepNotice keep && keep.by().contains(party)
        ? keep.years()
        : 0;
  }

  /**
   * Answers whether gear may be sold, as far as added PFAS goes.
   *
   * @param place where; not null
   * @param on on which day; not null
   * @param content what it contains; not null
   * @return the answer; gear of unknown content is barred where gear with added PFAS is; never null
   */
  public SaleAnswer maySell(PlaceCode place, LocalDate on, PfasContent content) {
    Objects.requireNonNull(content, "content");
    List<PfasLawRow> bans = of(place, PfasDemand.SaleBan.class);
    if (bans.isEmpty()) {
      return new SaleAnswer.NotKnown(place);
    }
    List<PfasLawRow> now = inForce(bans, on);
    return now.isEmpty() || content == PfasContent.NONE_ADDED
        ? new SaleAnswer.NotBarredBy(bans)
        : new SaleAnswer.Barred(now);
  }

  private PfasAnswer answer(PlaceCode place, LocalDate on, Class<? extends PfasDemand> demand) {
    List<PfasLawRow> found = of(place, demand);
    if (found.isEmpty()) {
      return new PfasAnswer.NotKnown(place);
    }
    List<PfasLawRow> now = inForce(found, on);
    return now.isEmpty() ? new PfasAnswer.OnOtherDays(found) : new PfasAnswer.Asked(now);
  }

  private List<PfasLawRow> of(PlaceCode place, Class<? extends PfasDemand> demand) {
    Objects.requireNonNull(place, "place");
    return byPlace.get(place).stream().filter(row -> demand.isInstance(row.demand())).toList();
  }

  private static List<PfasLawRow> inForce(List<PfasLawRow> rows, LocalDate on) {
    Objects.requireNonNull(on, "on");
    return rows.stream()
        .filter(row -> row.from().map(day -> !on.isBefore(day)).orElse(true))
        .filter(row -> row.before().map(on::isBefore).orElse(true))
        .toList();
  }

  /**
   * Returns all rows.
   *
   * @return the rows in table order; never null
   */
  public List<PfasLawRow> rows() {
    return rows;
  }
}
