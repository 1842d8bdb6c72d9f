package org.ensemblerules.example.department.report;

import java.time.LocalDate;
import java.util.List;
import org.ensemblerules.GearRules;
import org.ensemblerules.schedule.Due;
import org.ensemblerules.schedule.Exempt;
import org.ensemblerules.schedule.Missed;
import org.ensemblerules.schedule.Planned;
import org.ensemblerules.schedule.Schedule;
import org.ensemblerules.schedule.ServiceRecord;

/** What comes for one element, day by day, what it is exempt from, and what was missed. */
public final class CalendarText {
  private CalendarText() {}

  /**
   * Writes the calendar.
   *
   * @param rules the rules; not null
   * @param record the element with what happened to it; not null
   * @param asOf the day asked about; not null
   * @param from the first day; not null
   * @param to the last day, not before the first; not null
   * @return the text; never null
   */
  public static String of(
      GearRules rules, ServiceRecord record, LocalDate asOf, LocalDate from, LocalDate to) {
    Schedule schedule = rules.schedule();
    TextPage page = new TextPage();
    RowNotes rows = new RowNotes();
    page.line(record.element().id() + ", as of " + asOf);
    page.blank();
    page.line("OVERDUE OR DUE NOW");
    for (Due due : schedule.due(record, asOf)) {
      if (due.by().map(day -> !day.isAfter(asOf)).orElse(true)) {
        page.wrapped(
            "  " + due.by().map(LocalDate::toString).orElse("unknown   ") + "  ",
            due.task()
                + ": "
                + PlainWords.sentence(due.reason())
                + due.row().map(row -> " " + rows.cite(List.of(row))).orElse(""));
      }
    }
    page.blank();
    page.line("FROM " + from + " TO " + to + ", IF EACH IS DONE ON ITS LAST DAY");
    for (Planned planned : schedule.calendar(record, asOf, from, to)) {
      page.wrapped(
          "  " + planned.on() + "  ",
          planned.task()
              + ": "
              + PlainWords.sentence(planned.reason())
              + " "
              + rows.cite(List.of(planned.row())));
    }
    page.blank();
    page.line("NOT DUE FOR NOW");
    for (Exempt exempt : schedule.exempt(record, asOf)) {
      page.wrapped(
          "  ", exempt.row().task() + ": " + exempt.why() + " " + rows.cite(List.of(exempt.row())));
    }
    page.blank();
    page.line("NOT DONE IN TIME, SO FAR");
    for (Missed missed : schedule.missed(record, asOf)) {
      page.wrapped(
          "  " + missed.by().map(LocalDate::toString).orElse("unknown   ") + "  ",
          missed.task()
              + ": "
              + PlainWords.sentence(missed.reason())
              + missed.done().map(day -> "; done " + day).orElse("; not done")
              + " "
              + rows.cite(List.of(missed.row())));
    }
    LoosenedWashes.write(page, rules, List.of(record));
    page.blank();
    rows.write(page);
    page.blank();
    return page + CautionLines.of(rules.tables().cautions(), List.of(record.element()));
  }
}
