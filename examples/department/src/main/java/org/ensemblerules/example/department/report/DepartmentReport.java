package org.ensemblerules.example.department.report;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import org.ensemblerules.ruleset.CautionRow;
import org.ensemblerules.ruleset.CautionTable;
import org.ensemblerules.ruleset.Identity;
import org.ensemblerules.source.OriginId;
import org.ensemblerules.source.RowKey;
import org.ensemblerules.source.Source;
import org.ensemblerules.source.SourceId;
import org.ensemblerules.verdict.Service;

/** The report on all gear of a department, on one page, and that on one element. */
public final class DepartmentReport {
  private static final int URGENT = 10;

  private DepartmentReport() {}

  /**
   * Writes the report: counts by headline, by destination and by cause, and the most urgent.
   *
   * @param department its name; not null
   * @param asOf the day judged for; not null
   * @param rules which rules it was judged by; not null
   * @param all the verdicts; not null
   * @param everyOut whether every element that is out is listed, not only the most urgent
   * @return the text, its lines at most 120 characters long; never null
   */
  public static String of(
      String department, LocalDate asOf, Identity rules, List<Judged> all, boolean everyOut) {
    TextPage page = new TextPage();
    List<Judged> out = all.stream().filter(one -> one.verdict().service() == Service.OUT).toList();
    page.line(
        Objects.requireNonNull(department, "department")
            + ", gear as of "
            + asOf
            + ": "
            + all.size()
            + " elements, "
            + (all.size() - out.size())
            + " in service, "
            + out.size()
            + " out of service");
    page.wrapped("Rules: ", names(rules));
    page.blank();
    HeadlineTable.write(page, all);
    page.blank();
    DestinationTable.write(page, out);
    page.blank();
    UrgentList.write(page, out, everyOut ? out.size() : URGENT);
    page.blank();
    cautions(page, all);
    return page.toString();
  }

  /** Those of all verdicts; explain has those of each. */
  private static void cautions(TextPage page, List<Judged> all) {
    page.line("CAUTIONS FOR ALL OF THE ABOVE");
    all.stream()
        .flatMap(one -> one.verdict().cautions().stream())
        .distinct()
        .filter(caution -> all.stream().allMatch(one -> one.verdict().cautions().contains(caution)))
        .forEach(caution -> page.wrapped("  - ", PlainWords.sentence(caution.text())));
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
    page.wrapped(
        "  ",
        judged.verdict().cautions().stream()
            .map(caution -> PlainWords.sentence(caution.text()))
            .collect(Collectors.joining(" ")));
    BasisNotes.write(page, judged);
    PagesSeen.write(page, judged.verdict().reasons(), listed);
    page.blank();
    Identity rules = judged.verdict().identity();
    page.wrapped(
        "Judged for " + judged.verdict().asOf() + ". Rules: ",
        names(rules) + "; fingerprint " + rules.fingerprint());
    return page.toString();
  }

  /**
   * Writes one verdict on a screen: what it says and rests on, and of its cautions those for such
   * gear or for what must be done with it. Those for all gear are named as such.
   *
   * @param judged the verdict; not null
   * @param cautions the cautions of the rules; not null
   * @return the text; never null
   */
  public static String screen(Judged judged, CautionTable cautions) {
    TextPage page = new TextPage();
    VerdictText.write(page, judged);
    Set<RowKey> general =
        cautions.rows().stream()
            .filter(
                row -> row.elements().isEmpty() && row.uses().isEmpty() && row.effects().isEmpty())
            .map(CautionRow::key)
            .collect(Collectors.toSet());
    List<String> own =
        judged.verdict().cautions().stream()
            .filter(caution -> !general.contains(caution.row()))
            .map(caution -> PlainWords.sentence(caution.text()))
            .toList();
    page.line("CAUTIONS");
    page.wrapped(
        "  ",
        String.join(" ", own)
            + " The manufacturer's instructions and the authority having jurisdiction prevail; the"
            + " cautions for all gear, the pages and the rules: --full.");
    return page.toString();
  }

  private static String names(Identity rules) {
    Map<OriginId, List<String>> subjects = new LinkedHashMap<>();
    rules
        .editions()
        .forEach(
            (subject, edition) ->
                subjects
                    .computeIfAbsent(edition, each -> new ArrayList<>())
                    .add(PlainWords.of(subject)));
    String editions =
        subjects.entrySet().stream()
            .map(
                entry ->
                    PlainWords.of(entry.getKey())
                        + " ("
                        + String.join(", ", entry.getValue())
                        + ")")
            .collect(Collectors.joining(", "));
    String overlays =
        rules.overlays().isEmpty()
            ? ""
            : "; overlays "
                + rules.overlays().stream().map(Object::toString).collect(Collectors.joining(", "));
    return editions + overlays;
  }
}
