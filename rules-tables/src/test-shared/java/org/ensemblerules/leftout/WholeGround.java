package org.ensemblerules.leftout;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import org.ensemblerules.defect.FindingId;
import org.ensemblerules.schedule.TaskKey;
import org.ensemblerules.verdict.Reason;
import org.ensemblerules.verdict.ReasonKind;
import org.ensemblerules.verdict.TaskDue;

/**
 * What may rest on a whole ground that was left out: the reasons that name it, and those of the
 * kinds that such a ground can give. Whatever else was asked for is asked for without it.
 *
 * @param names how the names begin of the findings that it is, or that follow from it
 * @param kinds the kinds of reason that it can give without a finding
 * @param tasks the tasks whose days it can bring about; empty for any
 */
record WholeGround(Set<String> names, Set<ReasonKind> kinds, Optional<Set<String>> tasks) {
  /** The steps of the path of an event or a finding, as of {@code /history/5}. */
  private static final int WHOLE = 3;

  private static final String LINER = "complete-liner-inspection";
  private static final String ROUTINE = "routine-inspection";
  private static final String ADVANCED = "advanced-inspection";

  /** Whether what was left out is a whole event or finding, and a ground. */
  static boolean is(Taken taken) {
    String at = taken.way().at().toString();
    return taken.ground()
        && taken.way().instead().isEmpty()
        && !at.startsWith("/element")
        && at.split("/", -1).length == WHOLE;
  }

  static WholeGround of(Taken taken) {
    JsonNode what = taken.what();
    String event = what.path("event").asText("FINDING");
    boolean look = showsNothing(event, what) || leavesOpenWhichIsCompleted(taken);
    return new WholeGround(names(event, what), kinds(event, look), tasks(event, look));
  }

  /** One of two looks of a day, where a third goes on with one of them: nobody knows with which. */
  private static boolean leavesOpenWhichIsCompleted(Taken taken) {
    String on = taken.what().at("/inspection/on").asText();
    for (JsonNode event : taken.record().path("history")) {
      if (!on.isEmpty() && event.path("completes").asText().equals(on)) {
        return true;
      }
    }
    return false;
  }

  /** Whether it may take along a reason of a verdict. */
  boolean mayCarry(Reason reason) {
    if (reason.finding().isPresent()) {
      String finding = reason.finding().get().value();
      return names.stream().anyMatch(name -> (finding + ":").startsWith(name + ":"));
    }
    return kinds.contains(reason.kind())
        && (reason.kind() != ReasonKind.TASK_DUE
            || tasks.isEmpty()
            || tasks.get().stream().anyMatch(task -> reason.seen().startsWith(task + ":")));
  }

  /** Whether it may take along what is due. */
  boolean mayCarry(TaskDue due) {
    return due.task().equals(TaskKey.CHECK_AFTERWARD)
        || tasks.isEmpty()
        || tasks.get().contains(due.task().value());
  }

  private static Set<String> names(String event, JsonNode what) {
    String day = what.path("on").asText();
    return switch (event) {
      case "FINDING" -> Set.of(what.path("id").asText());
      case "FOUND" -> Set.of(what.at("/finding/id").asText());
      case "CLEANED" -> Set.of("wash:" + day);
      case "INSPECTOR_DECIDED" -> Set.of(what.path("id").asText());
      case "CHECKED" -> namesOfCheck(day, what);
      default -> Set.of();
    };
  }

  /** A failure opens again the findings that it names. */
  private static Set<String> namesOfCheck(String day, JsonNode what) {
    Set<String> names = new HashSet<>();
    what.path("answers").forEach(each -> names.add(each.asText()));
    names.add(FindingId.OF_FAILURES + day + ":" + what.path("check").asText());
    names.add("check:" + day);
    return names;
  }

  /** A check that shows nothing takes along the look that it was part of. */
  private static boolean showsNothing(String event, JsonNode what) {
    return event.equals("CHECKED") && !what.path("result").asText().equals("FAILED");
  }

  /** What it can give itself and, if it speaks against a look, what that look would have ended. */
  private static Set<ReasonKind> kinds(String event, boolean look) {
    EnumSet<ReasonKind> kinds = EnumSet.copyOf(kinds(event));
    if (look) {
      kinds.addAll(
          EnumSet.of(
              ReasonKind.NOT_INSPECTED,
              ReasonKind.INSPECTION_NOT_CURRENT,
              ReasonKind.USED_SINCE_INSPECTION,
              ReasonKind.WORKED_ON_SINCE_INSPECTION,
              ReasonKind.FOLLOW_UP_MISSING,
              ReasonKind.BACK_UNSEEN,
              ReasonKind.LABEL_UNKNOWN,
              ReasonKind.INSPECTION_DOES_NOT_COUNT));
    }
    return kinds;
  }

  private static Set<ReasonKind> kinds(String event) {
    return switch (event) {
      case "FINDING", "FOUND" ->
          EnumSet.of(
              ReasonKind.WORKED_ON_SINCE_INSPECTION,
              ReasonKind.FOLLOW_UP_MISSING,
              ReasonKind.TASK_DUE,
              ReasonKind.UNDATED);
      case "ISSUED", "USED" ->
          EnumSet.of(ReasonKind.USED_SINCE_INSPECTION, ReasonKind.TASK_DUE, ReasonKind.UNDATED);
      case "EXPOSED", "EXPOSURE_IDENTIFIED" ->
          EnumSet.of(
              ReasonKind.CARE_OUTSTANDING,
              ReasonKind.USED_SINCE_INSPECTION,
              ReasonKind.TASK_DUE,
              ReasonKind.UNDATED);
      case "CHECKED" ->
          EnumSet.of(
              ReasonKind.CHECK_FAILED,
              ReasonKind.CHECK_IN_DOUBT,
              ReasonKind.CHECK_VOID,
              ReasonKind.CHECK_NOT_DONE,
              ReasonKind.TASK_DUE);
      case "CLEANED" ->
          EnumSet.of(ReasonKind.CHECK_VOID, ReasonKind.LIMIT_TIGHTENED, ReasonKind.LIMIT_LOOSENED);
      case "INSPECTED" ->
          EnumSet.of(
              ReasonKind.INSPECTION_DOES_NOT_COUNT,
              ReasonKind.INSPECTION_DATE_ONLY,
              ReasonKind.INSPECTION_NOT_ITEMIZED,
              ReasonKind.INSPECTED_DIRTY,
              ReasonKind.UNDATED,
              ReasonKind.TASK_DUE,
              ReasonKind.CHECK_NOT_DONE);
      case "TESTED" ->
          EnumSet.of(
              ReasonKind.TEST_MET,
              ReasonKind.TEST_NOT_MET,
              ReasonKind.TEST_WITHOUT_RESULT,
              ReasonKind.SPECIMENS_CUT);
      case "MOVED" -> EnumSet.of(ReasonKind.AWAY, ReasonKind.BACK_UNSEEN, ReasonKind.UNDATED);
      case "MODIFIED" -> EnumSet.of(ReasonKind.ALTERED, ReasonKind.UNDATED);
      case "TAKEN_OUT" -> EnumSet.of(ReasonKind.OUT_OF_SERVICE, ReasonKind.UNDATED);
      case "INSPECTOR_DECIDED" -> EnumSet.of(ReasonKind.INSPECTOR_DECIDED);
      case "RETIRED", "DISPOSED" -> EnumSet.of(ReasonKind.LEFT_SERVICE);
      case "LAYER_RETIRED" -> EnumSet.of(ReasonKind.LEFT_SERVICE, ReasonKind.LABEL_UNKNOWN);
      default -> throw new IllegalArgumentException(event + " is no ground");
    };
  }

  /** What speaks against a liner has it opened, and what a look found has a fuller one made. */
  private static Optional<Set<String>> tasks(String event, boolean look) {
    return switch (event) {
      case "ISSUED", "USED", "EXPOSED", "EXPOSURE_IDENTIFIED" -> Optional.empty();
      // A look that is signed off but for it found something by it alone.
      case "FINDING", "FOUND" -> Optional.of(Set.of(LINER, ADVANCED));
      case "CHECKED" -> Optional.of(look ? Set.of(LINER, ADVANCED, ROUTINE) : Set.of(LINER));
      case "INSPECTED" ->
          Optional.of(look ? Set.of(LINER, ADVANCED, ROUTINE) : Set.of(LINER, ADVANCED));
      default -> Optional.of(Set.of());
    };
  }
}
