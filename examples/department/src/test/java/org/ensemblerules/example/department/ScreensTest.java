package org.ensemblerules.example.department;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.ensemblerules.GearRules;
import org.ensemblerules.example.department.demo.DemoDepartment;
import org.ensemblerules.example.department.demo.DemoElement;
import org.ensemblerules.example.department.report.DepartmentReport;
import org.ensemblerules.example.department.report.Judged;
import org.ensemblerules.tables.ShippedRules;
import org.ensemblerules.words.GearCodeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What a person reads is short and in words: no screen is longer or wider than it must be. */
class ScreensTest {
  private static final GearRules RULES = ShippedRules.standard();

  /** What answers in JSON alone, for programs. */
  private static final Set<String> FOR_PROGRAMS = Set.of("assess", "catalog", "sample");

  private static final Pattern COMMAND = Pattern.compile("(?m)^  ([a-z]+) +[A-Z]");

  /** Not part of a key or an id. */
  private static final Pattern CAPITALS =
      Pattern.compile("(?<![-/@\\w])[A-Z]{2,}(_[A-Z0-9]+)*(?![-/@\\w])");

  /** All of a line in capitals, or as far as a comma, a colon or a parenthesis. */
  private static final Pattern HEADING = Pattern.compile("^[A-Z][^a-z]*($|[,:(])");

  private static final Set<String> CODES =
      Arrays.stream(GearCodeSet.values())
          .flatMap(set -> set.codes().stream())
          .map(Enum::name)
          .collect(Collectors.toUnmodifiableSet());

  /** Names that somebody gave, and no codes. */
  private static final Set<String> NAMES = Set.of("EXAMPLE_DEPARTMENT_POLICY");

  @TempDir private static Path folder;

  /** Every command that people read, asked of the invented department or of its sample. */
  static Stream<List<String>> screens() {
    return Stream.of(
        List.of("demo", "--out", folder.resolve("verdicts.jsonl").toString()),
        List.of("recompute", "then.jsonl", "--from", "gear.jsonl"),
        List.of("criteria", "COAT", "STRUCTURAL"),
        List.of("explain", "10-02-COAT"),
        List.of("judge"),
        List.of("morning"),
        List.of("ready"),
        List.of("issue", "--element", "1-03-COAT", "--to", "A. Sample"),
        List.of("delivery"),
        List.of("notice"),
        List.of("plan"),
        List.of("figures"),
        List.of("due"),
        List.of("care"),
        List.of("repair"),
        List.of("record"),
        List.of("custody"),
        List.of("disposal"),
        List.of("difference"),
        List.of("rules", "--place", "US-WA"),
        List.of("audit"));
  }

  private static String screen(List<String> args) throws IOException {
    if (args.get(0).equals("recompute")) {
      String gear = ProgramRun.of("sample", "assess").out();
      Path from = Files.writeString(folder.resolve("gear.jsonl"), gear);
      String then = ProgramRun.of("assess", from.toString(), "--as-of", "2026-11-24").out();
      Path stored = Files.writeString(folder.resolve("then.jsonl"), then);
      return ProgramRun.of("recompute", stored.toString(), "--from", from.toString()).out();
    }
    return ProgramRun.of(args.toArray(String[]::new)).out();
  }

  /** An address is not cut, or nobody could follow it. */
  private static boolean fits(String line) {
    return line.length() <= 120 || !line.strip().contains(" ");
  }

  /** What stands beside the words for those who look it up: rows with their bases. */
  private static String withoutRows(String text) {
    return text.replaceAll("(?m)^ROWS AND THEIR BASIS\\n( .*\\n)*", "")
        .replaceAll("(?m)^( +)row +\\S.*\\n(\\1 {4,}\\S.*\\n)*", "");
  }

  @Test
  void noCommandIsLeftOut() {
    List<String> commands =
        COMMAND
            .matcher(ProgramRun.of("--help").out().split("Commands:", -1)[1])
            .results()
            .map(found -> found.group(1))
            .filter(command -> !FOR_PROGRAMS.contains(command))
            .toList();
    assertThat(screens().map(args -> args.get(0))).containsExactlyInAnyOrderElementsOf(commands);
  }

  @ParameterizedTest
  @MethodSource("screens")
  void everyCommandAnswersInWordsOnceEach(List<String> args) throws IOException {
    String text = screen(args);
    assertThat(text).isNotEmpty();
    assertThat(text.lines()).allMatch(ScreensTest::fits);
    assertThat(withoutRows(text).lines().flatMap(ScreensTest::codes)).isEmpty();
    assertThat(sentences(text)).doesNotHaveDuplicates();
    assertThat(ProgramRun.of(args.get(0), "--help").out().lines()).allMatch(ScreensTest::fits);
  }

  /** The codes in a line but for its heading; the first line of a piece has its own code. */
  private static Stream<String> codes(String line) {
    return line.matches("\\S+ {3}.* {3}[A-Z_]+ \\((IN|OUT)\\)")
        ? Stream.empty()
        : CAPITALS
            .matcher(HEADING.matcher(line).replaceFirst(""))
            .results()
            .map(MatchResult::group)
            .filter(word -> word.contains("_") || CODES.contains(word))
            .filter(word -> !NAMES.contains(word))
            .map(word -> word + " in: " + line);
  }

  /** What is numbered or has a label is part of an answer, and not a sentence. */
  private static List<String> sentences(String text) {
    return Arrays.stream(text.replaceAll("\\n {4,}", " ").split("\\n|(?<=\\.) ", -1))
        .map(String::strip)
        .filter(sentence -> sentence.matches("[A-Z(].*\\."))
        .toList();
  }

  /** Most on half a screen; nothing is longer than a tall one. */
  @Test
  void aPieceIsToldOnAScreen() {
    int some = 0;
    List<DemoElement> all = DemoDepartment.elements(RULES);
    for (DemoElement one : all) {
      Judged judged =
          new Judged(
              Optional.of(one.story()), RULES.assess(one.assessment(), DemoDepartment.AS_OF));
      String text = DepartmentReport.screen(judged, RULES.tables().cautions());
      String id = one.assessment().element().id().value();
      assertThat(text.lines()).as(id).hasSizeLessThanOrEqualTo(50).allMatch(ScreensTest::fits);
      assertThat(withoutRows(text).lines().flatMap(ScreensTest::codes)).as(id).isEmpty();
      assertThat(text.split(" trained for ", -1)).as(id).hasSizeLessThanOrEqualTo(12);
      assertThat(DepartmentReport.of(judged, ShippedRules.sources()).lines())
          .as(id)
          .hasSizeLessThanOrEqualTo(75)
          .allMatch(ScreensTest::fits);
      some += text.lines().count() <= 25 ? 1 : 0;
    }
    assertThat(some).isGreaterThan(all.size() * 3 / 4);
  }

  /** What several answers share is said once, below all of them. */
  @ParameterizedTest
  @ValueSource(strings = {"judge", "care", "repair"})
  void whatAnswersShareIsSaidBelowThem(String command) {
    String text = ProgramRun.of(command).out();
    assertThat(sentences(text)).hasSizeGreaterThan(5);
    assertThat(text.split("verified independent service provider trained for cleaning", -1))
        .hasSizeLessThanOrEqualTo(3);
  }

  @Test
  void whatIsDueTakesALineAnElement() {
    assertThat(ProgramRun.of("due").out().lines()).hasSizeLessThanOrEqualTo(110);
  }
}
