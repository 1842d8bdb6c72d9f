package org.ensemblerules.verdict;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import org.ensemblerules.defect.Finding;
import org.ensemblerules.gear.Site;
import org.ensemblerules.inspection.CriterionRow;
import org.ensemblerules.inspection.Inspection;

/**
 * Whether a finding says what an inspection found: one handed over now, or one on record since that
 * day. What the log of a wash shows is not what an inspector saw; by it, a limit that an overlay
 * adds could take a contradiction away.
 */
final class ToldFindings {
  private final Set<Site> now = new HashSet<>();

  /** The latest day on which something may have been seen at a site. */
  private final Map<Site, LocalDate> onRecord = new HashMap<>();

  ToldFindings(CaseFile file) {
    file.assessment().findings().forEach(finding -> now.add(finding.site()));
    file.labeled().findings().forEach(finding -> now.add(finding.site()));
    Set<Finding> ofWashes = Set.copyOf(file.evidence().shownByWashes());
    for (Finding finding : file.findings()) {
      if (!ofWashes.contains(finding)) {
        LocalDate seen = finding.seen().latest().orElse(LocalDate.MAX);
        onRecord.merge(finding.site(), seen, (one, other) -> one.isBefore(other) ? other : one);
      }
    }
  }

  boolean of(Inspection inspection, CriterionRow row) {
    return row.sites().stream()
        .anyMatch(site -> at(inspection, site) || at(inspection, Site.of(site.part())));
  }

  private boolean at(Inspection inspection, Site site) {
    LocalDate seen = onRecord.get(site);
    return now.contains(site) || (seen != null && inspection.on().possiblyBy(seen));
  }
}
