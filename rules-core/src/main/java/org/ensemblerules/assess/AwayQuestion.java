package org.ensemblerules.assess;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.ensemblerules.effect.Check;
import org.ensemblerules.effect.Effect;
import org.ensemblerules.effect.Scope;
import org.ensemblerules.gear.Part;
import org.ensemblerules.gear.Site;
import org.ensemblerules.history.Event;
import org.ensemblerules.history.ReturnRow;
import org.ensemblerules.history.Transfer;
import org.ensemblerules.history.UnseenReturn;
import org.ensemblerules.history.UseEvent;
import org.ensemblerules.verdict.Reason;
import org.ensemblerules.verdict.ReasonKind;

/** Is the element in the department's hands, and was it looked at since it came back to them? */
final class AwayQuestion {
  private AwayQuestion() {}

  static void ask(CaseFile file, Consumer<Reason> reasons) {
    for (UseEvent.Moved gone : file.evidence().absence().away()) {
      gone.transfer().endedBy().ifPresent(back -> away(file, gone, back, reasons));
    }
    for (UnseenReturn unseen : file.evidence().absence().unseenReturns()) {
      reasons.accept(unseen(file, unseen.back(), unseen.row()));
    }
  }

  private static void away(
      CaseFile file, UseEvent.Moved gone, Transfer back, Consumer<Reason> reasons) {
    String seen =
        said(gone)
            + "; not certainly "
            + back
            + " since"
            + file.evidence().order().howToTell(gone.when(), event -> is(event, back));
    for (Optional<ReturnRow> row : file.evidence().absence().asked(back)) {
      reasons.accept(reason(ReasonKind.AWAY, row, seen));
    }
  }

  private static boolean is(Event event, Transfer transfer) {
    return event instanceof UseEvent.Moved moved && moved.transfer() == transfer;
  }

  private static Reason unseen(CaseFile file, UseEvent.Moved back, Optional<ReturnRow> row) {
    if (row.isEmpty()) {
      return reason(
          ReasonKind.NO_RULE,
          row,
          said(back) + ", and no row says how it is inspected before it serves");
    }
    ReturnRow asks = row.orElseThrow();
    return reason(
        ReasonKind.BACK_UNSEEN,
        row,
        said(back)
            + ", and no "
            + asks.least().check()
            + " that counts is recorded after it; one on the same day counts if its occasion is"
            + " AFTER_RETURN"
            + file.evidence().order().howToTell(back.when(), asks::asksFor));
  }

  private static String said(UseEvent.Moved moved) {
    return moved.transfer() + " " + moved.when() + ", " + moved.to();
  }

  private static Reason reason(ReasonKind kind, Optional<ReturnRow> row, String seen) {
    return Reasons.of(
        kind,
        row,
        Site.of(Part.WHOLE_ELEMENT),
        Optional.empty(),
        seen,
        new Effect.Evaluate(
            row.map(asks -> asks.least().check()).orElse(Check.EXPERT_EVALUATION), Scope.ELEMENT),
        List.of());
  }

  /** What must be on record before anybody can look at it; empty if it is in hand. */
  static Optional<String> first(CaseFile file) {
    List<String> back =
        file.evidence().absence().away().stream()
            .flatMap(gone -> gone.transfer().endedBy().stream())
            .distinct()
            .map(Transfer::name)
            .toList();
    return back.isEmpty()
        ? Optional.empty()
        : Optional.of("Once it is back, and the record says so: " + String.join(", ", back) + ".");
  }
}
