package org.ensemblerules.record;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.gear.YesNoUnknown;
import org.ensemblerules.history.Event;
import org.ensemblerules.history.History;
import org.ensemblerules.history.LookEvent;
import org.ensemblerules.history.UseEvent;
import org.ensemblerules.inspection.Occasion;
import org.ensemblerules.inspection.Outcome;
import org.ensemblerules.retirement.DisposalRoute;

/** What history and file say of what happened to an element. */
final class EventEntries {
  private static final Pattern CAPITAL = Pattern.compile("[A-Z]");

  private final RecordFile file;
  private final History history;

  EventEntries(RecordFile file, History history) {
    this.file = file;
    this.history = history;
  }

  private List<Event> of(RecordItem item) {
    return history.events().stream().filter(item::records).toList();
  }

  /** Why there is nothing to record; empty if there is, or if that nothing is, is not known. */
  Optional<String> notYet(RecordItem item) {
    if (item.isOnLabel() || !of(item).isEmpty()) {
      return Optional.empty();
    }
    return switch (item) {
      case ISSUED_TO, ISSUE_DATE_AND_CONDITION ->
          file.inStock() == YesNoUnknown.YES ? Optional.of("never issued") : Optional.empty();
      case DISPOSAL ->
          file.disposal().isPresent() ? Optional.empty() : Optional.of("not disposed of");
      case RETIREMENT_DATE -> Optional.of("not retired");
      default -> Optional.of("none on record");
    };
  }

  List<String> missing(RecordItemRow row) {
    List<String> missing = new ArrayList<>();
    List<Event> events = of(row.item());
    for (RecordDetail detail : row.details()) {
      if (events.isEmpty()) {
        missing.add(detail.text());
      }
      for (Event event : events) {
        if (!has(row.item(), event, detail)) {
          missing.add(detail.text() + " when " + happened(event));
        }
      }
    }
    if (row.item() == RecordItem.DISPOSAL
        && marked().filter(YesNoUnknown.UNKNOWN::equals).isPresent()) {
      missing.add("whether it was marked for training");
    }
    return missing;
  }

  private static String happened(Event event) {
    return CAPITAL.matcher(event.name()).replaceAll(" $0").strip().toLowerCase(Locale.ROOT)
        + " on "
        + event.when();
  }

  private boolean has(RecordItem item, Event event, RecordDetail detail) {
    return switch (detail) {
      case DATE -> event.when().date() instanceof MarkedDate.Day;
      // Event types cannot be built without these.
      case HOLDER, METHOD -> true;
      case DOER ->
          !(event instanceof LookEvent.Inspected made) || made.inspection().by().isPresent();
      case CONDITION -> noted(item, event, detail) || inspectedOnIssue(event);
      case FINDINGS ->
          noted(item, event, detail) || !event.answers().isEmpty() || sawAnything(event);
      case REASON, DESCRIPTION -> noted(item, event, detail) || !event.answers().isEmpty();
      default -> throw new IllegalStateException("no detail of an event: " + detail);
    };
  }

  private boolean noted(RecordItem item, Event event, RecordDetail detail) {
    return file.notes().stream()
        .anyMatch(note -> note.item() == item && note.detail() == detail && note.isAbout(event));
  }

  private boolean inspectedOnIssue(Event issued) {
    return history.events(LookEvent.Inspected.class).stream()
        .filter(made -> made.inspection().occasion() == Occasion.ON_ISSUE)
        .filter(made -> issued.when().date() instanceof MarkedDate.Day)
        .filter(made -> made.inspection().on().equals(issued.when().date()))
        .anyMatch(EventEntries::sawAnything);
  }

  /** An inspection of which only is recorded that nothing was looked at has found nothing out. */
  private static boolean sawAnything(Event event) {
    return event instanceof LookEvent.Inspected made
        && (made.inspection().signOff().isPresent()
            || made.inspection().outcomes().stream()
                .anyMatch(each -> each.outcome() != Outcome.NOT_DONE));
  }

  List<String> faults(RecordItem item) {
    List<String> faults = new ArrayList<>();
    if (item == RecordItem.ISSUED_TO && file.inStock() == YesNoUnknown.YES && !of(item).isEmpty()) {
      faults.add("the file says that it was never issued; it was, " + of(item).get(0).when());
    }
    if (item == RecordItem.ISSUED_TO && file.inStock() == YesNoUnknown.YES && wasInUse()) {
      faults.add("the file says that it was never issued; it was in use");
    }
    for (RecordNote note : file.notes()) {
      if (note.item() == item && file.history().events().stream().noneMatch(note::isAbout)) {
        faults.add("a note of " + note.detail() + " on " + note.of() + ", and no such event");
      }
    }
    if (item == RecordItem.RETIREMENT_DATE
        && of(item).isEmpty()
        && (!of(RecordItem.DISPOSAL).isEmpty() || file.disposal().isPresent())) {
      faults.add("disposed of, and no retirement on record");
    }
    if (item == RecordItem.DISPOSAL) {
      for (Event disposed : of(item)) {
        of(RecordItem.RETIREMENT_DATE).stream()
            .filter(retired -> retired.when().certainlyAfter(disposed.when()))
            .forEach(
                retired ->
                    faults.add(
                        "disposed of " + disposed.when() + ", retired later, " + retired.when()));
      }
      if (marked().filter(YesNoUnknown.NO::equals).isPresent()) {
        faults.add("kept for training, and not marked");
      }
    }
    return faults;
  }

  private boolean wasInUse() {
    return !history.events(UseEvent.Used.class).isEmpty()
        || !history.events(UseEvent.Returned.class).isEmpty();
  }

  private Optional<YesNoUnknown> marked() {
    return file.disposal()
        .filter(note -> note.route() == DisposalRoute.NON_LIVE_FIRE_TRAINING)
        .map(DisposalNote::markedForTraining);
  }
}
