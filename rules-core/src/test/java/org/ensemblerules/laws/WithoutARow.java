package org.ensemblerules.laws;

import java.util.Optional;
import org.ensemblerules.ruleset.RuleSet;
import org.ensemblerules.source.RefusedException;
import org.ensemblerules.source.Row;
import org.ensemblerules.testkit.FrozenRules;

/** The frozen rules with one row taken away, where the rest is still sound. */
final class WithoutARow {
  private WithoutARow() {}

  static Optional<RuleSet> of(Row gone) {
    try {
      return Optional.of(FrozenRules.of(RebuiltTables.without(FrozenRules.tables(), gone)));
    } catch (RefusedException faulty) {
      // Tables that must name every check, doer or extent are faulty without the row.
      return Optional.empty();
    }
  }
}
