package org.ensemblerules.assess;

import java.util.function.Consumer;
import org.ensemblerules.verdict.Reason;

/** One question of a verdict. Each answers by itself, so that one reason never hides another. */
@FunctionalInterface
interface Question {
  void ask(CaseFile file, Consumer<Reason> reasons);
}
