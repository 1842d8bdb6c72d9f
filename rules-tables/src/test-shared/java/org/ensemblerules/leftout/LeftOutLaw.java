package org.ensemblerules.leftout;

import com.fasterxml.jackson.core.JsonPointer;
import com.fasterxml.jackson.databind.JsonNode;
import java.time.LocalDate;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;
import org.ensemblerules.GearRules;
import org.ensemblerules.effect.Check;
import org.ensemblerules.effect.Effect;
import org.ensemblerules.effect.Scope;
import org.ensemblerules.gear.LayerKind;
import org.ensemblerules.ruleset.RuleSet;
import org.ensemblerules.verdict.Action;
import org.ensemblerules.verdict.Assessment;
import org.ensemblerules.verdict.Reason;
import org.ensemblerules.verdict.ReasonKind;
import org.ensemblerules.verdict.Service;
import org.ensemblerules.verdict.TaskDue;
import org.ensemblerules.verdict.Verdict;

/**
 * What is left out never turns OUT into IN. Leaving out or blurring what is no ground takes no
 * action away and makes no due day later; blurring a ground brings nothing back.
 */
final class LeftOutLaw {
  /** Who may have the last word on a check that settles nothing by itself. */
  private static final Set<Check> WORDS =
      EnumSet.of(Check.INSPECTOR_EVALUATION, Check.EXPERT_EVALUATION);

  private final RuleSet rules;
  private final LocalDate asOf;

  LeftOutLaw(RuleSet rules, LocalDate asOf) {
    this.rules = rules;
    this.asOf = asOf;
  }

  /**
   * Leaves out some things of a record, one at a time.
   *
   * @throws AssertionError with the smallest record found in which the same is milder
   */
  void holds(Assessment given, Verdict before, int times, Random random) {
    JsonNode record = LeavingOut.json(given);
    List<List<LeavingOut.Way>> parts = LeavingOut.ways(record);
    for (int i = 0; i < times; i++) {
      List<LeavingOut.Way> ways = parts.get(random.nextInt(parts.size()));
      holds(given, before, record, ways.get(random.nextInt(ways.size())));
    }
  }

  /**
   * Leaves out everything of a record, one at a time.
   *
   * @throws AssertionError with the smallest record found in which the same is milder
   */
  void holdsOfAll(Assessment given, Verdict before) {
    JsonNode record = LeavingOut.json(given);
    LeavingOut.ways(record).stream()
        .flatMap(List::stream)
        .forEach(way -> holds(given, before, record, way));
  }

  /**
   * Leaves out everything that is said of findings and of what was done about them, one at a time.
   *
   * @throws AssertionError with the smallest record found in which the same is milder
   */
  void holdsOfFindings(Assessment given, Verdict before) {
    JsonNode record = LeavingOut.json(given);
    LeavingOut.ofFindings(record).forEach(way -> holds(given, before, record, way));
  }

  /** Leaves out each event and finding, one at a time; tells how many of them were grounds. */
  int holdsOfWholes(Assessment given, Verdict before) {
    JsonNode record = LeavingOut.json(given);
    int grounds = 0;
    for (LeavingOut.Way way : LeavingOut.wholes(record)) {
      grounds += Grounds.isGround(rules, asOf, given, record, way) ? 1 : 0;
      holds(given, before, record, way);
    }
    return grounds;
  }

  private void holds(Assessment given, Verdict before, JsonNode record, LeavingOut.Way way) {
    if (milder(given, before, record, way).isPresent()) {
      throw new AssertionError(shrunk(given, way));
    }
  }

  Verdict verdict(Assessment given) {
    return GearRules.of(rules).assess(given, asOf);
  }

  /** What became milder by leaving something out; empty if nothing did, or nothing was left out. */
  Optional<String> milder(Assessment given, Verdict before, JsonNode record, LeavingOut.Way way) {
    return LeavingOut.take(rules, asOf, given, record, way)
        .flatMap(
            taken ->
                milder(before, taken)
                    .filter(fault -> LeftOutExceptions.of(rules, given, taken, fault).isEmpty()));
  }

  /** The exception by which something may become milder; empty if none needs to hold. */
  Optional<LeftOutExceptions> exception(
      Assessment given, Verdict before, JsonNode record, LeavingOut.Way way) {
    return LeavingOut.take(rules, asOf, given, record, way)
        .flatMap(
            taken ->
                milder(before, taken)
                    .flatMap(fault -> LeftOutExceptions.of(rules, given, taken, fault)));
  }

  /** A whole ground takes along only what may rest on it. */
  Optional<String> milder(Verdict before, Taken taken) {
    Verdict after = verdict(taken.assessment());
    if (WholeGround.is(taken)) {
      return goneBeside(WholeGround.of(taken), before, after);
    }
    if (taken.ground() && isPartThatGoesWhole(taken)) {
      return Optional.empty();
    }
    List<Reason> standing = before.reasons().stream().filter(LeftOutLaw::mayStand).toList();
    boolean out = standing.stream().anyMatch(reason -> reason.effect().keepsOut());
    if (out && after.service() == Service.IN) {
      return Optional.of("IN after OUT, for " + standing);
    }
    if (taken.ground()) {
      return Optional.empty();
    }
    return actionGone(before, standing, after)
        .or(() -> dueGone(before.due().stream(), after))
        .map(gone -> gone + " gone");
  }

  /** Whatever does not rest on the ground is asked for as before. */
  private Optional<String> goneBeside(WholeGround gone, Verdict before, Verdict after) {
    List<Reason> standing =
        before.reasons().stream()
            .filter(reason -> mayStand(reason) && !gone.mayCarry(reason))
            .toList();
    boolean out = standing.stream().anyMatch(reason -> reason.effect().keepsOut());
    if (out && after.service() == Service.IN) {
      return Optional.of("IN after OUT, for " + standing);
    }
    return actionGone(before, standing, after)
        .or(() -> dueGone(before.due().stream().filter(due -> !gone.mayCarry(due)), after))
        .map(which -> which + " gone");
  }

  /** A part of a ground that is one of its own. */
  private static boolean isPartThatGoesWhole(Taken taken) {
    String at = taken.way().at().toString();
    return taken.way().instead().isEmpty()
        && (at.contains("/wash")
            || at.endsWith("/layers")
            || at.endsWith("/measured")
            || at.contains("/outcomes")
            || at.contains("/signedOff")
            || at.contains("/notFitted")
            || at.endsWith("/gearClean")
            || at.endsWith("/legibility")
            || at.endsWith("/certificationMark"));
  }

  /** What cannot be is a ground: it goes with either of two things that exclude each other. */
  private static boolean mayStand(Reason reason) {
    return reason.kind() != ReasonKind.CONTRADICTION
        && reason.kind() != ReasonKind.CHECK_DOES_NOT_APPLY;
  }

  private Optional<String> actionGone(Verdict before, List<Reason> standing, Verdict after) {
    List<Reason> asking = standing.stream().filter(reason -> !startsAnew(reason, after)).toList();
    return before.actions().stream()
        .filter(action -> asking.stream().anyMatch(reason -> asksFor(reason, action)))
        .filter(
            action ->
                after.actions().stream()
                    .noneMatch(other -> covers(other, action) || handsOn(other, action)))
        .map(action -> action.effect().text() + " at " + action.target())
        .findFirst();
  }

  /** Whoever has the last word is asked again, once the check that hands on to him is made anew. */
  private boolean handsOn(Action other, Action action) {
    return other.target().equals(action.target())
        && other.effect() instanceof Effect.Evaluate first
        && !rules.tables().checks().row(first.check()).passCloses()
        && action.effect() instanceof Effect.Evaluate asked
        && WORDS.contains(asked.check());
  }

  /** Two reasons may ask the same of two parts. */
  private static boolean asksFor(Reason reason, Action action) {
    return reason.effect().equals(action.effect())
        && (reason.effect().scope() != Scope.PART || reason.site().equals(action.target()));
  }

  /** What only waited for its last steps asks for the first again: that covers the last. */
  private static boolean startsAnew(Reason waiting, Verdict after) {
    boolean lastStep =
        waiting.kind() == ReasonKind.FOLLOW_UP_MISSING
            || waiting.kind() == ReasonKind.WORKED_ON_SINCE_INSPECTION;
    return lastStep
        && after.reasons().stream()
            .filter(reason -> reason.effect().keepsOut() && reason.kind() != waiting.kind())
            .filter(reason -> reason.finding().equals(waiting.finding()))
            .anyMatch(
                reason ->
                    reason.finding().isPresent() || reason.kind() == ReasonKind.CARE_OUTSTANDING);
  }

  /**
   * What retires covers what else is asked of the same, a fuller look the lesser, and a remedy the
   * check that must follow it; a retirement may become a question.
   */
  private static boolean covers(Action other, Action action) {
    Effect effect = action.effect();
    boolean where =
        other.target().equals(action.target()) || other.effect().scope() == Scope.ELEMENT;
    if (other.effect().equals(effect)) {
      return where || other.target().layer().isPresent() == action.target().layer().isPresent();
    }
    boolean retires =
        other.effect() instanceof Effect.Retire
            || (effect instanceof Effect.Retire && other.effect().keepsOut());
    return (where && retires)
        || (effect instanceof Effect.Evaluate asked
            && (other.afterward().contains(asked.check())
                || (asked.check() == Check.ROUTINE_INSPECTION
                    && other.effect() instanceof Effect.Evaluate fuller
                    && fuller.check() == Check.ADVANCED_INSPECTION)));
  }

  private static Optional<String> dueGone(Stream<TaskDue> before, Verdict after) {
    return before
        .filter(
            due ->
                after.due().stream().noneMatch(other -> same(due, other) && notLater(due, other)))
        .map(due -> due.task() + " due " + due.by() + " for " + due.layer() + ", " + due.why())
        .findFirst();
  }

  private static boolean same(TaskDue due, TaskDue other) {
    return due.task().equals(other.task())
        && (due.layer().equals(other.layer())
            || due.layer().flatMap(LayerKind::joinedIn).equals(other.layer()));
  }

  private static boolean notLater(TaskDue due, TaskDue other) {
    return other.by().isEmpty()
        || due.by().map(day -> !other.by().get().isAfter(day)).orElse(false);
  }

  /**
   * The smallest record found by leaving out more in which the same is still milder: whole events
   * first, then whatever is left, until nothing more can go.
   */
  String shrunk(Assessment given, LeavingOut.Way way) {
    Shrinking at = new Shrinking(given, way);
    at = smaller(at, LeavingOut::wholes);
    for (Shrinking before = null; before != at; ) {
      before = at;
      at = smaller(at, record -> LeavingOut.ways(record).stream().flatMap(List::stream).toList());
    }
    JsonNode record = LeavingOut.json(at.record());
    return LeavingOut.take(rules, asOf, at.record(), record, at.way())
            .map(Taken::toString)
            .orElse("")
        + ": "
        + milder(at.record(), verdict(at.record()), record, at.way()).orElse("")
        + "\n"
        + record;
  }

  /** A record, and what of it is milder if it is left out. */
  private record Shrinking(Assessment record, LeavingOut.Way way) {}

  /** Goes once through the ways, and on from where one led to something smaller. */
  private Shrinking smaller(Shrinking from, Function<JsonNode, List<LeavingOut.Way>> ways) {
    Shrinking at = from;
    JsonNode record = LeavingOut.json(at.record());
    List<LeavingOut.Way> left = ways.apply(record);
    for (int i = 0; i < left.size(); ) {
      Optional<Shrinking> less = without(at, record, left.get(i));
      if (less.isPresent()) {
        at = less.get();
        record = LeavingOut.json(at.record());
        left = ways.apply(record);
      } else {
        i++;
      }
    }
    return at;
  }

  private Optional<Shrinking> without(Shrinking at, JsonNode record, LeavingOut.Way less) {
    Optional<JsonPointer> there = without(at.way().at(), less);
    return there
        .flatMap(same -> LeavingOut.take(rules, asOf, at.record(), record, less))
        .map(
            taken ->
                new Shrinking(
                    taken.assessment(),
                    new LeavingOut.Way(there.orElseThrow(), at.way().instead())))
        .filter(
            next ->
                milder(
                        next.record(),
                        verdict(next.record()),
                        LeavingOut.json(next.record()),
                        next.way())
                    .isPresent());
  }

  /** Where a thing stands once something else is gone; empty if it would go with it. */
  private static Optional<JsonPointer> without(JsonPointer at, LeavingOut.Way less) {
    String thing = at.toString();
    String other = less.at().toString();
    if (less.instead().isPresent() || (thing + "/").startsWith(other + "/")) {
      return Optional.empty();
    }
    String list = other.substring(0, other.lastIndexOf('/') + 1);
    if (!thing.startsWith(list) || !other.substring(list.length()).matches("\\d+")) {
      return Optional.of(at);
    }
    String rest = thing.substring(list.length());
    String index = rest.contains("/") ? rest.substring(0, rest.indexOf('/')) : rest;
    int place = Integer.parseInt(index);
    int gone = Integer.parseInt(other.substring(list.length()));
    return Optional.of(
        JsonPointer.compile(
            list + (gone < place ? place - 1 : place) + rest.substring(index.length())));
  }
}
