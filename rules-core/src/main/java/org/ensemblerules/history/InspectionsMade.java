package org.ensemblerules.history;

import com.google.common.base.Suppliers;
import com.google.common.collect.ImmutableList;
import com.google.common.collect.Lists;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.function.Supplier;
import org.ensemblerules.inspection.CriteriaTable;
import org.ensemblerules.inspection.Inspection;
import org.ensemblerules.inspection.InspectionKind;

/**
 * Which inspections on record count, and which were begun and not made good.
 *
 * @since 0.1
 */
public final class InspectionsMade {
  private final Evidence evidence;
  private final CriteriaTable criteria;
  private final Supplier<ImmutableList<Judgment>> notMadeGood =
      Suppliers.memoize(this::begunAndNotMadeGood);

  InspectionsMade(Evidence evidence, CriteriaTable criteria) {
    this.evidence = evidence;
    this.criteria = criteria;
  }

  /**
   * Lists the inspections that answers rest on, each with how much the record has of it: of each
   * kind the last that counts, and the newest after that which does not.
   *
   * @return the inspections by kind; never null
   */
  public List<InspectionOnRecord> onRecord() {
    ImmutableList.Builder<InspectionOnRecord> all = ImmutableList.builder();
    for (InspectionKind kind : InspectionKind.values()) {
      lastOnRecord(kind).map(InspectionOnRecord::of).ifPresent(all::add);
      List<Judgment> newer =
          evidence.notCounting(
              event ->
                  event instanceof LookEvent.Inspected done && done.inspection().kind() == kind);
      if (!newer.isEmpty()) {
        all.add(InspectionOnRecord.of(newer.get(0)));
      }
    }
    return all.build();
  }

  private Optional<Judgment> lastOnRecord(InspectionKind kind) {
    for (LookEvent.Inspected done :
        Lists.reverse(evidence.history().events(LookEvent.Inspected.class))) {
      if (done.inspection().kind() == kind && evidence.counts(done)) {
        return evidence.judgment(done);
      }
    }
    return Optional.empty();
  }

  /**
   * Lists the inspections that were begun and do not count, for more than their date, and that no
   * other has made good: one that counts, is certainly later, and looks at all that they should
   * have looked at (one of their kind, or a fuller one that covers it). Of a kind that such an
   * element does not have, an advanced one makes good. What goes on with another that was begun is
   * told with that one.
   *
   * @return the judgments, the newest first; never null
   */
  public List<Judgment> notMadeGood() {
    return notMadeGood.get();
  }

  private ImmutableList<Judgment> begunAndNotMadeGood() {
    ImmutableList.Builder<Judgment> found = ImmutableList.builder();
    for (LookEvent.Inspected begun :
        Lists.reverse(evidence.history().events(LookEvent.Inspected.class))) {
      if (begun.inspection().on().possiblyBy(evidence.asOf()) && !madeGood(begun)) {
        Judgment judged = evidence.judgment(begun).orElseThrow();
        if (judged.objectsToMoreThanItsDate() && !judged.goesOn()) {
          found.add(judged);
        }
      }
    }
    return found.build();
  }

  /**
   * Finds the last of the inspections of a sort that count: whatever is certainly before any of
   * them is certainly before that one.
   *
   * @param sort which inspections; not null
   * @return when it was made; empty if none counts
   */
  public Optional<Moment> last(Predicate<Inspection> sort) {
    return evidence.latest().inspected(sort);
  }

  private boolean madeGood(LookEvent.Inspected begun) {
    return evidence.latest().inspectedAfter(askedFor(begun), begun.when(), false);
  }

  private InspectionKind askedFor(LookEvent.Inspected begun) {
    InspectionKind kind = begun.inspection().kind();
    return hasCriteria(kind) ? kind : InspectionKind.ADVANCED;
  }

  /**
   * Tells whether there is such an inspection of such an element.
   *
   * @param kind the kind of inspection; not null
   * @return true if it has criteria
   */
  public boolean hasCriteria(InspectionKind kind) {
    return !criteria.required(kind, evidence.element().kind(), evidence.element().use()).isEmpty();
  }

  /**
   * Says how the record may tell that another inspection of its day makes good one that does not
   * count.
   *
   * @param begun the inspection that does not count; not null
   * @return a text that begins with a semicolon; empty if none of that day would
   */
  public String howToMakeGood(LookEvent.Inspected begun) {
    InspectionKind asked = askedFor(begun);
    return evidence
        .order()
        .howToTell(
            begun.when(),
            other ->
                other instanceof LookEvent.Inspected done
                    && criteria.covers(
                        done.inspection().kind(),
                        asked,
                        evidence.element().kind(),
                        evidence.element().use()));
  }
}
