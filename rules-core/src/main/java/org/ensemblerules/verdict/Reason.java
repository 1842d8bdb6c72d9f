package org.ensemblerules.verdict;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.Sets;
import java.util.EnumSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.ensemblerules.care.CareAction;
import org.ensemblerules.care.CareRouteRow;
import org.ensemblerules.defect.DefectRow;
import org.ensemblerules.defect.FindingId;
import org.ensemblerules.effect.Check;
import org.ensemblerules.effect.Effect;
import org.ensemblerules.effect.EntityKind;
import org.ensemblerules.effect.HandlingDuty;
import org.ensemblerules.gear.Site;
import org.ensemblerules.schedule.DoneBy;
import org.ensemblerules.schedule.TaskRow;
import org.ensemblerules.source.Basis;
import org.ensemblerules.source.Row;
import org.ensemblerules.source.RowKey;
import org.ensemblerules.source.Seen;

/**
 * One reason of a verdict: what was seen, what it calls for, and on whose word.
 *
 * @param kind what kind of reason it is; not null
 * @param row the row it rests on; empty where the contract of a verdict itself asks for it
 * @param site the part, with its layer where there is one; not null
 * @param finding the finding it is about; empty if about none
 * @param seen what was seen or is missing, in words; not null
 * @param effect what it calls for; not null
 * @param attempts what was done about it and why that does not count, in words; not null
 */
public record Reason(
    ReasonKind kind,
    Optional<Row> row,
    Site site,
    Optional<FindingId> finding,
    String seen,
    Effect effect,
    List<String> attempts)
    implements Comparable<Reason> {

  /** Copies the list. */
  public Reason {
    Objects.requireNonNull(kind, "kind");
    Objects.requireNonNull(row, "row");
    Objects.requireNonNull(site, "site");
    Objects.requireNonNull(finding, "finding");
    Objects.requireNonNull(seen, "seen");
    Objects.requireNonNull(effect, "effect");
    attempts = ImmutableList.copyOf(attempts);
  }

  /**
   * Returns how the element must be handled for this reason.
   *
   * @return the duties; never null
   */
  public Set<HandlingDuty> handling() {
    if (row.orElse(null) instanceof CareRouteRow care) {
      Set<HandlingDuty> duties = EnumSet.noneOf(HandlingDuty.class);
      duties.addAll(care.handling());
      if (care.asks(CareAction.ISOLATE)) {
        duties.add(HandlingDuty.ISOLATE);
      }
      return Sets.immutableEnumSet(duties);
    }
    return covering().map(DefectRow::handling).orElse(Set.of());
  }

  /**
   * Returns the checks that must be passed after the effect is carried out.
   *
   * @return the checks; never null
   */
  public Set<Check> afterwards() {
    return covering().map(DefectRow::afterwards).orElse(Set.of());
  }

  /**
   * Returns what the row says, in words.
   *
   * @return the wording of a defect row or a care route; empty for other reasons, whose {@link
   *     #seen} says it
   */
  public Optional<String> wording() {
    return row.filter(CareRouteRow.class::isInstance)
        .map(care -> ((CareRouteRow) care).wording())
        .or(() -> defectRow().map(DefectRow::wording));
  }

  /**
   * Tells whether practice is disputed here, so that an overlay may decide.
   *
   * @return true if the row is open
   */
  public boolean open() {
    return defectRow().map(DefectRow::open).orElse(false);
  }

  /**
   * Returns what to be careful about with the value itself.
   *
   * @return the caution that follows from the basis; empty if the row was read in its source or is
   *     a fact of the trade, or if there is no row
   */
  public Optional<String> caution() {
    return row.map(r -> r.provenance().basis()).flatMap(Reason::caution);
  }

  private static Optional<String> caution(Basis basis) {
    if (basis instanceof Basis.Memory memory) {
      return Optional.of(
          "Remembered with "
              + memory.confidence()
              + " confidence, not seen published; confirm it before relying on it.");
    }
    if (basis instanceof Basis.CarriedOver carried) {
      return Optional.of(
          "Carried over from an earlier edition and not confirmed for "
              + carried.into()
              + ", whose text was not seen."
              + caution(carried.there()).map(there -> " " + there).orElse(""));
    }
    if (basis instanceof Basis.Published published && published.seen() == Seen.RESTATED) {
      return Optional.of("Seen restated elsewhere, not read in the source itself.");
    }
    return Optional.empty();
  }

  /** Of whom what is done counts for this reason, as far as its row itself says so. */
  Set<EntityKind> countsIfBy() {
    return row.orElse(null) instanceof TaskRow task
            && task.doneBy() instanceof DoneBy.InspectedBy inspected
        ? inspected.by()
        : EnumSet.allOf(EntityKind.class);
  }

  /** The row of a defect whose extent is known to lie in the row's band. */
  private Optional<DefectRow> covering() {
    return defectRow().filter(covers -> kind != ReasonKind.MUST_MEASURE);
  }

  private Optional<DefectRow> defectRow() {
    return row.filter(DefectRow.class::isInstance).map(DefectRow.class::cast);
  }

  /** Orders reasons for reading: by kind, place, finding and text. */
  @Override
  public int compareTo(Reason other) {
    int by = kind.compareTo(other.kind);
    by = by != 0 ? by : site.compareTo(other.site);
    by = by != 0 ? by : text(finding).compareTo(text(other.finding));
    by = by != 0 ? by : text(row.map(Row::key)).compareTo(text(other.row.map(Row::key)));
    by = by != 0 ? by : seen.compareTo(other.seen);
    by = by != 0 ? by : effect.text().compareTo(other.effect.text());
    return by != 0 ? by : attempts.toString().compareTo(other.attempts.toString());
  }

  private static String text(Optional<?> value) {
    return value.map(Object::toString).orElse("");
  }

  /**
   * Returns the key of the row, if any.
   *
   * @return the key; empty if the reason rests on no row
   */
  public Optional<RowKey> rowKey() {
    return row.map(Row::key);
  }
}
