package org.ensemblerules.assess;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.ensemblerules.care.CareAction;
import org.ensemblerules.care.CareRoute;
import org.ensemblerules.care.CareRouteRow;
import org.ensemblerules.care.CareStanding;
import org.ensemblerules.care.CareStep;
import org.ensemblerules.care.Exposure;
import org.ensemblerules.effect.Check;
import org.ensemblerules.effect.CleaningKind;
import org.ensemblerules.effect.Effect;
import org.ensemblerules.effect.Scope;
import org.ensemblerules.gear.Part;
import org.ensemblerules.gear.Site;
import org.ensemblerules.history.Event;
import org.ensemblerules.history.ExposureEvent;
import org.ensemblerules.history.Judgment;
import org.ensemblerules.history.LookEvent;
import org.ensemblerules.history.WorkEvent;
import org.ensemblerules.source.Row;
import org.ensemblerules.verdict.Reason;
import org.ensemblerules.verdict.ReasonKind;

/**
 * Was all done that the care route asks for, each time that the element met something? Cleanings
 * and checks are asked for; whether it came out clean is seen by the inspection after them. How the
 * layers are handled on the way leaves no trace in the record.
 */
final class CareQuestion {
  private final CaseFile file;
  private final Consumer<Reason> reasons;
  private final Map<Effect, Optional<Judgment>> newest = new HashMap<>();

  private CareQuestion(CaseFile file, Consumer<Reason> reasons) {
    this.file = file;
    this.reasons = reasons;
  }

  static void ask(CaseFile file, Consumer<Reason> reasons) {
    if (file.evidence().exposures().isEmpty()) {
      return;
    }
    CareQuestion question = new CareQuestion(file, reasons);
    mayHaveMet(file).forEach(question::ask);
    mayHaveMet(file).forEach(question::seenSince);
  }

  private void ask(ExposureEvent.Exposed met) {
    CareRoute route = file.careRoute(met.to());
    if (route instanceof CareRoute.Steps steps) {
      steps.steps().forEach(step -> ask(met, step));
    } else if (!file.evidence().done().passedAfter(Check.EXPERT_EVALUATION, met.when())) {
      Effect effect = new Effect.Evaluate(Check.EXPERT_EVALUATION, Scope.ELEMENT);
      reasons.accept(
          reason(
              ReasonKind.NO_RULE,
              Optional.empty(),
              text(met) + ", and no row says what is done then" + notCounting(met, effect),
              effect));
    }
  }

  /** What was cleaned is looked at, so that it is shown clean before it serves. */
  private void seenSince(ExposureEvent.Exposed met) {
    if (file.careRoute(met.to()) instanceof CareRoute.Steps route) {
      route.steps().stream()
          .filter(step -> step.standing() != CareStanding.BARRED && !seen(met, step))
          .findFirst()
          .ifPresent(step -> reasons.accept(unseen(met, route, step)));
    }
  }

  private boolean seen(ExposureEvent.Exposed met, CareStep step) {
    return !(effect(step.action()).orElse(null) instanceof Effect.Clean clean)
        || file.evidence().done().cleanedAndSeenAfter(clean.kind(), step.layers(), met.when());
  }

  private static Reason unseen(
      ExposureEvent.Exposed met, CareRoute.Steps route, CareStep cleaning) {
    CareStep shown =
        route.steps().stream()
            .filter(step -> step.action() == CareAction.SHOW_CLEAN)
            .findFirst()
            .orElse(cleaning);
    return reason(
        ReasonKind.CARE_OUTSTANDING,
        Optional.of(shown.rows().get(0)),
        text(met)
            + "; no inspection that counts is recorded after its cleaning; one on the day of the"
            + " cleaning counts if its occasion is AFTER_WORK",
        new Effect.Evaluate(Check.ROUTINE_INSPECTION, Scope.ELEMENT));
  }

  private static Stream<ExposureEvent.Exposed> mayHaveMet(CaseFile file) {
    return file.evidence().exposures().stream()
        .filter(met -> met.when().date().possiblyBy(file.asOf()));
  }

  /** What it met, and what is done then is not all done. */
  static Set<Exposure> outstanding(CaseFile file) {
    return mayHaveMet(file)
        .filter(
            met -> {
              List<Reason> reasons = new ArrayList<>();
              new CareQuestion(file, reasons::add).ask(met);
              return !reasons.isEmpty();
            })
        .map(ExposureEvent.Exposed::to)
        .collect(Collectors.toSet());
  }

  /** Whether it met something after which it does not return: nobody wears or looks over it. */
  static boolean neverReturns(CaseFile file) {
    return !file.evidence().exposures().isEmpty()
        && mayHaveMet(file)
            .map(ExposureEvent.Exposed::to)
            .distinct()
            .map(file::careRoute)
            .anyMatch(route -> route instanceof CareRoute.Steps steps && !steps.mayReturn());
  }

  private void ask(ExposureEvent.Exposed met, CareStep step) {
    if (step.standing() == CareStanding.BARRED) {
      return;
    }
    effect(step.action())
        .filter(effect -> !done(met, step, effect))
        .ifPresent(
            effect ->
                rows(step)
                    .forEach(
                        row ->
                            reasons.accept(
                                reason(
                                    ReasonKind.CARE_OUTSTANDING,
                                    Optional.of(row),
                                    text(met)
                                        + "; not shown to be done since: "
                                        + step.text()
                                        + file.evidence()
                                            .order()
                                            .howToTell(met.when(), event -> asks(effect, event))
                                        + notCounting(met, effect),
                                    effect))));
  }

  /** The newest that was done, if not before, and that does not count. */
  private String notCounting(ExposureEvent.Exposed met, Effect effect) {
    return newest
        .computeIfAbsent(
            effect,
            key -> file.evidence().notCounting(event -> asks(effect, event)).stream().findFirst())
        .filter(each -> !met.when().certainlyAfter(each.event().when()))
        .flatMap(each -> Judgment.text(List.of(each)))
        .map(text -> "; " + text)
        .orElse("");
  }

  private static boolean asks(Effect effect, Event event) {
    return effect instanceof Effect.Clean clean
        ? event instanceof WorkEvent.Cleaned cleaned && cleaned.kind() == clean.kind()
        : effect instanceof Effect.Evaluate evaluate
            && event instanceof LookEvent.Checked done
            && done.check() == evaluate.check();
  }

  /** Rows of layers that say the same are one reason. */
  private static Stream<CareRouteRow> rows(CareStep step) {
    Set<List<Object>> said = new HashSet<>();
    return step.rows().stream()
        .filter(
            row -> said.add(List.of(row.wording(), row.handling(), row.asks(CareAction.ISOLATE))));
  }

  /** What a step makes of the verdict; empty for what the record does not show. */
  private static Optional<Effect> effect(CareAction action) {
    return switch (action) {
      case SPECIALIZED_CLEANING -> clean(CleaningKind.SPECIALIZED);
      case SANITIZE, DISINFECT -> clean(CleaningKind.SANITIZING);
      case ADVANCED_CLEANING -> clean(CleaningKind.ADVANCED);
      case FIND_OUT, SHOW_FREE ->
          action.check().map(check -> new Effect.Evaluate(check, Scope.ELEMENT));
      case NO_RETURN -> Optional.of(new Effect.Retire(Scope.ELEMENT));
      case EXPOSURE_REDUCTION,
          ISOLATE,
          CUSTODY,
          TAKE_OUT_DRAG_RESCUE_DEVICE,
          TAKE_LAYERS_APART,
          SHOW_CLEAN,
          LAY_DRAG_RESCUE_DEVICE ->
          Optional.empty();
    };
  }

  private static Optional<Effect> clean(CleaningKind kind) {
    return Optional.of(new Effect.Clean(kind, Scope.ELEMENT));
  }

  private boolean done(ExposureEvent.Exposed met, CareStep step, Effect effect) {
    if (effect instanceof Effect.Clean clean) {
      return file.evidence().done().cleanedAfter(clean.kind(), step.layers(), met.when());
    }
    return effect instanceof Effect.Evaluate evaluate
        && file.evidence().done().passedAfter(evaluate.check(), met.when());
  }

  private static String text(ExposureEvent.Exposed met) {
    return "met " + met.to() + " " + met.when();
  }

  private static Reason reason(ReasonKind kind, Optional<Row> row, String seen, Effect effect) {
    return Reasons.of(
        kind, row, Site.of(Part.WHOLE_ELEMENT), Optional.empty(), seen, effect, List.of());
  }
}
