package org.ensemblerules.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.Stream;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.ShrinkingMode;
import org.ensemblerules.GearRules;
import org.ensemblerules.ruleset.RuleSet;
import org.ensemblerules.tables.ShippedRules;
import org.ensemblerules.tables.ShippedWords;
import org.ensemblerules.testkit.ArbitrariesOfRecords;
import org.ensemblerules.testkit.ShippedGear;
import org.ensemblerules.verdict.Assessment;
import org.ensemblerules.verdict.Verdict;
import org.ensemblerules.verdict.WayBack;

/** No sentence bears a code, but for the names of editions, whatever the verdict is about. */
class SentencesProperties {
  private static final RuleSet RULES = ShippedRules.standard().rules();
  private static final Sentences SENTENCES = new Sentences(ShippedWords.english());

  @Provide
  Arbitrary<Assessment> records() {
    return ArbitrariesOfRecords.records(RULES);
  }

  @Property(tries = 500, edgeCases = EdgeCasesMode.NONE, shrinking = ShrinkingMode.BOUNDED)
  void noSentenceBearsACode(@ForAll("records") Assessment given) {
    Verdict verdict = GearRules.of(RULES).assess(given, ShippedGear.AS_OF);
    Stream<String> steps =
        verdict.wayBack() instanceof WayBack.Steps way
            ? way.steps().stream().map(SENTENCES::of)
            : Stream.empty();
    Stream.of(
            Stream.of(SENTENCES.of(verdict)),
            steps,
            verdict.reasons().stream().map(SENTENCES::of),
            verdict.due().stream().map(due -> SENTENCES.of(due, verdict.asOf())))
        .flatMap(texts -> texts)
        .forEach(
            text -> assertThat(text).doesNotContainPattern("[A-Z]{2,}_(?!\\d)|_[A-Z]{2,}|@[A-Z]"));
  }
}
