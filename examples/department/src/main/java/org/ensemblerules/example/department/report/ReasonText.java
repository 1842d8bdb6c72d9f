package org.ensemblerules.example.department.report;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.ensemblerules.effect.Effect;
import org.ensemblerules.verdict.Reason;
import org.ensemblerules.verdict.ReasonKind;

/** The reasons of a verdict: what was seen, what it calls for, on whose word. */
final class ReasonText {
  /** Reasons whose words do not say by themselves which layer they are about. */
  private static final Set<ReasonKind> OF_A_LAYER =
      EnumSet.of(ReasonKind.AGE_REACHED, ReasonKind.AGE_UNKNOWN, ReasonKind.LABEL_UNKNOWN);

  private ReasonText() {}

  /** What reasons without a finding share. */
  private record Group(ReasonKind kind, Effect effect) {}

  static void write(TextPage page, List<Reason> reasons) {
    Map<Group, List<Reason>> groups = new LinkedHashMap<>();
    for (Reason reason : reasons) {
      if (reason.finding().isPresent()) {
        ofFinding(page, reason);
      } else {
        groups
            .computeIfAbsent(new Group(reason.kind(), reason.effect()), group -> new ArrayList<>())
            .add(reason);
      }
    }
    groups.values().forEach(alike -> group(page, alike));
  }

  private static void ofFinding(TextPage page, Reason reason) {
    page.wrapped("    - ", seen(reason));
    label(page, "calls for", PlainWords.withScope(reason.effect()));
    reason.wording().ifPresent(words -> label(page, "because", PlainWords.sentence(words)));
    label(page, "basis", basis(reason));
    if (reason.open()) {
      label(
          page,
          "open",
          "Practice is disputed here; the department may decide it by a written policy.");
    }
    for (String attempt : reason.attempts()) {
      label(page, "so far", PlainWords.sentence(attempt));
    }
  }

  /** Reasons of one kind are many at times, and call for one and the same thing. */
  private static void group(TextPage page, List<Reason> alike) {
    Set<String> bases = new LinkedHashSet<>();
    alike.forEach(reason -> bases.add(basis(reason)));
    for (Reason reason : alike) {
      page.wrapped("    - ", seen(reason));
      if (bases.size() > 1) {
        label(page, "basis", basis(reason));
      }
    }
    label(page, "calls for", PlainWords.withScope(alike.get(0).effect()));
    if (bases.size() == 1) {
      label(page, "basis", bases.iterator().next());
    }
  }

  private static String seen(Reason reason) {
    String seen = PlainWords.sentence(reason.seen());
    return OF_A_LAYER.contains(reason.kind()) ? PlainWords.of(reason.site()) + ": " + seen : seen;
  }

  private static String basis(Reason reason) {
    return reason
        .row()
        .map(
            row ->
                row.provenance().basis().text()
                    + "; row "
                    + row.key()
                    + " of "
                    + row.provenance().origin())
        .orElseGet(() -> withoutRow(reason.kind()));
  }

  private static String withoutRow(ReasonKind kind) {
    return switch (kind) {
      case LEFT_SERVICE, OUT_OF_SERVICE -> "no row: the element's own record says so";
      case CHECK_FAILED, CHECK_IN_DOUBT ->
          "no row: a failed check stands until something settles it";
      case CHECK_VOID -> "no row: a check outside its conditions counts as not made";
      case TEST_WITHOUT_RESULT -> "no row: a report that cannot be judged shows nothing";
      case USED_SINCE_INSPECTION ->
          "no row: what was used or met something is looked at before it is used again";
      default -> "no row: what is unknown, missing or contradictory keeps an element out";
    };
  }

  private static void label(TextPage page, String label, String text) {
    page.wrapped("        " + label + " ".repeat(11 - label.length()), text);
  }
}
