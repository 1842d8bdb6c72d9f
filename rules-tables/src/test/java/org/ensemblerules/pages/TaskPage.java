package org.ensemblerules.pages;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.ensemblerules.ruleset.InspectionKinds;
import org.ensemblerules.schedule.TaskRow;
import org.ensemblerules.schedule.Timing;
import org.ensemblerules.tables.set.LoadedTables;

/** The page of the tasks: which are due when, and what discharges them. */
final class TaskPage {
  private TaskPage() {}

  static Page page(LoadedTables tables) {
    List<List<String>> lines = new ArrayList<>();
    for (Family<TaskRow> family : Family.of(tables, InspectionKinds.TASKS)) {
      TaskRow row = family.first();
      lines.add(
          List.of(
              row.task().value().replace('-', ' '),
              Words.of(family.all(TaskRow::element)),
              Words.of(family.all(TaskRow::use)),
              words(row.doneBy().text()),
              due(row.timing()) + (row.exemptInReserve() ? "; not in reserve" : ""),
              Words.editions(family.editions()),
              Words.basis(row.provenance())));
    }
    return new Markdown("Tasks")
        .paragraph(
            "Which tasks are due when. Rows of one task stand beside each other, and the earliest"
                + " due day counts; a department's own rows are added the same way. An inspection"
                + " or a cleaning discharges a task only if it counts: complete, of clean gear, by"
                + " somebody permitted, within its limits. Exposure reduction never does. Age"
                + " limits are tasks as well, by the table of age limits, and so are the checks"
                + " that follow a repair, by the table of defects.")
        .paragraph(
            "Where no time is named, a task is due at once, and missed once the same happens"
                + " again. Local law may ask for more: Michigan's R 408.17431(5) has gear cleaned"
                + " after each use.")
        .table(List.of("Task", "Elements", "Use", "Done by", "Due", "Editions", "Basis"), lines)
        .page("tasks.md");
  }

  private static String due(Timing timing) {
    if (!(timing instanceof Timing.After after)) {
      return words(timing.text());
    }
    String within = after.withinDays().map(days -> ", within " + days + " days").orElse("");
    return switch (after.trigger()) {
          case ISSUE -> "on each issue";
          case DUTY_PERIOD -> "at the start of each duty period";
          case USE -> "after each use";
          case PRODUCTS_OF_COMBUSTION -> "after each exposure to products of combustion";
          case EXPOSURE -> "after anything that soils or contaminates";
          case ROUTINE_FOUND -> "when a routine inspection found something";
          case LINER_SUSPECTED -> "when something is suspected in the liner";
        }
        + within;
  }

  private static String words(String text) {
    return text.toLowerCase(Locale.ROOT).replace('_', ' ');
  }
}
