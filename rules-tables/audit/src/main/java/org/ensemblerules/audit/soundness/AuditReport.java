package org.ensemblerules.audit.soundness;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableMap;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.ensemblerules.GearRules;
import org.ensemblerules.source.InvalidValueException;
import org.ensemblerules.source.Row;
import org.ensemblerules.source.RowKey;
import org.ensemblerules.source.SourceId;

/**
 * What an audit found, and what it proved.
 *
 * @param asOf the day the audit was made for; not null
 * @param rows how many rows were read, 0 or more
 * @param flaws what is wrong, faults before notes; not null
 * @param proved how many combinations of each sort were walked, by what they are combinations of;
 *     each has, but for those among the flaws, exactly one answer of the editions, beside which
 *     every row of an overlay answers that holds it; not null
 * @since 0.1
 */
public record AuditReport(LocalDate asOf, int rows, List<Flaw> flaws, Map<String, Long> proved) {
  /**
   * Copies the lists.
   *
   * @throws InvalidValueException if the number of rows is below 0
   */
  public AuditReport {
    Objects.requireNonNull(asOf, "asOf");
    InvalidValueException.require(rows >= 0, "AuditReport.rows", rows, "0 or more");
    flaws = ImmutableList.copyOf(flaws);
    proved = ImmutableMap.copyOf(proved);
  }

  /**
   * Audits a rule set, whose sources are not known to it: no row is looked up among them.
   *
   * @param rules the rules; not null
   * @param asOf the day for which reviews must hold; not null
   * @return the report; never null
   * @throws IllegalStateException if a compiled table answers otherwise than its rows: a fault of
   *     this library
   */
  public static AuditReport of(GearRules rules, LocalDate asOf) {
    return Audit.of(rules, asOf);
  }

  /**
   * Audits a rule set and looks its sources up.
   *
   * @param rules the rules; not null
   * @param sources the sources that are listed; not null
   * @param asOf the day for which reviews must hold; not null
   * @return the report; never null
   * @throws IllegalStateException if a compiled table answers otherwise than its rows: a fault of
   *     this library
   */
  public static AuditReport of(GearRules rules, Set<SourceId> sources, LocalDate asOf) {
    return Audit.of(rules, sources, asOf);
  }

  /**
   * Audits rows that no table was compiled of, such as rows that no table can be compiled of. A
   * sort of row that is not among them is not missed.
   *
   * @param rows the rows; not null
   * @param sources the sources that are listed; empty if that is not to be looked at; not null
   * @param asOf the day for which reviews must hold; not null
   * @return the report, in which no combinations are proved; never null
   */
  public static AuditReport ofRows(
      List<? extends Row> rows, Optional<Set<SourceId>> sources, LocalDate asOf) {
    return Audit.rows(rows, sources, asOf);
  }

  /**
   * Tells whether the rows are sound.
   *
   * @return true if nothing was found that is a fault; notes do not count
   */
  public boolean isSound() {
    return faults().isEmpty();
  }

  /**
   * Lists what makes the rows unsound.
   *
   * @return the flaws that are faults; never null
   */
  public List<Flaw> faults() {
    return flaws.stream().filter(flaw -> flaw.kind().isFault()).toList();
  }

  /**
   * Lists what a reader should know and the rows mean as they say it.
   *
   * @return the flaws that are no faults; never null
   */
  public List<Flaw> notes() {
    return flaws.stream().filter(flaw -> !flaw.kind().isFault()).toList();
  }

  /**
   * Lists the flaws of a kind.
   *
   * @param kind the kind; not null
   * @return the flaws; never null
   */
  public List<Flaw> of(FlawKind kind) {
    return flaws.stream().filter(flaw -> flaw.kind() == kind).toList();
  }

  /**
   * Returns the rows of the flaws of a kind.
   *
   * @param kind the kind; not null
   * @return the keys; never null
   */
  public Set<RowKey> rowsOf(FlawKind kind) {
    return of(kind).stream()
        .flatMap(flaw -> flaw.rows().stream())
        .collect(Collectors.toUnmodifiableSet());
  }

  /**
   * Returns how many combinations were walked in all.
   *
   * @return the number, 0 or more
   */
  public long combinations() {
    return proved.values().stream().mapToLong(Long::longValue).sum();
  }
}
