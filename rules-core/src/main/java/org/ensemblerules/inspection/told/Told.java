package org.ensemblerules.inspection.told;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableListMultimap;
import com.google.common.collect.Multimaps;
import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import java.util.stream.Stream;
import org.ensemblerules.defect.Finding;
import org.ensemblerules.gear.Site;
import org.ensemblerules.inspection.CriterionRow;
import org.ensemblerules.inspection.Inspection;

/**
 * Which findings say what an inspection found at a criterion: those made now, and those on record
 * that its sign-off names, or that may have been seen on its day or since. A finding that names no
 * layer may be on any.
 */
public final class Told {
  private final ImmutableListMultimap<Site, Finding> now;
  private final ImmutableListMultimap<Site, Finding> onRecord;

  private Told(Collection<Finding> now, Collection<Finding> onRecord) {
    this.now = Multimaps.index(now, Finding::site);
    this.onRecord = Multimaps.index(onRecord, Finding::site);
  }

  /**
   * Collects findings.
   *
   * @param now what was found now; not null
   * @param onRecord what is on record; not null
   * @return the findings by where they are; never null
   */
  public static Told of(Collection<Finding> now, Collection<Finding> onRecord) {
    return new Told(now, onRecord);
  }

  /**
   * Lists the findings that say what an inspection found at a criterion.
   *
   * @param inspection the inspection; not null
   * @param row the criterion; not null
   * @return the findings; empty if none says it
   */
  public List<Finding> by(Inspection inspection, CriterionRow row) {
    return row.sites().stream()
        .flatMap(site -> Stream.of(site, Site.of(site.part())))
        .distinct()
        .flatMap(
            site ->
                Stream.concat(
                    now.get(site).stream(),
                    onRecord.get(site).stream().filter(each -> mayBeOf(inspection, each))))
        .collect(ImmutableList.toImmutableList());
  }

  private static boolean mayBeOf(Inspection inspection, Finding finding) {
    return inspection.on().possiblyBy(finding.seen().latestOr(LocalDate.MAX))
        || inspection.signOff().filter(by -> by.clearBut().contains(finding.id())).isPresent();
  }
}
