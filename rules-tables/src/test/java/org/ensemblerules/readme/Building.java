package org.ensemblerules.readme;

import java.time.LocalDate;
import org.ensemblerules.GearRules;
import org.ensemblerules.gear.Element;
import org.ensemblerules.gear.ElementId;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.Label;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.gear.Use;
import org.ensemblerules.history.Moment;
import org.ensemblerules.history.UseEvent;
import org.ensemblerules.verdict.Assessment;
import org.ensemblerules.verdict.Verdict;

/** The lines that the README shows for a record built in Java, compiled. */
final class Building {
  private Building() {}

  static Verdict run(GearRules rules) {
    // README begins
    Label label =
        Label.builder()
            .manufacturer("Maker One")
            .model("Pattern H")
            .size("One size")
            .manufactured(MarkedDate.parse("2023-05"))
            .readableAndCertified()
            .build();
    Element helmet =
        Element.builder(new ElementId("H-17"), ElementKind.HELMET, Use.STRUCTURAL)
            .inService(MarkedDate.parse("2023-09-01"))
            .label(label)
            .build();
    Assessment record =
        Assessment.builder(helmet)
            .event(new UseEvent.Used(Moment.on(MarkedDate.parse("2026-11-23"))))
            .build();
    Verdict verdict = rules.assess(record, LocalDate.of(2026, 11, 25));
    // README ends
    return verdict;
  }
}
