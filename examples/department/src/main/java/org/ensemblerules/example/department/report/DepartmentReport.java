package org.ensemblerules.example.department.report;

import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;
import org.ensemblerules.ruleset.Identity;
import org.ensemblerules.verdict.Caution;
import org.ensemblerules.verdict.Reason;
import org.ensemblerules.verdict.Service;

/** The report on all gear of a department. */
public final class DepartmentReport {
  private DepartmentReport() {}

  /**
   * Writes the report: counts by headline, what was noted on gear in service, every element that is
   * out, and the cautions.
   *
   * @param department its name; not null
   * @param asOf the day judged for; not null
   * @param rules which rules it was judged by; not null
   * @param all the verdicts; not null
   * @return the text, its lines at most a hundred characters long where words allow it; never null
   */
  public static String of(String department, LocalDate asOf, Identity rules, List<Judged> all) {
    TextPage page = new TextPage();
    List<Judged> out = all.stream().filter(one -> one.verdict().service() == Service.OUT).toList();
    page.line(Objects.requireNonNull(department, "department") + ", gear as of " + asOf);
    rules(page, rules);
    page.blank();
    page.line(
        all.size() + " elements: " + (all.size() - out.size()) + " in, " + out.size() + " out");
    page.blank();
    HeadlineTable.write(page, all);
    noted(page, all);
    CautionNotes notes = CautionNotes.of(all);
    page.blank();
    page.line("OUT OF SERVICE");
    for (Judged judged : out) {
      page.rule('-');
      VerdictText.write(page, judged);
      String own = notes.of(judged.verdict());
      if (!own.isEmpty()) {
        page.wrapped("  Notes     ", own);
      }
    }
    page.rule('=');
    notes.write(page);
    BasisNotes.write(page, all);
    return page.toString();
  }

  /**
   * Writes one verdict with all its cautions.
   *
   * @param judged the verdict; not null
   * @return the text; never null
   */
  public static String of(Judged judged) {
    TextPage page = new TextPage();
    VerdictText.write(page, judged);
    page.blank();
    page.line("CAUTIONS");
    for (Caution caution : judged.verdict().cautions()) {
      page.wrapped("  - ", PlainWords.sentence(caution.text()));
    }
    BasisNotes.write(page, List.of(judged));
    page.blank();
    page.line("Judged for " + judged.verdict().asOf() + ".");
    rules(page, judged.verdict().identity());
    return page.toString();
  }

  private static void rules(TextPage page, Identity rules) {
    String editions =
        rules.editions().entrySet().stream()
            .map(entry -> PlainWords.of(entry.getKey()) + " by " + entry.getValue())
            .collect(Collectors.joining(", "));
    String overlays =
        rules.overlays().isEmpty()
            ? ""
            : "; overlays "
                + rules.overlays().stream().map(Object::toString).collect(Collectors.joining(", "));
    page.wrapped("Rules: ", editions + overlays + "; fingerprint " + rules.fingerprint());
  }

  private static void noted(TextPage page, List<Judged> all) {
    List<Judged> noted =
        all.stream()
            .filter(one -> one.verdict().service() == Service.IN)
            .filter(one -> !one.verdict().reasons().isEmpty())
            .toList();
    if (noted.isEmpty()) {
      return;
    }
    page.blank();
    page.line("IN SERVICE, NOTED FOR NEXT TIME");
    for (Judged judged : noted) {
      for (Reason reason : judged.verdict().reasons()) {
        page.wrapped(
            "  " + judged.verdict().element().id() + "  ", PlainWords.sentence(reason.seen()));
      }
    }
  }
}
