package org.ensemblerules.pages;

import static org.ensemblerules.effect.CleaningKind.ADVANCED;

import java.time.LocalDate;
import org.ensemblerules.GearRules;
import org.ensemblerules.effect.Doer;
import org.ensemblerules.effect.DoerRegister;
import org.ensemblerules.gear.Element;
import org.ensemblerules.gear.ElementBuilder;
import org.ensemblerules.gear.ElementId;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.Label;
import org.ensemblerules.gear.LabelBuilder;
import org.ensemblerules.gear.LayerKind;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.gear.Use;
import org.ensemblerules.history.LookEvent;
import org.ensemblerules.history.Moment;
import org.ensemblerules.history.UseEvent;
import org.ensemblerules.history.WorkEvent.Cleaned;
import org.ensemblerules.inspection.Inspection;
import org.ensemblerules.inspection.InspectionBuilder;
import org.ensemblerules.inspection.InspectionKind;
import org.ensemblerules.inspection.Occasion;
import org.ensemblerules.verdict.Assessment;
import org.ensemblerules.verdict.AssessmentBuilder;
import org.ensemblerules.verdict.Verdict;

/** From a row to a verdict: the lines that the page shows, compiled. */
final class RowToVerdict {
  private RowToVerdict() {}

  // page begins
  static Verdict verdict(GearRules rules, DoerRegister people, CoatRow row, LocalDate today) {
    return rules.assess(assessment(people, row), today);
  }

  static Assessment assessment(DoerRegister people, CoatRow row) {
    LabelBuilder label = Label.builder().manufactured(MarkedDate.parse(row.made()));
    row.maker().ifPresent(label::manufacturer);
    row.model().ifPresent(label::model);
    row.size().ifPresent(label::size);
    label.certificationMark(row.mark()).legibility(row.legibility());
    ElementBuilder coat =
        Element.builder(new ElementId(row.id()), ElementKind.COAT, Use.STRUCTURAL)
            .inService(MarkedDate.parse(row.issued()))
            .layer(LayerKind.OUTER_SHELL, label.build())
            .layer(LayerKind.LINER_SYSTEM, label.build());
    AssessmentBuilder record = Assessment.builder(coat.build());
    record.event(new UseEvent.Issued(Moment.on(row.issued()), "its wearer"));
    Doer washer = people.doer(row.washedBy());
    for (String day : row.washes()) {
      record.event(Cleaned.of(Moment.on(day), ADVANCED, washer, row.washedWholeWithinLimits()));
    }
    MarkedDate on = MarkedDate.parse(row.inspected());
    Doer inspector = people.doer(row.inspectedBy());
    InspectionBuilder made =
        Inspection.builder(InspectionKind.ADVANCED, Occasion.PERIODIC, on, inspector);
    made.gearClean(row.cleanWhenInspected()).atHand(row.atHand());
    row.signedOffFor().ifPresent(made::allClear);
    row.items().forEach(made::outcome);
    return record.event(new LookEvent.Inspected(made.build(), 0)).build();
  }
  // page ends
}
