package org.ensemblerules.example.department.report;

import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.ensemblerules.fleet.Readiness;
import org.ensemblerules.fleet.ReadyCount;
import org.ensemblerules.fleet.ReadyMember;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.issue.SetGap;
import org.ensemblerules.verdict.OutBecause;

/** Who is ready, by station and kind, and member by member. */
public final class ReadyText {
  private static final int COLUMN = 9;

  private ReadyText() {}

  /**
   * Writes the screen.
   *
   * @param title what it is headed with; not null
   * @param ready who is ready; not null
   * @param top how many members to show, 0 or more
   * @return the text; never null
   */
  public static String of(String title, Readiness ready, int top) {
    TextPage page = new TextPage();
    page.line(title);
    page.blank();
    table(page, ready);
    Map<OutBecause, Long> because = new EnumMap<>(OutBecause.class);
    ready
        .counts()
        .values()
        .forEach(
            count ->
                count.because().forEach((cause, some) -> because.merge(cause, some, Long::sum)));
    page.line("out because of: " + PlainCounts.of(because));
    List<ReadyMember> not = ready.notReady();
    page.blank();
    page.line(
        "WITHOUT A USABLE SET: "
            + not.size()
            + " of "
            + ready.members().size()
            + " (--member NAME tells why)");
    page.line(
        "  for "
            + not.stream()
                .filter(member -> !member.spares().isEmpty() && member.isHelpedBySpares())
                .count()
            + " of them there is a spare for everything they lack");
    not.stream().limit(top).forEach(member -> member(page, member));
    if (not.size() > top) {
      page.line("  and " + (not.size() - top) + " more (--top)");
    }
    if (!ready.repeated().isEmpty()) {
      page.wrapped(
          "IDS THAT MORE THAN ONE ELEMENT HAS: ",
          ready.repeated().stream().map(Object::toString).collect(Collectors.joining(", ")));
    }
    if (!ready.strangers().isEmpty()) {
      page.line("HELD BY SOMEBODY WHO IS NO MEMBER: " + ready.strangers().size() + " elements");
    }
    return page.toString();
  }

  private static void table(TextPage page, Readiness ready) {
    Map<String, Map<ElementKind, ReadyCount>> stations = new TreeMap<>();
    ready
        .counts()
        .forEach(
            (group, count) ->
                stations
                    .computeIfAbsent(
                        group.station().orElse("no station"),
                        none -> new EnumMap<>(ElementKind.class))
                    .merge(
                        group.kind(),
                        count,
                        (one, other) ->
                            new ReadyCount(
                                one.in() + other.in(),
                                one.out() + other.out(),
                                Map.of(),
                                one.noticed() + other.noticed())));
    StringBuilder head = new StringBuilder(String.format(Locale.ROOT, "%-10s", "in / all"));
    for (ElementKind kind : ElementKind.values()) {
      head.append(cell(shortened(PlainWords.of(kind))));
    }
    page.line(head.toString());
    stations.forEach(
        (station, kinds) -> {
          StringBuilder row = new StringBuilder(String.format(Locale.ROOT, "%-10s", station));
          for (ElementKind kind : ElementKind.values()) {
            ReadyCount count = kinds.get(kind);
            row.append(cell(count == null ? "-" : count.in() + "/" + (count.in() + count.out())));
          }
          page.line(row.toString());
        });
  }

  /** As much of a name as a column holds, of its last word that tells kinds apart. */
  private static String shortened(String kind) {
    String word = kind.startsWith("helmet ") ? kind.substring("helmet ".length()) : kind;
    return word.substring(0, Math.min(word.length(), COLUMN - 1)).strip();
  }

  private static String cell(String text) {
    return String.format(Locale.ROOT, "%" + COLUMN + "s", text);
  }

  /** On a line or two: what is lacking, where no two are shown to meet, and which spares fit. */
  private static void member(TextPage page, ReadyMember member) {
    List<String> joins =
        member.set().gaps().stream()
            .filter(SetGap.NotJoined.class::isInstance)
            .map(PlainWords::of)
            .toList();
    page.wrapped(
        "  " + member.set().member().name() + ", " + station(member) + ": ",
        Stream.of(lacking(member, true), lacking(member, false), String.join("; ", joins))
            .filter(text -> !text.isEmpty())
            .collect(Collectors.joining("; ")));
  }

  private static String lacking(ReadyMember member, boolean spare) {
    String kinds =
        member.spares().entrySet().stream()
            .filter(each -> each.getValue().isPresent() == spare)
            .map(each -> PlainWords.of(each.getKey()))
            .collect(Collectors.joining(", "));
    return kinds.isEmpty() ? "" : (spare ? "spares for " : "no spare for ") + kinds;
  }

  private static String station(ReadyMember member) {
    return member.set().member().station().orElse("no station");
  }

  private static String spares(ReadyMember member) {
    return member.spares().entrySet().stream()
        .map(
            spare ->
                PlainWords.of(spare.getKey())
                    + " "
                    + spare
                        .getValue()
                        .map(
                            piece ->
                                piece.element().id()
                                    + " ("
                                    + piece.whereabouts().text()
                                    + ", size "
                                    + String.join("/", piece.sizes())
                                    + ")")
                        .orElse("none that fits"))
        .collect(Collectors.joining("; "));
  }

  /**
   * Writes a member's set.
   *
   * @param member the member with the set; not null
   * @return the text; never null
   */
  public static String of(ReadyMember member) {
    TextPage page = new TextPage();
    page.line(
        member.set().member().name()
            + ", "
            + station(member)
            + ", set for "
            + PlainWords.of(member.set().use())
            + " fire fighting: "
            + (member.set().isUsable()
                ? "complete and usable together"
                : member.set().isComplete() ? "complete, not usable" : "not complete"));
    member
        .set()
        .pieces()
        .forEach(
            (kind, piece) ->
                page.wrapped(
                    String.format(Locale.ROOT, "  %-20s", PlainWords.of(kind)),
                    piece.element().id()
                        + ", size "
                        + (piece.sizes().isEmpty() ? "not known" : String.join("/", piece.sizes()))
                        + ", "
                        + piece
                            .goesTo()
                            .map(goesTo -> "out, goes to " + PlainWords.of(goesTo))
                            .orElse("in service")));
    member.set().gaps().forEach(gap -> page.wrapped("  problem             ", PlainWords.of(gap)));
    member
        .set()
        .weakest()
        .ifPresent(
            piece ->
                page.line(
                    "  weakest             "
                        + piece.element().id()
                        + ", goes to "
                        + PlainWords.of(piece.goesTo().orElseThrow())));
    if (!member.spares().isEmpty()) {
      page.wrapped("  spares              ", spares(member));
    }
    return page.toString();
  }
}
