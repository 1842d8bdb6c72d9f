package org.ensemblerules.readme;

import java.time.LocalDate;
import org.ensemblerules.GearRules;
import org.ensemblerules.tables.AssessmentJson;
import org.ensemblerules.tables.ShippedRules;
import org.ensemblerules.tables.ShippedWords;
import org.ensemblerules.verdict.Assessment;
import org.ensemblerules.verdict.Verdict;
import org.ensemblerules.words.Sentences;

/** The lines that the README shows, compiled. */
final class Embedding {
  private Embedding() {}

  static void run(String json) {
    // README begins
    GearRules rules = ShippedRules.standard();
    Assessment gear = AssessmentJson.read("assessment", json).orElseThrow();
    Verdict verdict = rules.assess(gear, LocalDate.of(2026, 11, 25));
    Sentences say = new Sentences(ShippedWords.english());
    say.explain(verdict).forEach(System.out::println);
    // README ends
  }
}
