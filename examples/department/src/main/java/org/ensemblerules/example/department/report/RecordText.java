package org.ensemblerules.example.department.report;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.ensemblerules.history.HolderSpan;
import org.ensemblerules.history.InspectionOnRecord;
import org.ensemblerules.inspection.EvidenceGrade;
import org.ensemblerules.record.FileAnswer;
import org.ensemblerules.record.FileReport;
import org.ensemblerules.record.KeepAnswer;
import org.ensemblerules.record.PfasLawTable;
import org.ensemblerules.record.PfasNotice;
import org.ensemblerules.record.RecordFile;
import org.ensemblerules.record.RetentionPolicy;
import org.ensemblerules.record.SaleParty;

/** An element's file, for people: what is there, what is missing, who held it, what is kept. */
public final class RecordText {
  private final RowNotes rows = new RowNotes();

  /**
   * Writes what is in a file and what is not.
   *
   * @param file the file; not null
   * @param report what is missing; not null
   * @param laws what laws ask of notices; not null
   * @param policy how long the owner keeps files; empty if the owner has not said
   * @return some lines, each with a line end; never null
   */
  public String of(
      RecordFile file, FileReport report, PfasLawTable laws, Optional<RetentionPolicy> policy) {
    TextPage page = new TextPage();
    page.wrapped(
        file.element().id() + "  ",
        PlainWords.of(file.element().kind())
            + ", "
            + PlainWords.of(file.element().use())
            + ": the file is "
            + (report.complete() ? "complete" : "not complete"));
    Map<String, Integer> against = new LinkedHashMap<>();
    report
        .answers()
        .forEach(
            (item, answer) ->
                page.wrapped("  " + padded(PlainWords.of(item)), text(answer, against)));
    for (InspectionOnRecord each : report.inspections()) {
      if (each.grade() != EvidenceGrade.ITEMIZED || !each.left().isEmpty()) {
        page.wrapped("  inspected      ", PlainWords.sentence(each.text()));
      }
    }
    report.contradictions().forEach(each -> number(each.text(), against));
    against.forEach(
        (text, number) ->
            page.wrapped("  contradiction  ", "(" + number + ") " + PlainWords.sentence(text)));
    for (HolderSpan span : file.history().holders()) {
      page.wrapped(
          "  held by        ",
          span.holder()
              + " from "
              + span.from()
              + span.until().map(until -> " until " + until).orElse(" on"));
    }
    for (PfasNotice notice : file.pfasNotices()) {
      page.wrapped("  PFAS notice    ", text(notice, laws.keepThrough(notice, SaleParty.BUYER)));
    }
    policy
        .flatMap(own -> own.keepThrough(file))
        .ifPresent(
            day -> page.wrapped("  kept           ", "through " + day + ", by the owner's policy"));
    page.blank();
    return page.toString();
  }

  /**
   * Writes the rows of all answers written so far.
   *
   * @return some lines, each with a line end; empty if no row was cited; never null
   */
  public String notes() {
    TextPage page = new TextPage();
    rows.write(page);
    return page.toString();
  }

  private String text(FileAnswer answer, Map<String, Integer> against) {
    if (answer instanceof FileAnswer.Present present) {
      return "there " + rows.cite(List.of(present.row()));
    } else if (answer instanceof FileAnswer.Missing missing) {
      return "missing: " + words(missing.what()) + " " + rows.cite(List.of(missing.row()));
    } else if (answer instanceof FileAnswer.Inconsistent wrong) {
      return "contradicted "
          + wrong.contradictions().stream()
              .map(each -> number(each, against))
              .collect(Collectors.joining(", "))
          + (wrong.missing().isEmpty() ? "" : "; missing: " + words(wrong.missing()))
          + " "
          + rows.cite(List.of(wrong.row()));
    } else if (answer instanceof FileAnswer.NotYet notYet) {
      return "not due: " + notYet.why() + " " + rows.cite(List.of(notYet.row()));
    }
    return "no rule asks for it";
  }

  /** A contradiction stands once, below all that it concerns. */
  private static String number(String contradiction, Map<String, Integer> against) {
    return "(" + against.computeIfAbsent(contradiction, each -> against.size() + 1) + ")";
  }

  private static String words(List<String> all) {
    return PlainWords.sentence(String.join("; ", all));
  }

  private String text(PfasNotice notice, KeepAnswer keep) {
    String what =
        notice.place()
            + ", sold "
            + notice.sold()
            + ", added PFAS: "
            + PlainWords.of(notice.content())
            + notice.reason().map(why -> " (" + why + ")").orElse("")
            + ", dated "
            + notice.dated()
            + "; ";
    return keep instanceof KeepAnswer.Through through
        ? what + "keep it through " + through.through() + " " + rows.cite(through.rows())
        : what + "keep it for now: " + ((KeepAnswer.ForNow) keep).why();
  }

  private static String padded(String item) {
    return item + " ".repeat(Math.max(1, 27 - item.length()));
  }
}
