package org.ensemblerules.pages;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.ensemblerules.care.WashedLayers;
import org.ensemblerules.effect.CleaningKind;
import org.ensemblerules.effect.Doer;
import org.ensemblerules.effect.DoerRegister;
import org.ensemblerules.gear.Element;
import org.ensemblerules.gear.ElementId;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.Label;
import org.ensemblerules.gear.LayerKind;
import org.ensemblerules.gear.Legibility;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.gear.Use;
import org.ensemblerules.history.Event;
import org.ensemblerules.history.History;
import org.ensemblerules.history.When;
import org.ensemblerules.inspection.Equipment;
import org.ensemblerules.inspection.Inspection;
import org.ensemblerules.inspection.InspectionKind;
import org.ensemblerules.inspection.Occasion;
import org.ensemblerules.inspection.SignOff;
import org.ensemblerules.ruleset.RuleSet;
import org.ensemblerules.verdict.Assess;
import org.ensemblerules.verdict.Assessment;
import org.ensemblerules.verdict.Verdict;

/** From a row to a verdict: the lines that the page shows, compiled. */
final class RowToVerdict {
  private RowToVerdict() {}

  // page begins
  static Verdict verdict(RuleSet rules, DoerRegister people, CoatRow row, LocalDate today) {
    return Assess.assess(rules, assessment(people, row), today);
  }

  static Assessment assessment(DoerRegister people, CoatRow row) {
    Label.Builder label = Label.builder().manufactured(MarkedDate.parse(row.made()));
    Optional.ofNullable(row.label().get("maker")).ifPresent(label::manufacturer);
    Optional.ofNullable(row.label().get("model")).ifPresent(label::model);
    Optional.ofNullable(row.label().get("size")).ifPresent(label::size);
    label.certificationMark(row.mark());
    label.legibility(row.label().isEmpty() ? Legibility.UNKNOWN : Legibility.READABLE);
    Element.Builder coat =
        Element.builder(new ElementId(row.id()), ElementKind.COAT, Use.STRUCTURAL);
    coat.inService(MarkedDate.parse(row.issued()));
    coat.layer(LayerKind.OUTER_SHELL, label.build()).layer(LayerKind.LINER_SYSTEM, label.build());
    List<Event> history = new ArrayList<>();
    history.add(new Event.Issued(When.on(MarkedDate.parse(row.issued())), "its wearer"));
    Doer washer = people.doer(row.washedBy());
    boolean kept = row.washedWholeWithinLimits();
    WashedLayers layers = kept ? new WashedLayers.Whole() : new WashedLayers.NotStated();
    for (String day : row.washes()) {
      When when = When.on(MarkedDate.parse(day));
      CleaningKind kind = CleaningKind.ADVANCED;
      history.add(new Event.Cleaned(when, kind, washer, Set.of(), layers, kept, Optional.empty()));
    }
    MarkedDate inspected = MarkedDate.parse(row.inspected());
    Doer inspector = people.doer(row.inspectedBy());
    Inspection.Builder made =
        Inspection.builder(InspectionKind.ADVANCED, Occasion.PERIODIC, inspected, inspector)
            .gearClean(row.cleanWhenInspected());
    made.atHand(row.allAtHand() ? EnumSet.allOf(Equipment.class) : Set.of());
    row.signedOffFor().ifPresent(edition -> made.signOff(new SignOff(edition, Set.of())));
    row.items().forEach(made::outcome);
    history.add(new Event.Inspected(made.build(), 0));
    return Assessment.builder(coat.build()).history(History.of(history)).build();
  }
  // page ends
}
