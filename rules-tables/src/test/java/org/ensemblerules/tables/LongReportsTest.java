package org.ensemblerules.tables;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import java.io.StringReader;
import java.time.Duration;
import java.time.LocalDate;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.function.IntFunction;
import org.ensemblerules.GearRules;
import org.ensemblerules.ruleset.RuleSet;
import org.ensemblerules.verdict.Assessment;
import org.ensemblerules.verdict.Reason;
import org.ensemblerules.verdict.ReasonKind;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * A test report in the longest line that can be read is answered, in bounded time and few words,
 * and has fewer degrees of freedom than those for which the distributions are checked.
 */
class LongReportsTest {
  /** Up to which Student's t is checked against another library, beside the function itself. */
  private static final int DEGREES_CHECKED = 1_000_000;

  private static final RuleSet RULES = ShippedRules.standard().rules();
  private static final LocalDate AS_OF = LocalDate.of(2026, 11, 25);
  private static final int ROOM = JsonLines.LARGEST_LONGEST;
  private static final int USUAL = JsonLines.USUAL_LONGEST;

  /** Many times what it takes, as machines that build are slow and shared. */
  private static final Duration LONGEST = Duration.ofMinutes(5);

  private static final int MOST_WORDS = 1_000;
  private static final Set<ReasonKind> TOLD =
      EnumSet.of(ReasonKind.TEST_MET, ReasonKind.TEST_NOT_MET, ReasonKind.TEST_WITHOUT_RESULT);

  /** Nothing shorter says how strong a specimen was: its name, a digit and a unit of one letter. */
  private static String shortest(int number) {
    return "{\"id\":\"" + Integer.toString(number, 36) + "\",\"value\":" + value(230 + number % 3);
  }

  private static String value(Object number) {
    return "{\"value\":" + number + ",\"unit\":\"N\"}}";
  }

  /** What fills a line. */
  enum Filling {
    /** As many specimens as there is room for. */
    SPECIMENS(LongReportsTest::shortest),
    /** Values as exact as any can be, so that their sums have many digits. */
    DIGITS(
        number ->
            "{\"id\":\""
                + number
                + "\",\"value\":"
                + value("230.12345678901234567%03d".formatted(number % 1000))),
    /** Specimens that broke at the jaw, which are compared with all others. */
    JAWS(
        number ->
            "{\"id\":\""
                + number
                + "\",\"direction\":\""
                + (number % 2 == 0 ? "WARP" : "FILL")
                + "\",\"fromJaw\":{\"value\":1,\"unit\":\"mm\"},\"value\":"
                + value(number % 8 < 2 ? 100 : 700)),
    /** Specimens of one name. */
    ONE_NAME(number -> "{\"id\":\"1\",\"value\":" + value(230)),
    /** Specimens in two units. */
    UNITS(
        number ->
            "{\"id\":\""
                + number
                + "\",\"value\":{\"value\":60,\"unit\":\""
                + (number % 2 == 0 ? "N" : "lbf")
                + "\"}}"),
    /** Specimens without a value: a fault each. */
    FAULTS(number -> "{\"id\":\"\"}");

    private final IntFunction<String> specimen;

    Filling(IntFunction<String> specimen) {
      this.specimen = specimen;
    }

    /** A line as long as there is room for, to the last specimen. */
    private String line(String rule, int room) {
      StringBuilder line =
          new StringBuilder(
              "{\"element\":{\"id\":\"C-1\",\"kind\":\"COAT\",\"use\":\"STRUCTURAL\"},"
                  + "\"history\":[{\"event\":\"TESTED\",\"on\":\"2026-01-05\","
                  + "\"product\":\"NFPA_1971_2018\",\"purpose\":{\"for\":\"CERTIFICATION\"},"
                  + "\"rule\":"
                  + rule
                  + ",\"report\":{\"element\":\"COAT\",\"use\":\"STRUCTURAL\","
                  + (this == JAWS
                      ? "\"site\":\"FABRIC@OUTER_SHELL\",\"property\":\"BREAKING_STRENGTH\","
                          + "\"method\":\"ASTM_D5034\""
                      : "\"site\":\"WRISTLET\",\"property\":\"BURST_STRENGTH\","
                          + "\"method\":\"ASTM_D3787\"")
                  + ",\"origin\":\"NEW_CLOTH\",\"specimens\":[");
      String end = "]}}]}";
      String comma = "";
      for (int i = 0; ; i++) {
        String next = comma + specimen.apply(i);
        if (line.length() + next.length() + end.length() > room) {
          return line.append(end).toString();
        }
        line.append(next);
        comma = ",";
      }
    }
  }

  private static final List<String> DECISIONS =
      List.of(
          "{\"rule\":\"CONFIDENCE_BOUND_OF_MEAN\",\"confidencePercent\":\"99.9999\"}",
          "{\"rule\":\"NORMAL_TOLERANCE\",\"coveragePercent\":\"99.9999\","
              + "\"confidencePercent\":\"99.9999\"}");

  static List<String> decisions() {
    return DECISIONS;
  }

  private static JsonLines.Entry<Assessment> read(String line, int longest) {
    return JsonLines.of("gear.jsonl", new StringReader(line), AssessmentJson::read, longest).next();
  }

  /** The one reason that a test is told by. */
  private static Reason answered(String line) {
    JsonLines.Entry<Assessment> outcome = read(line, ROOM);
    assertThat(outcome).isInstanceOf(JsonLines.Line.class);
    List<Reason> told =
        GearRules.of(RULES)
            .assess(((JsonLines.Line<Assessment>) outcome).value(), AS_OF)
            .reasons()
            .stream()
            .filter(reason -> TOLD.contains(reason.kind()))
            .toList();
    assertThat(told).hasSize(1);
    return told.get(0);
  }

  @Test
  void noLineReachesMoreDegreesThanAreChecked() {
    assertThat(ROOM / shortest(0).length()).isLessThan(DEGREES_CHECKED);
  }

  /**
   * As many specimens as any line has room for; the other rule asks more of each, and less here.
   */
  @Test
  @Tag("slow")
  void theLongestLineIsAnsweredInFewWords() {
    assertTimeoutPreemptively(
        LONGEST,
        () -> {
          String line = Filling.SPECIMENS.line(DECISIONS.get(0), ROOM);
          // The element has a name too.
          int specimens = line.split("\"id\":", -1).length - 2;
          assertThat(specimens).isBetween(300_000, DEGREES_CHECKED);
          Reason reason = answered(line);
          assertThat(reason.kind()).isEqualTo(ReasonKind.TEST_MET);
          assertThat(reason.seen())
              .contains("specimens kept = " + specimens)
              .hasSizeLessThan(MOST_WORDS);
        });
  }

  @Test
  void oneCharacterMoreIsRefusedUnread() {
    String line = Filling.SPECIMENS.line(DECISIONS.get(0), USUAL);
    String longer = line + " ".repeat(USUAL + 1 - line.length());
    assertThat(read(longer, USUAL))
        .isInstanceOfSatisfying(
            JsonLines.BadLine.class,
            bad -> {
              assertThat(bad.whole()).isFalse();
              assertThat(bad.text()).hasSize(USUAL);
            });
  }

  @Tag("slow")
  @ParameterizedTest
  @EnumSource(
      value = Filling.class,
      names = {"SPECIMENS", "DIGITS", "JAWS", "UNITS"})
  void aLongLineIsAnsweredInFewWords(Filling filling) {
    for (String rule : DECISIONS) {
      assertTimeoutPreemptively(
          LONGEST,
          () -> {
            Reason reason = answered(filling.line(rule, USUAL));
            assertThat(reason.kind())
                .isEqualTo(
                    switch (filling) {
                      case UNITS -> ReasonKind.TEST_WITHOUT_RESULT;
                      default -> ReasonKind.TEST_MET;
                    });
            assertThat(reason.seen()).hasSizeLessThan(MOST_WORDS);
          });
    }
  }

  @Tag("slow")
  @ParameterizedTest
  @EnumSource(
      value = Filling.class,
      names = {"ONE_NAME", "FAULTS"})
  void aLongLineIsRefusedInFewWords(Filling filling) {
    assertTimeoutPreemptively(
        LONGEST,
        () ->
            assertThat(read(filling.line(DECISIONS.get(0), USUAL), USUAL))
                .isInstanceOfSatisfying(
                    JsonLines.BadLine.class, bad -> assertThat(words(bad)).isLessThan(500_000)));
  }

  private static int words(JsonLines.BadLine<?> bad) {
    // A thousand faults are told, and how many more there are.
    assertThat(bad.faults()).hasSizeLessThanOrEqualTo(1_001);
    return bad.faults().stream().mapToInt(fault -> fault.toString().length()).sum();
  }
}
