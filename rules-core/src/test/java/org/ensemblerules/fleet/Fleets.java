package org.ensemblerules.fleet;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.ensemblerules.gear.Element;
import org.ensemblerules.gear.ElementBuilder;
import org.ensemblerules.gear.ElementId;
import org.ensemblerules.issue.JudgedElement;
import org.ensemblerules.issue.KeptElement;
import org.ensemblerules.issue.SafetyNotice;
import org.ensemblerules.issue.Whereabouts;
import org.ensemblerules.testkit.FitGear;
import org.ensemblerules.testkit.FrozenRules;
import org.ensemblerules.testkit.GearCase;

/** Elements of an invented department, judged by the frozen rules. */
final class Fleets {
  static final LocalDate DAY = FitGear.AS_OF;

  private Fleets() {}

  static JudgedElement judged(GearCase given, Whereabouts where, SafetyNotice... notices) {
    return JudgedElement.of(
        FrozenRules.rules(), new KeptElement(given.assessment(), where), List.of(notices), DAY);
  }

  /** The same case under another id. */
  static GearCase named(String id, GearCase given) {
    ElementBuilder named =
        Element.builder(new ElementId(id), given.element().kind(), given.element().use())
            .inService(given.element().inService())
            .cbrnOption(given.element().cbrnOption());
    given.element().label().ifPresent(named::label);
    given.element().layerLabels().forEach(named::layer);
    given.element().notFitted().forEach(named::notFitted);
    return given.with(named.build());
  }

  /** Each with an id, a holder and a station of its own, a spare now and then. */
  static List<JudgedElement> all(List<GearCase> cases) {
    List<JudgedElement> all = new ArrayList<>();
    for (int i = 0; i < cases.size(); i++) {
      all.add(
          judged(
              named("E-" + i, cases.get(i)),
              i % 4 == 3
                  ? Whereabouts.spare("Station " + i % 2, "Shelf")
                  : Whereabouts.with("Member " + i % 3, "Station " + i % 2)));
    }
    return all;
  }
}
