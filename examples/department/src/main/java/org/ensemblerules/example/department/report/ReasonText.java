package org.ensemblerules.example.department.report;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.ensemblerules.effect.Effect;
import org.ensemblerules.verdict.Reason;
import org.ensemblerules.verdict.ReasonKind;

/** The reasons of a verdict: what was seen, what it calls for, on whose word. */
final class ReasonText {
  /** Reasons whose words do not say by themselves which layer they are about. */
  private static final Set<ReasonKind> OF_A_LAYER =
      EnumSet.of(ReasonKind.AGE_REACHED, ReasonKind.AGE_UNKNOWN, ReasonKind.LABEL_UNKNOWN);

  private static final int SHOWN = 2;

  private ReasonText() {}

  static void write(TextPage page, List<Reason> reasons, RowNotes rows) {
    Map<Effect, List<Reason>> groups = new LinkedHashMap<>();
    for (Reason reason : reasons) {
      if (reason.finding().isPresent()) {
        ofFinding(page, reason, rows);
      } else {
        groups.computeIfAbsent(reason.effect(), effect -> new ArrayList<>()).add(reason);
      }
    }
    groups.values().forEach(alike -> group(page, alike, rows));
  }

  private static void ofFinding(TextPage page, Reason reason, RowNotes rows) {
    page.wrapped("    - ", seen(reason));
    label(page, "calls for", PlainWords.withScope(reason.effect()) + basis(reason, rows));
    reason.wording().ifPresent(words -> label(page, "because", PlainWords.sentence(words)));
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

  /** What calls for one and the same thing; of each kind there are many at times. */
  private static void group(TextPage page, List<Reason> alike, RowNotes rows) {
    Map<ReasonKind, Map<String, String>> kinds = new LinkedHashMap<>();
    alike.forEach(
        reason ->
            kinds
                .computeIfAbsent(reason.kind(), kind -> new LinkedHashMap<>())
                .merge(
                    seen(reason),
                    reason.row().map(row -> " " + rows.cite(row)).orElse(""),
                    ReasonText::together));
    kinds.values().forEach(shown -> kind(page, shown));
    Set<String> withoutRow = new LinkedHashSet<>();
    alike.forEach(
        reason -> withoutRow.add(reason.row().isPresent() ? "" : withoutRow(reason.kind())));
    label(
        page,
        "calls for",
        PlainWords.withScope(alike.get(0).effect())
            + withoutRow.stream()
                .filter(why -> !why.isEmpty())
                .map(why -> "; " + why)
                .collect(Collectors.joining()));
  }

  private static void kind(TextPage page, Map<String, String> shown) {
    shown.entrySet().stream()
        .limit(SHOWN)
        .forEach(entry -> page.wrapped("    - ", entry.getKey() + entry.getValue()));
    if (shown.size() > SHOWN) {
      page.line("    - and " + (shown.size() - SHOWN) + " more like these; assess tells each");
    }
  }

  /** The bases of reasons that say the same. */
  private static String together(String one, String other) {
    return one.contains(other) ? one : one + other;
  }

  private static String seen(Reason reason) {
    String seen = PlainWords.sentence(reason.seen());
    return OF_A_LAYER.contains(reason.kind()) ? PlainWords.of(reason.site()) + ": " + seen : seen;
  }

  private static String basis(Reason reason, RowNotes rows) {
    return reason
        .row()
        .map(row -> " " + rows.cite(row))
        .or(
            () ->
                Optional.of(withoutRow(reason.kind()))
                    .filter(why -> !why.isEmpty())
                    .map(why -> "; " + why))
        .orElse("");
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
      // What is unknown, missing or contradictory keeps an element out, as what was seen says.
      default -> "";
    };
  }

  private static void label(TextPage page, String label, String text) {
    page.wrapped("        " + label + " ".repeat(11 - label.length()), text);
  }
}
