package org.ensemblerules.assess;

import com.google.common.collect.ImmutableList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import org.ensemblerules.history.DecisionEvent;
import org.ensemblerules.history.OpenDecision;
import org.ensemblerules.verdict.AuthorityDecision;
import org.ensemblerules.verdict.Reason;
import org.ensemblerules.verdict.ReasonKind;

/** Did an inspector decide more strictly than the rules, and what did the authority decide? */
final class DecisionQuestion {
  private DecisionQuestion() {}

  static void ask(CaseFile file, Consumer<Reason> reasons) {
    for (OpenDecision open : file.evidence().findings().decisions()) {
      DecisionEvent.InspectorDecided decided = open.decided();
      reasons.accept(
          new Reason(
              ReasonKind.INSPECTOR_DECIDED,
              Optional.empty(),
              decided.site(),
              Optional.of(decided.id()),
              "decided by " + decided.by().name() + ", " + decided.when() + ": " + decided.why(),
              decided.effect(),
              Set.of(),
              Set.of(),
              open.attempts()));
    }
  }

  /** What the authority decided by then; nothing of it is asked when a verdict is computed. */
  static List<AuthorityDecision> ofAuthority(CaseFile file) {
    ImmutableList.Builder<AuthorityDecision> all = ImmutableList.builder();
    for (DecisionEvent.AuthorityDecided decided :
        file.history().events(DecisionEvent.AuthorityDecided.class)) {
      if (decided.when().date().possiblyBy(file.asOf())) {
        all.add(
            new AuthorityDecision(
                decided.when().date(), decided.authority(), decided.decision(), decided.why()));
      }
    }
    return all.build();
  }
}
