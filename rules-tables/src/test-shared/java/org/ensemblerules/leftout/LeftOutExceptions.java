package org.ensemblerules.leftout;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.ensemblerules.effect.Check;
import org.ensemblerules.gear.LayerKind;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.history.Contradiction;
import org.ensemblerules.history.Event;
import org.ensemblerules.history.LookEvent;
import org.ensemblerules.history.UseEvent;
import org.ensemblerules.inspection.Occasion;
import org.ensemblerules.ruleset.RuleSet;
import org.ensemblerules.schedule.TaskKey;
import org.ensemblerules.verdict.Assessment;
import org.ensemblerules.verdict.Service;

/** Where leaving something out is milder all the same, each for a reason told in the docs. */
enum LeftOutExceptions {
  /** What alone says that stock left the shelf. */
  STOCK_LEFT_THE_SHELF {
    @Override
    boolean holds(RuleSet rules, Assessment given, Taken taken, String fault) {
      return taken.way().at().toString().startsWith("/element/inService")
          && !given.history().events(UseEvent.Stocked.class).isEmpty();
    }
  },

  /** What says that a repair was made, for the check that must follow it. */
  CHECK_AFTER_A_REPAIR {
    @Override
    boolean holds(RuleSet rules, Assessment given, Taken taken, String fault) {
      return fault.startsWith(TaskKey.CHECK_AFTERWARD.value());
    }
  },

  /** What says that an incident released it, for what may not be done before. */
  RELEASE_LEFT_OUT {
    @Override
    boolean holds(RuleSet rules, Assessment given, Taken taken, String fault) {
      String[] steps = taken.way().at().toString().split("/", -1);
      return steps[1].equals("history")
          && given.history().events().get(Integer.parseInt(steps[2]))
              instanceof LookEvent.Checked done
          && done.check() == Check.INCIDENT_RELEASE
          && !fault.startsWith(Service.IN.name());
    }
  },

  /** What alone speaks against a statement that something came after another thing of its day. */
  ORDER_AGAINST_A_STATEMENT {
    @Override
    boolean holds(RuleSet rules, Assessment given, Taken taken, String fault) {
      String[] steps = taken.way().at().toString().split("/", -1);
      if (!steps[steps.length - 1].equals("orderInDay")) {
        return false;
      }
      MarkedDate day = given.history().events().get(Integer.parseInt(steps[2])).when().date();
      return given.history().events().stream()
              .filter(event -> event.when().date().equals(day))
              .anyMatch(LeftOutExceptions::saysAfterWork)
          || given.history().contradictions(List.of()).stream()
              .filter(each -> each.kind() == Contradiction.Kind.STATED_ORDER)
              .anyMatch(each -> each.event().when().date().equals(day));
    }
  },

  /** What alone says that a layer is there that only some elements have. */
  LAYER_SAID_NOWHERE_ELSE {
    @Override
    boolean holds(RuleSet rules, Assessment given, Taken taken, String fault) {
      return !layers(rules, taken.assessment(), taken.asOf())
          .containsAll(layers(rules, given, taken.asOf()));
    }
  };

  private static boolean saysAfterWork(Event event) {
    return event instanceof LookEvent.Inspected look
        ? look.inspection().occasion() == Occasion.AFTER_WORK
        : event instanceof LookEvent.Checked check && check.afterWork();
  }

  private static List<Optional<LayerKind>> layers(RuleSet rules, Assessment given, LocalDate asOf) {
    return rules.evidenceTables().labeledLayers(given.element(), given.history(), asOf);
  }

  abstract boolean holds(RuleSet rules, Assessment given, Taken taken, String fault);

  static Optional<LeftOutExceptions> of(
      RuleSet rules, Assessment given, Taken taken, String fault) {
    for (LeftOutExceptions each : values()) {
      if (each.holds(rules, given, taken, fault)) {
        return Optional.of(each);
      }
    }
    return Optional.empty();
  }
}
