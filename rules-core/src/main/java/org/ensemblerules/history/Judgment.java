package org.ensemblerules.history;

import com.google.common.collect.ImmutableList;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.ensemblerules.care.WashAnswer;
import org.ensemblerules.inspection.InspectionStanding;

/**
 * Whether something on record counts.
 *
 * @param event what was done; not null
 * @param objections everything that speaks against it; not null
 * @param standing what an inspection looked at, and by whom; empty for what is no inspection
 * @param wash whether a cleaning kept the limits of washes; empty for what is no cleaning
 * @since 0.1
 */
public record Judgment(
    Event event,
    List<Objection> objections,
    Optional<InspectionStanding> standing,
    Optional<WashAnswer> wash) {
  /** Copies the list. */
  public Judgment {
    Objects.requireNonNull(event, "event");
    objections = ImmutableList.copyOf(objections);
    Objects.requireNonNull(standing, "standing");
    Objects.requireNonNull(wash, "wash");
  }

  static Judgment of(Event event, List<Objection> objections) {
    return new Judgment(event, objections, Optional.empty(), Optional.empty());
  }

  /**
   * Tells whether it counts.
   *
   * @return true if nothing speaks against it
   */
  public boolean counts() {
    return objections.isEmpty();
  }

  /** Whether anything speaks against it but that it may not have been by then. */
  boolean objectsToMoreThanItsDate() {
    for (Objection each : objections) {
      if (each.code() != Objection.Code.NOT_BY_THEN) {
        return true;
      }
    }
    return false;
  }

  /** Whether it goes on with another and counts with that. */
  boolean goesOn() {
    return objection(Set.of(Objection.Code.COUNTS_WITH_ANOTHER)).isPresent();
  }

  /**
   * Finds the first objection of some kinds.
   *
   * @param codes the kinds; not null
   * @return the objection; empty if there is none of them
   */
  public Optional<Objection> objection(Set<Objection.Code> codes) {
    for (Objection each : objections) {
      if (codes.contains(each.code())) {
        return Optional.of(each);
      }
    }
    return Optional.empty();
  }

  /**
   * Says of things that do not count why not, what is said of several alike only once.
   *
   * @param judgments the judgments, in the order in which they are told; not null
   * @return the text, which begins with {@code does not count: }; empty if there are none
   */
  public static Optional<String> text(List<Judgment> judgments) {
    Map<List<String>, List<String>> days = new LinkedHashMap<>();
    for (Judgment each : judgments) {
      List<String> said = List.of(what(each.event), by(each.event), each.why());
      days.computeIfAbsent(said, key -> new ArrayList<>()).add(each.event.when().toString());
    }
    return days.isEmpty()
        ? Optional.empty()
        : Optional.of(
            days.entrySet().stream()
                .map(
                    entry ->
                        entry.getKey().get(0)
                            + " of "
                            + String.join(", ", entry.getValue())
                            + entry.getKey().get(1)
                            + ", "
                            + entry.getKey().get(2))
                .collect(Collectors.joining("; ", "does not count: ", "")));
  }

  private static String what(Event event) {
    if (event instanceof LookEvent.Inspected done) {
      return done.inspection().kind() + " inspection";
    }
    if (event instanceof WorkEvent.Cleaned done) {
      return done.kind() + " cleaning";
    }
    if (event instanceof LookEvent.Checked done) {
      return done.check().name();
    }
    return event instanceof WorkEvent.Repaired done ? done.repairClass() + " repair" : event.name();
  }

  private static String by(Event event) {
    return event.doer().map(doer -> " by " + doer.name()).orElse("");
  }

  private String why() {
    return objections.stream().map(this::why).collect(Collectors.joining(" and "));
  }

  /** Of a wash only in what it departed; from which limits, stands among its objections. */
  private String why(Objection objection) {
    return objection.code() == Objection.Code.WASH_OUTSIDE_LIMITS
            && wash.orElse(null) instanceof WashAnswer.OutsideLimits outside
        ? outside.deviations().stream()
            .map(
                deviation ->
                    deviation.row().demand().subject()
                        + ": found "
                        + deviation.found()
                        + ", allowed: "
                        + deviation.allowed())
            .distinct()
            .collect(Collectors.joining("; ", "outside its limits, ", ""))
        : objection.text();
  }
}
