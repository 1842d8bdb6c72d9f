package org.ensemblerules.example.department.report;

import java.util.List;
import java.util.Locale;
import org.ensemblerules.fleet.Readiness;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.gear.YesNoUnknown;
import org.ensemblerules.issue.JudgedElement;
import org.ensemblerules.issue.SafetyNotice;
import org.ensemblerules.verdict.Service;

/** What a safety notice touches, before and after. */
public final class NoticeText {
  private static final int SHOWN = 6;

  private NoticeText() {}

  /**
   * Writes the screen.
   *
   * @param notice the notice; not null
   * @param touched the elements that it touches, or may; not null
   * @param before who is ready without it; not null
   * @param after who is ready with it; not null
   * @return the text; never null
   */
  public static String of(
      SafetyNotice notice, List<JudgedElement> touched, Readiness before, Readiness after) {
    TextPage page = new TextPage();
    page.line("NOTICE " + notice.id() + ": " + PlainWords.of(notice.asks()));
    page.wrapped(
        "  of ",
        notice.manufacturer()
            + (notice.models().isEmpty() ? "" : ", " + String.join(", ", notice.models()))
            + (notice.lots().isEmpty()
                ? ", all lots"
                : ", lots " + String.join(", ", notice.lots()))
            + ", made "
            + span(notice));
    for (YesNoUnknown known : List.of(YesNoUnknown.YES, YesNoUnknown.UNKNOWN)) {
      List<JudgedElement> those =
          touched.stream().filter(each -> each.notices().get(0).touched() == known).toList();
      page.blank();
      page.line(
          (known == YesNoUnknown.YES
                  ? "TOUCHED: "
                  : "POSSIBLY TOUCHED, SINCE THE LABELS DO NOT TELL: ")
              + those.size());
      those.stream()
          .limit(SHOWN)
          .forEach(
              each ->
                  page.wrapped(
                      "  " + each.element().id() + "  ",
                      each.whereabouts().text()
                          + "; "
                          + before(each)
                          + " before, now out, goes to "
                          + PlainWords.of(each.goesTo().orElseThrow())));
    }
    page.blank();
    page.line("                              before   after");
    row(page, "elements in service", in(before), in(after));
    row(page, "sets that can be used", usable(before), usable(after));
    return page.toString();
  }

  private static String span(SafetyNotice notice) {
    boolean open =
        notice.madeFrom() instanceof MarkedDate.Unknown
            && notice.madeThrough() instanceof MarkedDate.Unknown;
    return open ? "at any time" : "from " + notice.madeFrom() + " through " + notice.madeThrough();
  }

  private static String before(JudgedElement judged) {
    return judged.verdict().service() == Service.IN ? "in service" : "out";
  }

  private static long in(Readiness ready) {
    return ready.counts().values().stream().mapToLong(count -> count.in()).sum();
  }

  private static int usable(Readiness ready) {
    return ready.members().size() - ready.notReady().size();
  }

  private static void row(TextPage page, String name, long before, long after) {
    page.line(String.format(Locale.ROOT, "  %-26s %7d %7d", name, before, after));
  }
}
