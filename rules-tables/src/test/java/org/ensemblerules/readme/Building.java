package org.ensemblerules.readme;

import java.time.LocalDate;
import org.ensemblerules.GearRules;
import org.ensemblerules.effect.Doer;
import org.ensemblerules.gear.Element;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.Label;
import org.ensemblerules.gear.Use;
import org.ensemblerules.inspection.Inspection;
import org.ensemblerules.inspection.InspectionKind;
import org.ensemblerules.inspection.Occasion;
import org.ensemblerules.verdict.Assessment;
import org.ensemblerules.verdict.Verdict;

/** The lines that the README shows for a record built in Java, compiled. */
final class Building {
  private Building() {}

  /**
   * Both verdicts of the README.
   *
   * @param before of the helmet that nobody has looked over since it was used
   * @param after of the same once its wearer has
   */
  record Answers(Verdict before, Verdict after) {}

  static Answers run(GearRules rules) {
    // README builds
    Label label =
        Label.builder()
            .manufacturer("Maker One")
            .model("Pattern H")
            .size("One size")
            .manufactured("2026-05")
            .readableAndCertified()
            .build();
    Element helmet =
        Element.builder("H-17", ElementKind.HELMET, Use.STRUCTURAL)
            .inService("2026-09-01")
            .label(label)
            .build();
    Doer wearer = Doer.member("Member 7");
    Inspection received =
        Inspection.builder(InspectionKind.ROUTINE, Occasion.ON_ISSUE, "2026-09-01", wearer)
            .gearClean()
            .allAtHand()
            .allClear("NFPA_1851_2020")
            .build();
    Assessment used = Assessment.builder(helmet).inspected(received).used("2026-11-23").build();
    Verdict verdict = rules.assess(used, LocalDate.of(2026, 11, 25));
    // README has built
    // README looks over
    Inspection look =
        Inspection.builder(InspectionKind.ROUTINE, Occasion.AFTER_USE, "2026-11-23", wearer)
            .gearClean()
            .allAtHand()
            .allClear("NFPA_1851_2020")
            .build();
    Assessment lookedOver =
        Assessment.builder(helmet).inspected(received).used("2026-11-23").inspected(look).build();
    Verdict after = rules.assess(lookedOver, LocalDate.of(2026, 11, 25));
    // README has looked over
    return new Answers(verdict, after);
  }
}
