package org.ensemblerules.example.department.report;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import org.ensemblerules.audit.difference.ActionChange;
import org.ensemblerules.audit.difference.DueMove;
import org.ensemblerules.audit.difference.ElementDifference;
import org.ensemblerules.audit.difference.FleetEffect;
import org.ensemblerules.verdict.Service;
import org.ensemblerules.verdict.TaskDue;

/** The first elements that something changes for, those that it costs most before the others. */
final class ChangedElements implements Consumer<ElementDifference> {
  private static final Set<FleetEffect> GRAVE =
      EnumSet.of(
          FleetEffect.LEAVES_SERVICE,
          FleetEffect.RETURNS_TO_SERVICE,
          FleetEffect.TO_BE_RETIRED,
          FleetEffect.NO_LONGER_RETIRED);

  private final int most;
  private final List<ElementDifference> grave = new ArrayList<>();
  private final List<ElementDifference> others = new ArrayList<>();
  private long changed;

  ChangedElements(int most) {
    this.most = most;
  }

  @Override
  public void accept(ElementDifference difference) {
    if (!difference.isEmpty()) {
      changed++;
      boolean isGrave = difference.effects().stream().anyMatch(GRAVE::contains);
      List<ElementDifference> list = isGrave ? grave : others;
      if (list.size() < most) {
        list.add(difference);
      }
    }
  }

  void write(TextPage page) {
    if (changed == 0) {
      return;
    }
    page.blank();
    page.line("ELEMENTS");
    List<ElementDifference> listed = new ArrayList<>(grave);
    others.stream().limit(most - grave.size()).forEach(listed::add);
    Map<String, List<String>> alike = new LinkedHashMap<>();
    listed.forEach(
        difference ->
            alike
                .computeIfAbsent(change(difference), change -> new ArrayList<>())
                .add(difference.before().element().id().value()));
    alike.forEach(
        (change, ids) -> {
          page.wrapped("  - ", String.join(", ", ids));
          change.lines().forEach(page::line);
        });
    if (changed > listed.size()) {
      page.line("  and " + (changed - listed.size()) + " more");
    }
  }

  /** What changes for an element, in some lines; several elements may share them. */
  private static String change(ElementDifference difference) {
    TextPage page = new TextPage();
    Service before = difference.before().service();
    Service after = difference.after().service();
    page.wrapped(
        "      ",
        PlainWords.of(before)
            + (before == after ? " now and then" : " now, " + PlainWords.of(after) + " then")
            + ": "
            + PlainWords.list(difference.effects()));
    difference.gained().forEach(change -> action(page, "more", change));
    difference.lost().forEach(change -> action(page, "less", change));
    difference.due().forEach(move -> due(page, move));
    difference
        .ages()
        .forEach(
            move ->
                page.wrapped(
                    "      age   ",
                    move.layer().map(PlainWords::of).orElse("whole element")
                        + ": "
                        + move.before().map(answer -> answer.text()).orElse("no label expected")
                        + ", then "
                        + move.after().map(answer -> answer.text()).orElse("no label expected")));
    return page.toString();
  }

  private static void action(TextPage page, String label, ActionChange change) {
    String rows =
        change.rows().stream().limit(2).map(Object::toString).collect(Collectors.joining(", "));
    int more = Math.max(0, change.rows().size() - 2);
    page.wrapped(
        "      " + label + "  ",
        PlainWords.of(change.action().effect())
            + " of "
            + PlainWords.of(change.action().target())
            + (rows.isEmpty() ? "" : " by " + rows)
            + (more == 0 ? "" : " and " + more + " more rows"));
  }

  private static void due(TextPage page, DueMove move) {
    page.wrapped(
        "      due   ",
        PlainWords.of(move.task())
            + move.layer().map(layer -> " of the " + PlainWords.of(layer)).orElse("")
            + ": "
            + day(move.before())
            + ", then "
            + day(move.after()));
  }

  private static String day(Optional<TaskDue> due) {
    return due.map(what -> what.by().map(day -> "due by " + day).orElse("due now"))
        .orElse("not due");
  }
}
