package org.ensemblerules.example.department.report;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import org.ensemblerules.effect.GoesTo;
import org.ensemblerules.ruleset.Identity;
import org.ensemblerules.source.Source;
import org.ensemblerules.source.SourceId;
import org.ensemblerules.verdict.Caution;
import org.ensemblerules.verdict.Reason;
import org.ensemblerules.verdict.Service;

/** The report on all gear of a department. */
public final class DepartmentReport {
  private DepartmentReport() {}

  /**
   * Writes the report: counts by headline, destination and cause, what was noted on gear in
   * service, every element that is out by where it goes next, and the cautions.
   *
   * @param department its name; not null
   * @param asOf the day judged for; not null
   * @param rules which rules it was judged by; not null
   * @param all the verdicts; not null
   * @return the text, its lines at most a hundred characters long where words allow it; never null
   */
  public static String of(String department, LocalDate asOf, Identity rules, List<Judged> all) {
    TextPage page = new TextPage();
    List<Judged> out =
        all.stream()
            .filter(one -> one.verdict().service() == Service.OUT)
            .sorted(Comparator.comparing(DepartmentReport::goesTo))
            .toList();
    page.line(Objects.requireNonNull(department, "department") + ", gear as of " + asOf);
    rules(page, rules);
    page.blank();
    page.line(
        all.size() + " elements: " + (all.size() - out.size()) + " in, " + out.size() + " out");
    page.blank();
    HeadlineTable.write(page, all);
    page.blank();
    DestinationTable.write(page, out);
    noted(page, all);
    CautionNotes notes = CautionNotes.of(all);
    page.blank();
    Optional<GoesTo> last = Optional.empty();
    for (Judged judged : out) {
      if (!judged.verdict().goesTo().equals(last)) {
        last = judged.verdict().goesTo();
        page.rule('=');
        page.line(
            "OUT OF SERVICE, GOES TO: " + PlainWords.of(goesTo(judged)).toUpperCase(Locale.ROOT));
      }
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

  private static GoesTo goesTo(Judged judged) {
    return judged.verdict().goesTo().orElseThrow();
  }

  /**
   * Writes one verdict with all its cautions, and the pages on which its rows were seen restated.
   *
   * @param judged the verdict; not null
   * @param listed the sources that the tables list, by id; not null
   * @return the text; never null
   */
  public static String of(Judged judged, Map<SourceId, Source> listed) {
    TextPage page = new TextPage();
    VerdictText.write(page, judged);
    page.blank();
    page.line("CAUTIONS");
    for (Caution caution : judged.verdict().cautions()) {
      page.wrapped("  - ", PlainWords.sentence(caution.text()));
    }
    BasisNotes.write(page, List.of(judged));
    PagesSeen.write(page, judged.verdict().reasons(), listed);
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
