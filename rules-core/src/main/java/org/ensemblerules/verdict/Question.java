package org.ensemblerules.verdict;

import java.util.function.Consumer;

/** One question of a verdict. Each answers by itself, so that one reason never hides another. */
@FunctionalInterface
interface Question {
  void ask(CaseFile file, Consumer<Reason> reasons);
}
