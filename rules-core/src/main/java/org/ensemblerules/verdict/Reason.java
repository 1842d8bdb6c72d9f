package org.ensemblerules.verdict;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.Sets;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.ensemblerules.defect.FindingId;
import org.ensemblerules.effect.Check;
import org.ensemblerules.effect.Effect;
import org.ensemblerules.effect.HandlingDuty;
import org.ensemblerules.gear.Site;
import org.ensemblerules.source.Basis;
import org.ensemblerules.source.CitedRow;
import org.ensemblerules.source.HowSeen;
import org.ensemblerules.source.RowKey;
import org.ensemblerules.source.Source;
import org.ensemblerules.source.SourceId;

/**
 * One reason of a verdict: what was seen, what it calls for, and on whose word.
 *
 * @param kind what kind of reason it is; not null
 * @param row the row it rests on; empty where the contract of a verdict itself asks for it
 * @param site the part, with its layer where there is one; not null
 * @param finding the finding it is about; empty if about none
 * @param seen what was seen or is missing, in words; not null
 * @param effect what it calls for; not null
 * @param handling how the element must be handled for it; not null
 * @param afterward the checks that must be passed after the effect is carried out; not null
 * @param attempts what was done about it and why that does not count, in words; not null
 * @since 0.1
 */
public record Reason(
    ReasonKind kind,
    Optional<CitedRow> row,
    Site site,
    Optional<FindingId> finding,
    String seen,
    Effect effect,
    Set<HandlingDuty> handling,
    Set<Check> afterward,
    List<String> attempts)
    implements Comparable<Reason> {

  /** Copies the collections. */
  public Reason {
    Objects.requireNonNull(kind, "kind");
    Objects.requireNonNull(row, "row");
    Objects.requireNonNull(site, "site");
    Objects.requireNonNull(finding, "finding");
    Objects.requireNonNull(seen, "seen");
    Objects.requireNonNull(effect, "effect");
    handling = Sets.immutableEnumSet(handling);
    afterward = Sets.immutableEnumSet(afterward);
    attempts = ImmutableList.copyOf(attempts);
  }

  /** By what tells reasons apart; whole rows take long to hash. */
  @Override
  public int hashCode() {
    return 31 * kind.hashCode() + seen.hashCode();
  }

  /**
   * Returns what the row says, in words.
   *
   * @return the wording of a defect row or a care route; empty for other reasons, whose {@link
   *     #seen} says it
   */
  public Optional<String> wording() {
    return row.flatMap(CitedRow::wording);
  }

  /**
   * Tells whether practice is disputed here, so that the department may decide it by an overlay.
   *
   * @return true if the row is open
   */
  public boolean open() {
    return row.map(CitedRow::open).orElse(false);
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

  /**
   * Returns what to be careful about with the value itself, and where it was seen restated, so that
   * the reader can follow it.
   *
   * @param listed the sources that the tables list, by id; not null
   * @return what {@link #caution()} says and each page by its citation, or by its id if it is not
   *     listed; empty where that is empty
   */
  public Optional<String> caution(Map<SourceId, Source> listed) {
    Objects.requireNonNull(listed, "listed");
    String pages =
        row.map(cited -> cited.provenance().basis().pages()).orElse(List.of()).stream()
            .map(
                page ->
                    Optional.ofNullable(listed.get(page))
                        .map(Source::citation)
                        .orElse(page.value()))
            .collect(Collectors.joining("; "));
    return caution().map(text -> pages.isEmpty() ? text : text + " Seen on: " + pages + ".");
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
    if (basis instanceof Basis.Published published && published.seen() == HowSeen.RESTATED) {
      return Optional.of("Seen restated elsewhere, not read in the source itself.");
    }
    return Optional.empty();
  }

  /** Orders reasons for reading: by kind, place, finding and text. */
  @Override
  public int compareTo(Reason other) {
    int by = kind.compareTo(other.kind);
    by = by != 0 ? by : site.compareTo(other.site);
    by = by != 0 ? by : text(finding).compareTo(text(other.finding));
    by = by != 0 ? by : text(row.map(CitedRow::key)).compareTo(text(other.row.map(CitedRow::key)));
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
    return row.map(CitedRow::key);
  }
}
