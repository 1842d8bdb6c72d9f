package org.ensemblerules.example.department.report;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.ensemblerules.audit.soundness.AuditReport;
import org.ensemblerules.audit.soundness.Flaw;
import org.ensemblerules.audit.soundness.SetAudit;
import org.ensemblerules.source.RowKey;

/** What an audit of table files came to. */
public final class AuditText {
  private static final int SHOWN = 3;

  private AuditText() {}

  /**
   * Writes the reports of a set.
   *
   * @param outcome what the audit came to; not null
   * @param overlays the names of the overlays laid over each edition; not null
   * @param whole whether what is proved and noted of sound sets is written as well
   * @return the text, a line for each sound set unless more is asked for; never null
   */
  public static String of(SetAudit.Audited outcome, List<String> overlays, boolean whole) {
    String laid = overlays.isEmpty() ? "" : " with " + String.join(", ", overlays);
    TextPage page = new TextPage();
    outcome.refused().ifPresent(report -> one(page, "The set cannot be loaded", report));
    outcome
        .editions()
        .forEach(
            (edition, report) -> {
              if (report.isSound() && !whole) {
                page.line(inShort(PlainWords.of(edition) + laid, report));
              } else {
                one(page, PlainWords.of(edition) + laid, report);
                page.blank();
              }
            });
    return page.toString();
  }

  private static String inShort(String title, AuditReport report) {
    return title
        + ": sound; "
        + number(report.rows())
        + " rows; all "
        + number(report.combinations())
        + " combinations get the answer their rows give"
        + (report.notes().isEmpty() ? "" : "; notes: " + report.notes().size() + " (--notes)");
  }

  private static void one(TextPage page, String title, AuditReport report) {
    page.rule('=');
    page.wrapped(
        title + ": ",
        report.isSound() ? "sound" : "not sound, " + report.faults().size() + " faults");
    if (report.rows() > 0) {
      page.wrapped("Rows read  ", number(report.rows()) + ", for " + report.asOf());
    }
    if (!report.proved().isEmpty()) {
      page.wrapped(
          "Proved     ",
          number(report.combinations()) + " combinations get the answer their rows give:");
      report
          .proved()
          .forEach((what, count) -> page.wrapped("           ", number(count) + " of " + what));
    }
    list(page, "FAULTS", report.faults());
    list(page, "NOTES, NO FAULTS", report.notes());
  }

  private static void list(TextPage page, String title, List<Flaw> flaws) {
    if (flaws.isEmpty()) {
      return;
    }
    page.blank();
    page.line(title);
    for (Flaw flaw : flaws) {
      page.wrapped("  * ", flaw.kind() + " at " + several(flaw.places(), "; "));
      page.wrapped("      found     ", flaw.found());
      page.wrapped("      expected  ", flaw.expected());
      if (!flaw.rows().isEmpty()) {
        page.wrapped(
            "      rows      ", several(flaw.rows().stream().map(RowKey::value).toList(), ", "));
      }
      flaw.reason().ifPresent(reason -> page.wrapped("      reason    ", reason));
    }
  }

  private static String several(List<String> names, String between) {
    String first = names.stream().limit(SHOWN).collect(Collectors.joining(between));
    return names.size() <= SHOWN ? first : first + " and " + (names.size() - SHOWN) + " more";
  }

  private static String number(long count) {
    return String.format(Locale.ROOT, "%,d", count);
  }
}
