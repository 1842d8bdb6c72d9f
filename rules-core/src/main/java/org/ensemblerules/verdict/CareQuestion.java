package org.ensemblerules.verdict;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
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
import org.ensemblerules.effect.Task;
import org.ensemblerules.gear.LayerKind;
import org.ensemblerules.gear.Part;
import org.ensemblerules.gear.Site;
import org.ensemblerules.history.CheckResult;
import org.ensemblerules.history.Event;
import org.ensemblerules.source.Row;

/**
 * Was all done that the care route asks for, each time that the element met something? Cleanings
 * and checks are asked for; whether it came out clean is seen by the inspection after them. How the
 * layers are handled on the way leaves no trace in the record.
 */
final class CareQuestion {
  private CareQuestion() {}

  static void ask(CaseFile file, Consumer<Reason> reasons) {
    mayHaveMet(file).forEach(met -> ask(file, met, reasons));
  }

  private static void ask(CaseFile file, Event.Exposed met, Consumer<Reason> reasons) {
    CareRoute route = file.rules().careRoutes().route(file.element(), Set.of(met.to()));
    if (route instanceof CareRoute.Steps steps) {
      steps.steps().forEach(step -> ask(file, met, step, reasons));
    } else if (!passed(file, met, Check.EXPERT_EVALUATION)) {
      reasons.accept(
          reason(
              ReasonKind.NO_RULE,
              Optional.empty(),
              text(met) + ", and no row says what is done then",
              new Effect.Evaluate(Check.EXPERT_EVALUATION, Scope.ELEMENT)));
    }
  }

  private static Stream<Event.Exposed> mayHaveMet(CaseFile file) {
    return file.history().events(Event.Exposed.class).stream()
        .filter(
            met ->
                !met.when().date().earliest().map(day -> day.isAfter(file.asOf())).orElse(false));
  }

  /** What it met, and what is done then is not all done. */
  static Set<Exposure> outstanding(CaseFile file) {
    return mayHaveMet(file)
        .filter(
            met -> {
              List<Reason> reasons = new ArrayList<>();
              ask(file, met, reasons::add);
              return !reasons.isEmpty();
            })
        .map(Event.Exposed::to)
        .collect(Collectors.toSet());
  }

  /** Whether it met something after which it does not return: nobody wears or looks over it. */
  static boolean neverReturns(CaseFile file) {
    return mayHaveMet(file)
        .map(met -> file.rules().careRoutes().route(file.element(), Set.of(met.to())))
        .anyMatch(route -> route instanceof CareRoute.Steps steps && !steps.mayReturn());
  }

  private static void ask(
      CaseFile file, Event.Exposed met, CareStep step, Consumer<Reason> reasons) {
    if (step.standing() == CareStanding.BARRED) {
      return;
    }
    effect(step.action())
        .filter(effect -> !done(file, met, step, effect))
        .ifPresent(
            effect ->
                rows(step)
                    .forEach(
                        row ->
                            reasons.accept(
                                reason(
                                    ReasonKind.CARE_OUTSTANDING,
                                    Optional.of(row),
                                    text(met) + "; not certainly done since: " + step.text(),
                                    effect))));
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
      case SPECIALISED_CLEANING -> clean(CleaningKind.SPECIALISED);
      case SANITISE, DISINFECT -> clean(CleaningKind.SANITISING);
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

  private static boolean done(CaseFile file, Event.Exposed met, CareStep step, Effect effect) {
    if (effect instanceof Effect.Clean clean) {
      return cleaned(file, met, step, clean.kind());
    }
    return effect instanceof Effect.Evaluate evaluate && passed(file, met, evaluate.check());
  }

  /** Layers washed apart count together; a cleaning that names none is one of the whole. */
  private static boolean cleaned(
      CaseFile file, Event.Exposed met, CareStep step, CleaningKind kind) {
    List<Event.Cleaned> counting =
        file.history().events(Event.Cleaned.class).stream()
            .filter(done -> done.kind() == kind && since(file, met, done))
            .filter(done -> permitted(file, Task.of(kind), done))
            .filter(done -> file.rules().validity().whyNoCleaning(done, file.element()).isEmpty())
            .toList();
    Set<LayerKind> washed = new HashSet<>();
    counting.forEach(done -> washed.addAll(done.layers()));
    return counting.stream().anyMatch(done -> done.layers().isEmpty())
        || (!counting.isEmpty() && washed.containsAll(step.layers()));
  }

  private static boolean passed(CaseFile file, Event.Exposed met, Check check) {
    Task task = file.tables().checks().row(check).task();
    return file.history().events(Event.Checked.class).stream()
        .filter(done -> done.check() == check && done.result() == CheckResult.PASSED)
        .filter(done -> since(file, met, done) && permitted(file, task, done))
        .anyMatch(done -> file.rules().validity().whyVoid(done, file.element()).isEmpty());
  }

  private static boolean since(CaseFile file, Event.Exposed met, Event done) {
    return done.when().certainlyAfter(met.when())
        && done.when().date().latest().map(day -> !day.isAfter(file.asOf())).orElse(false);
  }

  private static boolean permitted(CaseFile file, Task task, Event.Cleaned done) {
    return file.tables()
        .permissions()
        .mayPerform(done.by(), task, file.element(), done.when().date())
        .granted();
  }

  private static boolean permitted(CaseFile file, Task task, Event.Checked done) {
    return file.tables()
        .permissions()
        .mayPerform(done.by(), task, file.element(), done.when().date())
        .granted();
  }

  private static String text(Event.Exposed met) {
    return "met " + met.to() + " " + met.when();
  }

  private static Reason reason(ReasonKind kind, Optional<Row> row, String seen, Effect effect) {
    return new Reason(
        kind, row, Site.of(Part.WHOLE_ELEMENT), Optional.empty(), seen, effect, List.of());
  }
}
