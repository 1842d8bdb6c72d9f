package org.ensemblerules.assess;

import java.util.EnumMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.ensemblerules.care.CareAction;
import org.ensemblerules.care.CareRoute;
import org.ensemblerules.care.CareStanding;
import org.ensemblerules.care.Exposure;
import org.ensemblerules.defect.Finding;
import org.ensemblerules.effect.Check;
import org.ensemblerules.effect.CleaningKind;
import org.ensemblerules.effect.Effect;
import org.ensemblerules.effect.Scope;

/**
 * The order of what must be done: what the record needs, then the care route of all that the
 * element met and is not rid of, step by step, then what is judged and mended, and last the look at
 * the whole. So nobody opens, washes or tries what is still to stay shut.
 */
final class RouteOrder {
  private static final int ROUTE = 10;
  private static final int JUDGED = 50;
  private static final int RETIRED = 60;
  private static final int MENDED = 70;
  private static final int LAST = 80;

  private static final RouteOrder NO_ROUTE = new RouteOrder(Map.of(), false);

  private final Map<CareAction, CareStanding> route;
  private final boolean shut;

  private RouteOrder(Map<CareAction, CareStanding> route, boolean shut) {
    this.route = route;
    this.shut = shut;
  }

  static RouteOrder of(CaseFile file) {
    if (file.findings().isEmpty() && file.evidence().exposures().isEmpty()) {
      return NO_ROUTE;
    }
    Set<Exposure> met = new HashSet<>(CareQuestion.outstanding(file));
    for (Finding finding : file.findings()) {
      Exposure.of(finding.defect())
          .filter(exposure -> !FindingQuestion.open(file, finding).isEmpty())
          .ifPresent(met::add);
    }
    if (met.isEmpty()) {
      return NO_ROUTE;
    }
    Map<CareAction, CareStanding> standing = new EnumMap<>(CareAction.class);
    if (file.rules().careRoutes().route(file.element(), met) instanceof CareRoute.Steps steps) {
      steps
          .steps()
          .forEach(step -> standing.merge(step.action(), step.standing(), RouteOrder::max));
    } else {
      standing.put(CareAction.FIND_OUT, CareStanding.IN_TURN);
    }
    return new RouteOrder(standing, standing.containsKey(CareAction.FIND_OUT));
  }

  private static CareStanding max(CareStanding one, CareStanding other) {
    return one.compareTo(other) >= 0 ? one : other;
  }

  /** The place of an effect; lower comes first. */
  int rank(Effect effect) {
    if (effect instanceof Effect.Evaluate evaluate) {
      return rank(evaluate);
    }
    if (effect instanceof Effect.Clean clean) {
      return ROUTE + action(clean.kind()).ordinal();
    }
    return effect instanceof Effect.Retire ? RETIRED : MENDED;
  }

  private int rank(Effect.Evaluate evaluate) {
    return switch (evaluate.check()) {
      case INCIDENT_RELEASE -> 1;
      case RECORD_CORRECTION, RETURN_TO_SERVICE -> 2;
      // Whoever says what it is must have it in hand.
      case IDENTIFICATION, READ_LABEL -> shut ? JUDGED : 3;
      case EXPERT_EVALUATION ->
          shut && evaluate.scope() == Scope.ELEMENT
              ? ROUTE + CareAction.FIND_OUT.ordinal()
              : JUDGED;
      case CONTAMINATION_CLEARANCE -> ROUTE + CareAction.SHOW_FREE.ordinal();
      case CLEANLINESS -> ROUTE + CareAction.SHOW_CLEAN.ordinal();
      case ROUTINE_INSPECTION, ADVANCED_INSPECTION, LINER_INSPECTION -> LAST;
      default -> JUDGED;
    };
  }

  /** Whether what it met leaves room for an ordinary wash; some is cleaned off in its own way. */
  boolean hasWash() {
    return route.isEmpty() || route.containsKey(CareAction.ADVANCED_CLEANING);
  }

  /** Whether an effect is a look at the whole, with which every way back ends. */
  boolean isLast(Effect effect) {
    return rank(effect) == LAST;
  }

  /** Whether an effect finds out what the element met, which stays sealed until then. */
  boolean findsOut(Effect effect) {
    return shut
        && effect instanceof Effect.Evaluate evaluate
        && rank(evaluate) == ROUTE + CareAction.FIND_OUT.ordinal();
  }

  /** What must be heeded of a cleaning that waits for whoever found out what it met. */
  Optional<String> onlyIf(Effect effect) {
    return effect instanceof Effect.Clean clean
            && shut
            && route.get(action(clean.kind())) != CareStanding.IN_TURN
        ? Optional.of("Only if whoever passed " + Check.EXPERT_EVALUATION + " allows it.")
        : Optional.empty();
  }

  private static CareAction action(CleaningKind kind) {
    return switch (kind) {
      case EXPOSURE_REDUCTION -> CareAction.EXPOSURE_REDUCTION;
      case SPECIALIZED -> CareAction.SPECIALIZED_CLEANING;
      case SANITIZING -> CareAction.SANITIZE;
      case ADVANCED -> CareAction.ADVANCED_CLEANING;
    };
  }
}
