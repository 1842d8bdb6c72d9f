package org.ensemblerules.leftout;

import com.fasterxml.jackson.core.JsonPointer;
import com.fasterxml.jackson.databind.JsonNode;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.ensemblerules.GearRules;
import org.ensemblerules.care.WashAnswer;
import org.ensemblerules.care.WashDeviation;
import org.ensemblerules.history.Event;
import org.ensemblerules.history.Evidence;
import org.ensemblerules.history.History;
import org.ensemblerules.history.Judgment;
import org.ensemblerules.history.LookEvent;
import org.ensemblerules.history.Objection;
import org.ensemblerules.history.Validity;
import org.ensemblerules.history.WorkEvent;
import org.ensemblerules.ruleset.RuleSet;
import org.ensemblerules.verdict.Assessment;
import org.ensemblerules.verdict.ReasonKind;

/**
 * What of a record is a ground: a finding, a failed check, a reading out of its limit, use, what it
 * met, an incident, an alteration, a look that was begun and does not count, being away, what an
 * inspector decided, being taken out of service or retired, and what a label shows to be wrong. All
 * else is not.
 */
final class Grounds {
  private static final Set<String> EVENTS =
      Set.of(
          "ISSUED",
          "USED",
          "FOUND",
          "EXPOSED",
          "EXPOSURE_IDENTIFIED",
          "TESTED",
          "MOVED",
          "MODIFIED",
          "TAKEN_OUT",
          "INSPECTOR_DECIDED",
          "RETIRED",
          "LAYER_RETIRED",
          "DISPOSED");

  /** The steps of the path of an event, as of {@code /history/5}. */
  private static final int WHOLE_EVENT = 3;

  /** The steps of the path of an inspection itself. */
  private static final int INSPECTION_ITSELF = 4;

  private Grounds() {}

  /** Whether what is left out is a ground, or is told of one: then only the ground is blurred. */
  static boolean isGround(
      RuleSet rules, LocalDate asOf, Assessment from, JsonNode record, LeavingOut.Way way) {
    String[] steps = way.at().toString().split("/", -1);
    return switch (steps[1]) {
      case "findings" -> true;
      case "element" ->
          way.at().toString().startsWith("/element/notFitted")
              ? lacksWhatItMustHave(rules, asOf, from)
              : label(record, way);
      case "history" -> event(rules, asOf, from, record.at("/history/" + steps[2]), steps, way);
      default -> label(record, way);
    };
  }

  private static boolean event(
      RuleSet rules,
      LocalDate asOf,
      Assessment from,
      JsonNode event,
      String[] steps,
      LeavingOut.Way way) {
    String name = event.path("event").textValue();
    if (EVENTS.contains(name)) {
      return true;
    }
    return switch (name) {
      case "CHECKED" ->
          event.path("result").textValue().equals("FAILED")
              || outOfLimit(rules, from, Integer.parseInt(steps[2]))
              || (steps.length == WHOLE_EVENT
                  && !counts(rules, asOf, from, Integer.parseInt(steps[2])));
      case "CLEANED" -> outOfLimit(rules, from, Integer.parseInt(steps[2]));
      case "INSPECTED" ->
          inspection(event.path("inspection"), way)
              || (way.at().toString().contains("/outcomes")
                  && excludesItself(rules, asOf, from, Integer.parseInt(steps[2])))
              || (steps.length == WHOLE_EVENT
                  && !counts(rules, asOf, from, Integer.parseInt(steps[2])));
      default -> false;
    };
  }

  /** Whether a part is said not to be there that must be, or that something else says is there. */
  private static boolean lacksWhatItMustHave(RuleSet rules, LocalDate asOf, Assessment from) {
    return GearRules.of(rules).assess(from, asOf).reasons().stream()
        .anyMatch(
            reason ->
                reason.kind() == ReasonKind.CONTRADICTION
                    || reason
                        .finding()
                        .filter(id -> id.value().startsWith("not-fitted:"))
                        .isPresent());
  }

  /** Whether a reading of a wash or a check is out of its limit. */
  private static boolean outOfLimit(RuleSet rules, Assessment from, int index) {
    Event event = from.history().events().get(index);
    Validity validity = rules.validity();
    if (event instanceof WorkEvent.Cleaned done) {
      return validity.answer(done, from.element()) instanceof WashAnswer.OutsideLimits outside
          && outside.deviations().stream().anyMatch(WashDeviation::stated);
    }
    return event instanceof LookEvent.Checked
        && !validity.findings(from.element(), History.of(List.of(event))).isEmpty();
  }

  /**
   * A look that was begun and does not count speaks against an element until it is made good, and a
   * check that shows nothing against the look that it was part of. What goes on with a look that
   * was begun counts with it.
   */
  private static boolean counts(RuleSet rules, LocalDate asOf, Assessment from, int index) {
    return rules
        .evidence(from.element(), from.history(), asOf)
        .judgment(from.history().events().get(index))
        .filter(
            judged ->
                judged.objections().stream()
                    .allMatch(each -> each.code() == Objection.Code.COUNTS_WITH_ANOTHER))
        .isPresent();
  }

  /**
   * Whether an inspection, or the one begun that it goes on with, says of something both that it is
   * there and that it is not.
   */
  private static boolean excludesItself(RuleSet rules, LocalDate asOf, Assessment from, int index) {
    LookEvent.Inspected done = (LookEvent.Inspected) from.history().events().get(index);
    Evidence evidence = rules.evidence(from.element(), from.history(), asOf);
    return from.history().events(LookEvent.Inspected.class).stream()
        .filter(
            each ->
                each.equals(done)
                    || done.completes().filter(begun -> begun.equals(each.when())).isPresent())
        .flatMap(each -> evidence.judgment(each).flatMap(Judgment::standing).stream())
        .anyMatch(standing -> !standing.coverage().contradictory().isEmpty());
  }

  /**
   * An inspection is one as far as it found something, or found the element dirty, and an outcome
   * of it as far as it says otherwise than the sign-off beside it.
   */
  private static boolean inspection(JsonNode inspection, LeavingOut.Way way) {
    boolean signed = inspection.has("signedOff");
    boolean found = !inspection.at("/signedOff/clearBut").isEmpty();
    for (JsonNode outcome : inspection.path("outcomes")) {
      String said = outcome.path("outcome").textValue();
      found |= said.equals("FOUND") || (signed && !said.equals("CLEAR"));
    }
    boolean dirty = inspection.path("gearClean").asText().equals("NO");
    String at = way.at().toString();
    return (found || dirty)
        && (at.split("/", -1).length <= INSPECTION_ITSELF
            || at.contains("outcomes")
            || at.contains("signedOff")
            || at.endsWith("gearClean")
            || at.endsWith("/on")
            || at.endsWith("/kind"));
  }

  private static boolean label(JsonNode record, LeavingOut.Way way) {
    JsonPointer at = way.at();
    JsonNode taken = record.at(at);
    if (at.toString().contains("/layers") && mismatched(record.at("/element/layers"))) {
      return true;
    }
    if (at.toString().endsWith("legibility") || at.toString().endsWith("certificationMark")) {
      return !taken.asText().equals("READABLE") && !taken.asText().equals("YES");
    }
    for (JsonNode legibility : taken.findValues("legibility")) {
      if (!legibility.asText().equals("READABLE")) {
        return true;
      }
    }
    for (JsonNode mark : taken.findValues("certificationMark")) {
      if (mark.asText().equals("NO")) {
        return true;
      }
    }
    return false;
  }

  /** Labels that do not belong together show a mismatch, each of them as much as the others. */
  private static boolean mismatched(JsonNode layers) {
    return Stream.of("manufacturer", "model", "size")
        .anyMatch(field -> Set.copyOf(layers.findValuesAsText(field)).size() > 1);
  }
}
