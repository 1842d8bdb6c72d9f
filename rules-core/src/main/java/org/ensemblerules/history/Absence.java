package org.ensemblerules.history;

import com.google.common.collect.ImmutableList;
import java.util.List;
import java.util.Optional;
import org.ensemblerules.inspection.Inspection;
import org.ensemblerules.inspection.Occasion;

/**
 * Where the element is by its record: taken out of service, out of the department's hands, or back
 * and not looked at since.
 *
 * @since 0.1
 */
public final class Absence {
  private final Evidence evidence;
  private final ReturnTable returns;

  Absence(Evidence evidence, ReturnTable returns) {
    this.evidence = evidence;
    this.returns = returns;
  }

  /**
   * Lists what took the element out of service and was not undone. Only a return that counts, and
   * came certainly later, undoes it.
   *
   * @return the events that took it out, or may have by the day, in the order of the history
   */
  public List<UseEvent.TakenOut> outOfService() {
    List<UseEvent.TakenOut> taken = evidence.history().events(UseEvent.TakenOut.class);
    if (taken.isEmpty()) {
      return taken;
    }
    Optional<Moment> back =
        evidence.counting(UseEvent.BackInService.class).stream()
            .map(Event::when)
            .max(Moment.LAST_CERTAIN);
    return taken.stream()
        .filter(out -> out.when().date().possiblyBy(evidence.asOf()))
        .filter(out -> !back.map(when -> when.certainlyAfter(out.when())).orElse(false))
        .collect(ImmutableList.toImmutableList());
  }

  /**
   * Lists what took the element out of the department's hands and is not certainly over: loans,
   * jobs at a provider, losses and thefts.
   *
   * @return the transfers by which it went, or may have by the day, in the order of the history
   */
  public List<UseEvent.Moved> away() {
    ImmutableList.Builder<UseEvent.Moved> away = ImmutableList.builder();
    for (UseEvent.Moved gone : evidence.history().events(UseEvent.Moved.class)) {
      if (gone.when().date().possiblyBy(evidence.asOf())
          && gone.transfer().endedBy().filter(ends -> !endedAfter(ends, gone)).isPresent()) {
        away.add(gone);
      }
    }
    return away.build();
  }

  private boolean endedAfter(Transfer ends, UseEvent.Moved gone) {
    return evidence.history().events(UseEvent.Moved.class).stream()
        .filter(back -> back.transfer() == ends && back.when().date().certainlyBy(evidence.asOf()))
        .anyMatch(back -> back.when().certainlyAfter(gone.when()));
  }

  /**
   * Lists with what the element came back from others' hands and was not inspected since as {@link
   * ReturnTable} asks. Such an inspection counts, and came certainly later, or on the same day and
   * says that the return was its occasion, if that day had no other.
   *
   * @return the returns, or what may have been one by the day, in the order of the history, once
   *     for each row that asks, and once where none does
   */
  public List<UnseenReturn> unseenReturns() {
    ImmutableList.Builder<UnseenReturn> unseen = ImmutableList.builder();
    for (UseEvent.Moved back : evidence.history().events(UseEvent.Moved.class)) {
      if (back.transfer().comesBack() && back.when().date().possiblyBy(evidence.asOf())) {
        for (Optional<ReturnRow> row : asked(back.transfer())) {
          if (row.filter(asked -> inspectedAfter(asked, back)).isEmpty()) {
            unseen.add(new UnseenReturn(back, row));
          }
        }
      }
    }
    return unseen.build();
  }

  /**
   * Lists what is asked of the element once it is back from others' hands.
   *
   * @param back the transfer with which it comes; not null
   * @return each row that asks something; empty in place of one where no rule covers it
   */
  public List<Optional<ReturnRow>> asked(Transfer back) {
    List<ReturnRow> rows = returns.rows(back);
    return rows.isEmpty()
        ? ImmutableList.of(Optional.empty())
        : rows.stream().map(Optional::of).collect(ImmutableList.toImmutableList());
  }

  private boolean inspectedAfter(ReturnRow asked, UseEvent.Moved back) {
    return evidence.counting(LookEvent.Inspected.class).stream()
        .filter(asked::asksFor)
        .anyMatch(done -> done.when().follows(back.when(), names(done.inspection(), back)));
  }

  private boolean names(Inspection made, UseEvent.Moved back) {
    return made.occasion() == Occasion.AFTER_RETURN
        && evidence.order().namesOne(Occasion.AFTER_RETURN, back.when());
  }
}
