package org.ensemblerules.example.department.demo;

import java.time.LocalDate;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.ensemblerules.defect.Finding;
import org.ensemblerules.effect.Doer;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.gear.Site;
import org.ensemblerules.gear.Use;
import org.ensemblerules.inspection.CriteriaTable;
import org.ensemblerules.inspection.CriterionRow;
import org.ensemblerules.inspection.Equipment;
import org.ensemblerules.inspection.Inspection;
import org.ensemblerules.inspection.InspectionBuilder;
import org.ensemblerules.inspection.InspectionKind;
import org.ensemblerules.inspection.Occasion;
import org.ensemblerules.inspection.Outcome;
import org.ensemblerules.inspection.SignOff;
import org.ensemblerules.source.OriginId;

/**
 * The form of an inspection: one line for every criterion that the table asks for. Whoever fills it
 * in must answer every line, since what is not mentioned counts as not looked at.
 *
 * @param criteria what the table asks for
 * @param element the kind of element
 * @param use its use
 * @param notFitted parts that this very element does not have
 * @param signedFor the edition that whoever found nothing signs for, where the department keeps no
 *     lines of what was clear; empty where it keeps every line
 */
record InspectionForm(
    CriteriaTable criteria,
    ElementKind element,
    Use use,
    Set<Site> notFitted,
    Optional<OriginId> signedFor) {

  /** Who filled in a form, for what, when. */
  record Head(InspectionKind kind, Occasion occasion, LocalDate on, Doer by) {}

  /** Fills in every line. What was found on the day stands as found, the rest as clear. */
  Inspection filled(Head head, List<Finding> found, Remarks remarks) {
    Set<Equipment> atHand = EnumSet.allOf(Equipment.class);
    atHand.removeAll(remarks.missing());
    InspectionBuilder inspection =
        Inspection.builder(head.kind(), head.occasion(), MarkedDate.of(head.on()), head.by())
            .gearClean(remarks.clean())
            .atHand(atHand);
    if (signedFor.isPresent() && found.isEmpty() && remarks.skipped().isEmpty()) {
      return inspection.signOff(new SignOff(signedFor.get(), Set.of())).build();
    }
    for (CriterionRow row : criteria.required(head.kind(), element, use)) {
      inspection.outcome(row.key(), outcome(row, found, remarks));
    }
    return inspection.build();
  }

  /** Of an old inspection there is only a date in the books. */
  static Inspection dateOnly(Head head) {
    return Inspection.builder(
            head.kind(), head.occasion(), MarkedDate.of(head.on()), Optional.empty())
        .build();
  }

  private Outcome outcome(CriterionRow row, List<Finding> found, Remarks remarks) {
    if (row.sites().stream().anyMatch(site -> remarks.skipped().contains(site.part()))) {
      return Outcome.NOT_DONE;
    }
    if (found.stream().anyMatch(finding -> covers(row, finding))) {
      return Outcome.FOUND;
    }
    return notFitted.containsAll(row.sites()) ? Outcome.NOT_FITTED : Outcome.CLEAR;
  }

  private static boolean covers(CriterionRow row, Finding finding) {
    return row.lookFor().contains(finding.defect()) && row.sites().contains(finding.site());
  }
}
