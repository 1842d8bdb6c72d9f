package org.ensemblerules.example.department.report;

import java.util.List;
import java.util.Locale;
import org.ensemblerules.fleet.Readiness;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.gear.YesNoUnknown;
import org.ensemblerules.issue.NoticedElement;
import org.ensemblerules.issue.SafetyNotice;
import org.ensemblerules.tables.message.NoticeEffect;
import org.ensemblerules.verdict.Service;

/** What a safety notice touches, before and after. */
public final class NoticeText {
  private static final int SHOWN = 6;

  private NoticeText() {}

  /**
   * Writes the screen.
   *
   * @param effect what the notices do; not null
   * @return the text; never null
   */
  public static String of(NoticeEffect effect) {
    TextPage page = new TextPage();
    effect.notices().forEach(notice -> head(page, notice));
    if (effect.notices().isEmpty()) {
      page.line("no notice; --notices names a file of them");
    }
    for (YesNoUnknown known : List.of(YesNoUnknown.YES, YesNoUnknown.UNKNOWN)) {
      List<NoticedElement> those =
          effect.touched().stream().filter(each -> each.touched() == known).toList();
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
                          + PlainWords.of(each.goesTo())));
    }
    page.blank();
    page.line("                              before   after");
    row(page, "elements in service", in(effect.before()), in(effect.after()));
    row(page, "sets that can be used", usable(effect.before()), usable(effect.after()));
    return page.toString();
  }

  private static void head(TextPage page, SafetyNotice notice) {
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
  }

  private static String span(SafetyNotice notice) {
    boolean open =
        notice.madeFrom() instanceof MarkedDate.Unknown
            && notice.madeThrough() instanceof MarkedDate.Unknown;
    return open ? "at any time" : "from " + notice.madeFrom() + " through " + notice.madeThrough();
  }

  private static String before(NoticedElement noticed) {
    return noticed.without() == Service.IN ? "in service" : "out";
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
