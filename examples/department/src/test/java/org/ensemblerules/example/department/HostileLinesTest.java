package org.ensemblerules.example.department;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.ensemblerules.example.department.demo.DemoDepartment;
import org.ensemblerules.tables.AssessmentJson;
import org.ensemblerules.tables.ShippedRules;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Whatever stands on one line, the lines around it are answered. */
class HostileLinesTest {
  private static final Map<String, String> SAMPLES =
      Map.of(
          "care", "care-requests.jsonl",
          "judge", "test-reports.jsonl",
          "record", "element-files.jsonl",
          "repair", "repair-requests.jsonl",
          "custody", "custody-records.jsonl",
          "disposal", "disposal-requests.jsonl");

  /** How long the answer to the good line of a command is. */
  private static final Map<String, Integer> ONE = new HashMap<>();

  private static Stream<String> commands() {
    return Stream.concat(SAMPLES.keySet().stream().sorted(), Stream.of("assess"));
  }

  private static String good(String command) {
    if (command.equals("assess")) {
      return AssessmentJson.write(
          DemoDepartment.elements(ShippedRules.standard()).get(0).assessment());
    }
    try (InputStream sample = DepartmentProgram.class.getResourceAsStream(SAMPLES.get(command))) {
      return new String(sample.readAllBytes(), StandardCharsets.UTF_8)
          .lines()
          .filter(line -> !line.isBlank())
          .findFirst()
          .orElseThrow();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static ProgramRun run(String command, byte[]... lines) {
    ByteArrayOutputStream input = new ByteArrayOutputStream();
    for (byte[] line : lines) {
      input.writeBytes(line);
      input.write('\n');
    }
    return ProgramRun.withInput(new ByteArrayInputStream(input.toByteArray()), command, "-");
  }

  private static byte[] utf8(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }

  private static int answers(String command, ProgramRun run) {
    return run.out().length()
        / ONE.computeIfAbsent(command, name -> run(name, utf8(good(name))).out().length());
  }

  @ParameterizedTest
  @MethodSource("commands")
  void aLineBeyondTheLimitOrNotInUtf8IsNamedAndTheNextIsRead(String command) {
    byte[] good = utf8(good(command));
    byte[] latin = ("\"J\u00FCrgen\"").getBytes(StandardCharsets.ISO_8859_1);
    ProgramRun run = run(command, utf8("[" + " ".repeat(1024 * 1024)), latin, good);

    assertThat(run.code()).isEqualTo(1);
    assertThat(run.err())
        .contains("standard input:1#: found a line of 1048577 bytes, allowed: at most 1048576")
        .contains("standard input:2#: found bytes that are no UTF-8, allowed: UTF-8");
    assertThat(answers(command, run)).isEqualTo(1);
  }

  /** JSON takes a carriage return for white space; alone it ends no line. */
  @ParameterizedTest
  @MethodSource("commands")
  void aLoneCarriageReturnEndsNoLine(String command) {
    String good = good(command);
    ProgramRun run = run(command, utf8("{\r" + good.substring(1)), utf8("7"));

    assertThat(run.err()).contains("standard input:2#").doesNotContain("standard input:1#");
    assertThat(answers(command, run)).isEqualTo(1);
  }

  private static ObjectNode object(String json) {
    return (ObjectNode) ProgramRun.json(json);
  }

  /** A number in line 2 of 3: where it stands, and the line. */
  private static Map<String, String> numbered(BigDecimal number) {
    ObjectNode band = object(good("judge"));
    band.putObject("rule").put("rule", "GUARD_BAND").put("r", number);
    ObjectNode interval = object(good("judge"));
    interval
        .putObject("rule")
        .put("rule", "SIMPLE_ACCEPTANCE")
        .putObject("comparison")
        .put("method", "ROUNDED_TO")
        .put("interval", number);
    ObjectNode percent = object(good("judge"));
    percent
        .putObject("rule")
        .put("rule", "CONFIDENCE_BOUND_OF_MEAN")
        .put("confidencePercent", number);
    ObjectNode probability = object(good("judge"));
    probability
        .putObject("rule")
        .put("rule", "CONFORMANCE_PROBABILITY")
        .put("leastPercent", number);
    ObjectNode factor = object(good("judge"));
    ObjectNode uncertainty = ((ObjectNode) factor.get("report")).putObject("uncertainty");
    uncertainty.putObject("expanded").put("value", "1").put("unit", "N");
    uncertainty.put("coverageFactor", number);
    ObjectNode used = object(good("judge"));
    used.putObject("purpose")
        .put("for", "SHARE_OF_NEW_VALUE")
        .put("policy", "EXAMPLETON")
        .put("percent", number)
        .putObject("whenNew");
    return Map.of(
        "/rule/r", band.toString(),
        "/rule/comparison/interval", interval.toString(),
        "/rule/confidencePercent", percent.toString(),
        "/rule/leastPercent", probability.toString(),
        "/report/uncertainty/coverageFactor", factor.toString(),
        "/purpose/percent", used.toString());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"1e-999999999", "1e999999999", "1e-21", "1234567890123456789012345678901"})
  void aNumberWithoutBoundsIsAFaultInItsPlace(String number) {
    String good = good("judge");
    numbered(new BigDecimal(number))
        .forEach(
            (pointer, line) -> {
              ProgramRun run = within(() -> run("judge", utf8(good), utf8(line), utf8(good)));
              assertThat(run.code()).as(pointer).isEqualTo(1);
              assertThat(run.err()).as(pointer).contains("standard input:2#" + pointer + ": found");
              assertThat(run.err()).as(pointer).contains("allowed").doesNotContain("\tat ");
              assertThat(answers("judge", run)).as(pointer).isGreaterThanOrEqualTo(1);
              assertThat(run.out()).as(pointer).contains("bad lines: 1");
            });
  }

  @ParameterizedTest
  @CsvSource({"repair", "replacement", "depreciated", "mostPercent"})
  void anAmountWithoutBoundsIsAFaultInItsPlace(String field) {
    ObjectNode asked = object(good("repair"));
    asked
        .putObject("cost")
        .put("repair", "1")
        .put("replacement", "1")
        .put("depreciated", "1")
        .put("against", "DEPRECIATED_VALUE")
        .put("mostPercent", "50");
    ((ObjectNode) asked.get("cost")).put(field, "1e-999999999");
    ProgramRun run = within(() -> run("repair", utf8(good("repair")), utf8(asked.toString())));

    assertThat(run.code()).isEqualTo(1);
    assertThat(run.err()).contains("standard input:2#/cost/" + field + ": found");
    assertThat(answers("repair", run)).isEqualTo(1);
  }

  private static ProgramRun within(Supplier<ProgramRun> run) {
    return assertTimeoutPreemptively(Duration.ofSeconds(60), run::get);
  }

  @Test
  void whatNobodyForesawIsAFaultOfTheProgramAndNeverOfALine() {
    for (Error error : List.of(new OutOfMemoryError("as if"), new StackOverflowError("as if"))) {
      InputStream failing =
          new InputStream() {
            @Override
            public int read() {
              throw error;
            }
          };
      ProgramRun run = ProgramRun.withInput(failing, "assess", "-");
      assertThat(run.code()).isEqualTo(4);
      assertThat(run.err()).contains("department: out of ").contains("not answered");
    }
  }

  /** A field name with a line feed must not forge a line of the log; nor may anything else. */
  @ParameterizedTest
  @ValueSource(strings = {"\n", "\r", "\u2028", "\u2029", "\u0085", "\u001b[31m", "\u202e"})
  void noNameForgesALineOfTheLog(String evil) {
    ObjectNode line = object(good("assess"));
    line.put("x" + evil + "standard input:9#: found nothing wrong", 1);
    ((ObjectNode) line.get("element")).put("kind", "COAT" + evil + "COAT");
    ProgramRun run = run("assess", utf8(line.toString()));

    assertThat(run.code()).isEqualTo(1);
    assertThat(run.err().lines())
        .hasSize(4)
        .allMatch(
            text ->
                text.startsWith("Judged for today")
                    || text.startsWith("standard input:1#")
                    || text.equals("1 line was bad."));
    assertThat(run.err().replace("\n", "")).doesNotContain(evil).contains("\\u");
  }

  @Test
  void whatIsPrintedReadsInTheOrderInWhichItStands() {
    ObjectNode line = object(good("assess"));
    ((ObjectNode) line.get("element")).put("id", "A\u202eTAOC\u2028B");
    ProgramRun run = run("assess", utf8(line.toString()));

    assertThat(run.code()).isZero();
    assertThat(run.out()).contains("A\\u202eTAOC\\u2028B").doesNotContain("\u202e", "\u2028");
    assertThat(run.verdicts().get(0).at("/element/id").asText()).isEqualTo("A\u202eTAOC\u2028B");

    ProgramRun told =
        ProgramRun.withInput(
            line.toString(),
            "explain",
            "A\u202eTAOC\u2028B",
            "--from",
            "-",
            "--as-of",
            "2026-11-25");
    assertThat(told.code()).isZero();
    assertThat(told.out()).contains("A\\u202eTAOC\\u2028B").doesNotContain("\u202e", "\u2028");
  }

  @ParameterizedTest
  @MethodSource("commands")
  void anIdThatComesTwiceIsNamed(String command) {
    byte[] good = utf8(good(command));
    ProgramRun run = run(command, good, good);

    assertThat(run.code()).isZero();
    if (Set.of("assess", "judge", "record").contains(command)) {
      assertThat(run.err())
          .contains("standard input:2: id ")
          .contains(" again; an earlier line has that id too");
    } else {
      // There may be many questions about one element.
      assertThat(run.err()).doesNotContain("again");
    }
    assertThat(answers(command, run)).isGreaterThanOrEqualTo(1);
  }

  @Test
  void explainTellsEachElementOfAnIdAndEachBadLineOfIt() {
    String good = good("assess");
    String id = object(good).at("/element/id").asText();
    ObjectNode bad = object(good);
    ((ObjectNode) bad.get("element")).put("kind", "CAPE");
    String input = good + "\n" + bad + "\n7\n" + good + "\n";
    ProgramRun run =
        ProgramRun.withInput(input, "explain", id, "--from", "-", "--as-of", "2026-11-25");

    assertThat(run.code()).isEqualTo(1);
    assertThat(run.err())
        .contains("standard input:2: this line names " + id + " and is bad; it was not judged")
        .contains("/element/kind")
        .contains("2 elements have the id " + id)
        .contains("1 other line is bad");
    String one =
        ProgramRun.withInput(good, "explain", id, "--from", "-", "--as-of", "2026-11-25").out();
    assertThat(run.out()).isEqualTo(one + one);

    ProgramRun onlyBad =
        ProgramRun.withInput(bad.toString(), "explain", id, "--from", "-", "--as-of", "2026-11-25");
    assertThat(onlyBad.code()).isEqualTo(1);
    assertThat(onlyBad.err()).contains("/element/kind").contains("this line names " + id);
  }
}
