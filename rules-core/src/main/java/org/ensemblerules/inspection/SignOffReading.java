package org.ensemblerules.inspection;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableListMultimap;
import com.google.common.collect.Multimaps;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.ensemblerules.defect.Finding;
import org.ensemblerules.defect.FindingId;
import org.ensemblerules.gear.Site;
import org.ensemblerules.source.EditionOrder;

/**
 * How sign-offs are read: under which editions, beside which findings, and where policies ask for
 * each criterion by itself.
 *
 * @since 0.1
 */
public final class SignOffReading {
  private final EditionOrder editions;
  private final ImmutableListMultimap<FindingId, Finding> findings;
  private final ImmutableList<GradeRow> policies;

  /**
   * Makes a reading.
   *
   * @param editions the editions of inspections up to the one in force; not null
   * @param findings what the history says was found; not null
   * @param policies how much a record must have of inspections; not null
   */
  public SignOffReading(
      EditionOrder editions, Collection<Finding> findings, List<GradeRow> policies) {
    this.editions = Objects.requireNonNull(editions, "editions");
    this.findings = Multimaps.index(findings, Finding::id);
    this.policies = ImmutableList.copyOf(policies);
  }

  /** Whether the edition that was signed for has a criterion just as it is asked here. */
  boolean has(SignOff signOff, CriterionRow row) {
    return editions.has(signOff.edition(), row.provenance());
  }

  /** The policies that ask for more than a record has of an inspection. */
  List<GradeRow> askingMore(Inspection made, EvidenceGrade grade) {
    return policies.isEmpty()
        ? List.of()
        : policies.stream().filter(row -> row.asksMore(made, grade)).toList();
  }

  /** The findings named that no event says anything of, in order. */
  List<FindingId> unknown(SignOff signOff) {
    return signOff.clearBut().stream()
        .filter(id -> !findings.containsKey(id))
        .collect(ImmutableList.toImmutableList());
  }

  /**
   * The criteria at which the findings named stand: those of the place that look for such a defect,
   * or else all of the place. One that names no layer may be on any.
   */
  Set<CriterionRow> found(SignOff signOff, List<CriterionRow> rows) {
    Set<CriterionRow> found = new HashSet<>();
    for (FindingId id : signOff.clearBut()) {
      for (Finding finding : findings.get(id)) {
        List<CriterionRow> there = rows.stream().filter(row -> isAt(finding, row)).toList();
        List<CriterionRow> looking =
            there.stream().filter(row -> row.lookFor().contains(finding.defect())).toList();
        found.addAll(looking.isEmpty() ? there : looking);
      }
    }
    return found;
  }

  private static boolean isAt(Finding finding, CriterionRow row) {
    Site site = finding.site();
    return row.sites().stream()
        .anyMatch(
            each -> each.equals(site) || (site.layer().isEmpty() && each.part() == site.part()));
  }
}
