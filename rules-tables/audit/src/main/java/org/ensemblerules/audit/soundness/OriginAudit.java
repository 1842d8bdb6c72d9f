package org.ensemblerules.audit.soundness;

import java.time.LocalDate;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.ensemblerules.care.CareDemand;
import org.ensemblerules.care.CareLimitRow;
import org.ensemblerules.fieldcheck.CheckLimitRow;
import org.ensemblerules.measure.Limit;
import org.ensemblerules.ruleset.TableKind;
import org.ensemblerules.ruleset.TableKinds;
import org.ensemblerules.source.Basis;
import org.ensemblerules.source.Provenance;
import org.ensemblerules.source.Row;
import org.ensemblerules.source.SourceId;
import org.ensemblerules.strength.HydrostaticRow;
import org.ensemblerules.strength.RequirementRow;

/**
 * On whose word each row is, whether that still holds, and whether its numbers were printed well.
 */
final class OriginAudit {
  private OriginAudit() {}

  static void run(AuditedRows rows, Optional<Set<SourceId>> sources, LocalDate asOf, Flaws flaws) {
    for (Row row : rows.all()) {
      Provenance provenance = row.provenance();
      String table = table(row);
      sources.ifPresent(known -> cited(row, known, flaws));
      if (provenance.isStale(asOf)) {
        flaws.add(
            FlawKind.PAST_REVIEW,
            table + " of " + provenance.origin(),
            "reviewed through " + provenance.reviewedThrough(),
            "a review that reaches " + asOf,
            row);
      }
      if (own(provenance.basis()) instanceof Basis.Memory memory
          && memory.about().isEmpty()
          && provenance.note().isEmpty()) {
        flaws.add(
            FlawKind.FROM_MEMORY,
            table + " of " + provenance.origin(),
            memory.text() + ", of no document, and no note",
            "the document remembered, or a note that says what it rests on",
            row);
      }
      limits(row)
          .filter(limit -> !limit.printedNumbersAgree())
          .forEach(limit -> units(row, limit, flaws));
    }
  }

  private static String table(Row row) {
    return TableKinds.of(row).map(TableKind::name).orElse("editions");
  }

  private static void cited(Row row, Set<SourceId> known, Flaws flaws) {
    Basis basis = row.provenance().basis();
    Stream.concat(basis.cited().stream(), basis.pages().stream())
        .filter(source -> !known.contains(source))
        .forEach(
            source ->
                flaws.add(
                    FlawKind.DANGLING_SOURCE,
                    table(row) + " of " + row.provenance().origin(),
                    "cites " + source,
                    "a source that is listed",
                    row));
  }

  private static void units(Row row, Limit limit, Flaws flaws) {
    flaws.add(
        FlawKind.UNITS_DISAGREE,
        table(row) + " of " + row.provenance().origin(),
        limit.toString(),
        "two numbers that can be roundings of one size; the one printed first counts",
        row);
  }

  private static Stream<Limit> limits(Row row) {
    if (row instanceof RequirementRow requirement) {
      return Stream.of(requirement.limit());
    } else if (row instanceof CheckLimitRow check) {
      return Stream.of(check.limit());
    } else if (row instanceof HydrostaticRow hydrostatic) {
      return Stream.of(hydrostatic.pressure(), hydrostatic.dwell());
    } else if (row instanceof CareLimitRow care
        && care.demand() instanceof CareDemand.Within within) {
      return Stream.of(within.limit());
    }
    return Stream.of();
  }

  /** What was carried over is as well founded as where it came from. */
  private static Basis own(Basis basis) {
    return basis instanceof Basis.CarriedOver carried ? carried.there() : basis;
  }
}
