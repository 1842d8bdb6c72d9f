package org.ensemblerules.readme;

import java.time.LocalDate;
import org.ensemblerules.GearRules;
import org.ensemblerules.tables.AssessmentJson;
import org.ensemblerules.tables.ShippedRules;
import org.ensemblerules.verdict.Assessment;
import org.ensemblerules.verdict.Verdict;

/** The lines that the README shows, compiled. */
final class Embedding {
  private Embedding() {}

  static void run(String json) {
    // README begins
    GearRules rules = ShippedRules.standard();
    Assessment coat = AssessmentJson.read("assessment", json).orElseThrow();
    Verdict verdict = rules.assess(coat, LocalDate.of(2026, 11, 25));
    System.out.println(verdict.service() + " " + verdict.headline());
    verdict.reasons().forEach(why -> System.out.println(why.seen() + ": " + why.effect().text()));
    // README ends
  }
}
