package org.ensemblerules.assess;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.ensemblerules.defect.DefectKind;
import org.ensemblerules.defect.Extent;
import org.ensemblerules.defect.Finding;
import org.ensemblerules.defect.FindingId;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.gear.Site;
import org.ensemblerules.testkit.GearCase;
import org.ensemblerules.verdict.Reason;
import org.ensemblerules.verdict.ReasonKind;
import org.ensemblerules.verdict.Service;
import org.ensemblerules.verdict.Verdict;

/** Short ways to make findings and to say what a verdict must hold. */
final class Verdicts {
  private Verdicts() {}

  static Finding finding(String id, String site, DefectKind defect, Extent extent, String seen) {
    return new Finding(
        new FindingId(id), Site.parse(site), "", defect, extent, MarkedDate.parse(seen));
  }

  static Finding finding(String site, DefectKind defect) {
    return finding("F1", site, defect, new Extent.NotMeasured(), "2024-06-15");
  }

  static List<ReasonKind> kinds(Verdict verdict) {
    return verdict.reasons().stream().map(Reason::kind).distinct().toList();
  }

  /** The case is out for reasons of one kind only; returns the first of them. */
  static Reason onlyReason(GearCase given, ReasonKind kind) {
    Verdict verdict = given.verdict();
    assertThat(kinds(verdict)).containsExactly(kind);
    assertThat(verdict.service()).isEqualTo(Service.OUT);
    return verdict.reasons().get(0);
  }
}
