package org.ensemblerules.verdict;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.ensemblerules.effect.Check;
import org.ensemblerules.effect.Effect;
import org.ensemblerules.effect.Scope;
import org.ensemblerules.gear.Part;
import org.ensemblerules.gear.Site;
import org.ensemblerules.history.Event;
import org.ensemblerules.history.Transfer;
import org.ensemblerules.inspection.InspectionKind;

/** Is the element in the department's hands, and was it looked at since it came back to them? */
final class AwayQuestion {
  private AwayQuestion() {}

  static void ask(CaseFile file, Consumer<Reason> reasons) {
    for (Event.Moved gone : file.evidence().away()) {
      gone.transfer()
          .endedBy()
          .ifPresent(
              back ->
                  reasons.accept(
                      reason(
                          ReasonKind.AWAY,
                          went(gone)
                              + "; not certainly "
                              + back
                              + " since"
                              + file.evidence().howToOrder(gone.when(), event -> is(event, back)),
                          back)));
    }
    for (Event.Moved back : file.evidence().notLookedAtSinceBack()) {
      String seen =
          back.transfer()
              + " "
              + back.when()
              + ", "
              + back.to()
              + ", and no "
              + look(back.transfer())
              + " that counts is certainly later; on the same day it counts if its occasion is"
              + " AFTER_RETURN"
              + file.evidence().howToOrder(back.when(), event -> isLook(event, back.transfer()));
      reasons.accept(reason(ReasonKind.BACK_UNSEEN, seen, back.transfer()));
    }
  }

  private static boolean is(Event event, Transfer transfer) {
    return event instanceof Event.Moved moved && moved.transfer() == transfer;
  }

  private static boolean isLook(Event event, Transfer back) {
    return event instanceof Event.Inspected done
        && (!back.cameUnseen() || done.inspection().kind() == InspectionKind.ADVANCED);
  }

  private static String went(Event.Moved gone) {
    return gone.transfer() + " " + gone.when() + ", " + gone.to();
  }

  private static Check look(Transfer back) {
    return back.cameUnseen() ? Check.ADVANCED_INSPECTION : Check.ROUTINE_INSPECTION;
  }

  private static Reason reason(ReasonKind kind, String seen, Transfer back) {
    return new Reason(
        kind,
        Optional.empty(),
        Site.of(Part.WHOLE_ELEMENT),
        Optional.empty(),
        seen,
        new Effect.Evaluate(look(back), Scope.ELEMENT),
        List.of());
  }

  /** What must be on record before anybody can look at it; empty if it is in hand. */
  static Optional<String> first(CaseFile file) {
    List<String> back =
        file.evidence().away().stream()
            .flatMap(gone -> gone.transfer().endedBy().stream())
            .distinct()
            .map(Transfer::name)
            .toList();
    return back.isEmpty()
        ? Optional.empty()
        : Optional.of("Once it is back, and the record says so: " + String.join(", ", back) + ".");
  }
}
