package org.ensemblerules.record;

import com.google.common.collect.ImmutableSet;
import com.google.common.collect.Sets;
import java.util.EnumSet;
import java.util.Objects;
import java.util.Set;
import org.ensemblerules.effect.CleaningKind;
import org.ensemblerules.history.EndEvent;
import org.ensemblerules.history.Event;
import org.ensemblerules.history.LookEvent;
import org.ensemblerules.history.UseEvent;
import org.ensemblerules.history.WorkEvent;
import org.ensemblerules.inspection.InspectionKind;

/**
 * What is recorded of each element.
 *
 * @since 0.1
 */
public enum RecordItem {
  /** The person it is issued to. */
  ISSUED_TO(RecordDetail.HOLDER),
  /** Date and condition when issued. */
  ISSUE_DATE_AND_CONDITION(RecordDetail.DATE, RecordDetail.CONDITION),
  /** Maker and model name or design. */
  MAKER_AND_MODEL(RecordDetail.MAKER, RecordDetail.MODEL),
  /** The maker's identification, lot or serial number. */
  IDENTIFICATION(RecordDetail.IDENTIFICATION),
  /** Month and year of manufacture. */
  MANUFACTURE_DATE(RecordDetail.MONTH_AND_YEAR),
  /** Dates and findings of advanced inspections, complete liner inspections among them. */
  ADVANCED_INSPECTIONS(RecordDetail.DATE, RecordDetail.FINDINGS),
  /** Dates and findings of advanced cleanings and decontaminations. */
  ADVANCED_CLEANINGS(RecordDetail.DATE, RecordDetail.FINDINGS),
  /** Why and by whom it was cleaned or decontaminated. */
  CLEANING_REASON_AND_DOER(RecordDetail.REASON, RecordDetail.DOER),
  /** Repairs: date, by whom, what was done. */
  REPAIRS(RecordDetail.DATE, RecordDetail.DOER, RecordDetail.DESCRIPTION),
  /** Date of retirement. */
  RETIREMENT_DATE(RecordDetail.DATE),
  /** Date and method of disposal. */
  DISPOSAL(RecordDetail.DATE, RecordDetail.METHOD);

  private final ImmutableSet<RecordDetail> details;

  RecordItem(RecordDetail first, RecordDetail... more) {
    this.details = Sets.immutableEnumSet(EnumSet.of(first, more));
  }

  /**
   * Returns the details that can be asked of it.
   *
   * @return an unmodifiable set, at least one; never null
   */
  public Set<RecordDetail> details() {
    return details;
  }

  /**
   * Tells whether an event is one that this item records. Only such an event makes a new duty for
   * the item.
   *
   * @param event the event; not null
   * @return true if it is
   */
  public boolean records(Event event) {
    Objects.requireNonNull(event, "event");
    return switch (this) {
      case ISSUED_TO, ISSUE_DATE_AND_CONDITION -> event instanceof UseEvent.Issued;
      case MAKER_AND_MODEL, IDENTIFICATION, MANUFACTURE_DATE -> false;
      case ADVANCED_INSPECTIONS ->
          event instanceof LookEvent.Inspected made
              && made.inspection().kind() != InspectionKind.ROUTINE;
      case ADVANCED_CLEANINGS, CLEANING_REASON_AND_DOER ->
          event instanceof WorkEvent.Cleaned done && done.kind() != CleaningKind.EXPOSURE_REDUCTION;
      case REPAIRS -> event instanceof WorkEvent.Repaired;
      case RETIREMENT_DATE -> event instanceof EndEvent.Retired;
      case DISPOSAL -> event instanceof EndEvent.Disposed;
    };
  }

  /**
   * Tells whether it is something that was there from the day the element was made, and not
   * something that happens to it.
   *
   * @return true if the label tells it
   */
  public boolean isOnLabel() {
    return this == MAKER_AND_MODEL || this == IDENTIFICATION || this == MANUFACTURE_DATE;
  }
}
