package org.ensemblerules.example.department;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.PipedInputStream;
import java.io.PipedOutputStream;
import java.io.PipedReader;
import java.io.PipedWriter;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Answers for programs: each line that is read is answered by one, or its faults are told. */
class JsonOptionTest {
  private static final String BAD = "{\"element\": {\"id\": \"X-1\", \"kind\": \"COTA\"}}";

  private static String sample(String command) {
    ProgramRun run = ProgramRun.of("sample", command);
    assertThat(run.err()).isEmpty();
    assertThat(run.code()).isZero();
    assertThat(run.out().lines()).isNotEmpty().hasSizeLessThanOrEqualTo(3);
    return run.out();
  }

  @ParameterizedTest
  @CsvSource({
    "assess, assessment, verdict",
    "due, assessment, due-answer",
    "care, care-request, care-answer",
    "repair, repair-request, repair-answer",
    "record, file, file-answer",
    "custody, custody-request, custody-answer",
    "disposal, disposal-request, disposal-answer",
    "judge, test-case, test-answer"
  })
  void eachLineIsAnsweredByOneWithItsNumberAndItsId(String command, String asks, String answers) {
    AnswerSchemas.valid(asks, sample(command));
    String input = sample(command) + "\n" + BAD + "\n";
    long asked = input.lines().filter(line -> !line.isEmpty()).count();
    ProgramRun run = ProgramRun.withInput(input, command, "-", "--json");
    assertThat(run.code()).isEqualTo(ExitCodes.BAD_LINES);
    List<JsonNode> lines = run.verdicts();
    assertThat(lines).hasSize((int) asked);
    assertThat(lines).allMatch(line -> line.get("source").asText().equals("standard input"));
    AnswerSchemas.valid("line", run.out());
    lines.stream()
        .filter(line -> line.has("answer"))
        .forEach(line -> AnswerSchemas.valid(answers, line.get("answer").toString()));
    for (JsonNode line : lines.subList(0, lines.size() - 1)) {
      JsonNode answer = line.get("answer");
      assertThat(line.get("id").asText())
          .isEqualTo(
              answer.has("id") ? answer.get("id").asText() : answer.at("/element/id").asText());
    }
    JsonNode bad = lines.get(lines.size() - 1);
    assertThat(bad.get("line").asLong()).isEqualTo(asked + 1);
    assertThat(bad.get("id").asText()).isEqualTo("X-1");
    assertThat(bad.get("faults")).isNotEmpty();
    assertThat(bad.at("/faults/0").fieldNames())
        .toIterable()
        .containsExactly("code", "pointer", "found", "allowed");
    assertThat(run.err()).doesNotContain("COTA").doesNotContain("CAUTIONS");
  }

  @Test
  void anAnswerIsThatWithoutTheOption() {
    String input = sample("assess");
    ProgramRun plain = ProgramRun.withInput(input, "assess", "-");
    ProgramRun json = ProgramRun.withInput(input, "assess", "-", "--json");
    assertThat(json.verdicts().stream().map(line -> line.get("answer")))
        .containsExactlyElementsOf(plain.verdicts());
  }

  @Test
  void whatIsNamedShortIsReadAsWell() {
    ProgramRun inShort = ProgramRun.of("sample", "assess", "--short");
    assertThat(inShort.out().length()).isLessThanOrEqualTo(sample("assess").length());
    assertThat(ProgramRun.withInput(inShort.out(), "assess", "-").out())
        .isEqualTo(ProgramRun.withInput(sample("assess"), "assess", "-").out());
  }

  @Test
  void aSampleIsOfACommandThatReads() {
    ProgramRun run = ProgramRun.of("sample", "audit");
    assertThat(run.code()).isEqualTo(ExitCodes.USAGE);
    assertThat(run.err()).contains("found audit, allowed: one that reads lines: assess");
    assertThat(ProgramRun.verdicts(sample("recompute"))).hasSize(3);
  }

  @Test
  void severalFilesAreAnsweredInOneRun(@TempDir Path folder) throws IOException {
    Path one = Files.writeString(folder.resolve("one.jsonl"), sample("assess"));
    Path two = Files.writeString(folder.resolve("two.jsonl"), BAD + "\n");
    ProgramRun run = ProgramRun.of("assess", one.toString(), two.toString(), "--json");
    assertThat(run.verdicts()).hasSize(4);
    assertThat(run.verdicts().get(3).get("source").asText()).isEqualTo(two.toString());
    assertThat(run.verdicts().get(3).get("line").asLong()).isEqualTo(1);
    Path out = folder.resolve("out.jsonl");
    ProgramRun.of("assess", one.toString(), two.toString(), "--json", "--out", out.toString());
    assertThat(Files.readString(out)).isEqualTo(run.out());
  }

  @Test
  void oneElementOfManyIsTold() {
    ProgramRun run = ProgramRun.of("due", "--json", "--element", "1-03-COAT");
    assertThat(run.verdicts()).hasSize(1);
    assertThat(run.verdicts().get(0).at("/answer/element/id").asText()).isEqualTo("1-03-COAT");
    assertThat(ProgramRun.of("due", "--json", "--element", "9").code()).isEqualTo(ExitCodes.USAGE);
    assertThat(ProgramRun.of("due", "--json", "--to", "2020-01-01").code())
        .isEqualTo(ExitCodes.USAGE);
  }

  private static List<JsonNode> valid(String schema, String... args) {
    ProgramRun run = ProgramRun.of(args);
    AnswerSchemas.valid(schema, run.out());
    return run.verdicts();
  }

  @Test
  void whatIsNotAskedOfLinesIsJsonToo() {
    assertThat(valid("criteria-answer", "criteria", "COAT", "STRUCTURAL", "--json"))
        .singleElement()
        .matches(tree -> tree.get("criteria").size() > 20);
    assertThat(valid("rules-answer", "rules", "--place", "US-WA", "--json")).hasSize(1);
    assertThat(valid("audit-answer", "audit", "--edition", "2014", "--json"))
        .singleElement()
        .matches(tree -> tree.get("sound").asBoolean());
    assertThat(valid("catalog", "catalog")).hasSize(1);
    assertThat(valid("verdict", "sample", "recompute")).hasSize(3);
    String input = sample("difference") + BAD + "\n";
    ProgramRun run =
        ProgramRun.withInput(input, "difference", "-", "--from", "2014", "--to", "2020", "--json");
    run.verdicts()
        .forEach(
            line ->
                AnswerSchemas.valid(
                    line.has("difference") ? "difference-answer" : "line", line.toString()));
    assertThat(run.verdicts())
        .extracting(line -> line.path("difference").asText())
        .contains("RULES", "ROW", "ELEMENT", "FLEET", "");
    assertThat(run.code()).isEqualTo(ExitCodes.BAD_LINES);
  }

  /** A program asks a line, waits for its answer, and asks the next. */
  @Test
  @Timeout(120)
  void eachAnswerComesBeforeTheNextLineIsAsked() throws Exception {
    List<String> asked = sample("assess").lines().toList();
    PipedOutputStream questions = new PipedOutputStream();
    PipedWriter written = new PipedWriter();
    try (PipedInputStream in = new PipedInputStream(questions, 1 << 16);
        BufferedReader answers = new BufferedReader(new PipedReader(written, 1 << 20))) {
      CompletableFuture<Integer> code =
          CompletableFuture.supplyAsync(
              () -> {
                int result =
                    new DepartmentProgram(
                            in, written, new PrintWriter(new StringWriter()), Clock.systemUTC())
                        .run("assess", "-", "--json");
                try {
                  written.close();
                } catch (IOException e) {
                  throw new UncheckedIOException(e);
                }
                return result;
              });
      for (String line : List.of(asked.get(0), BAD, "{", asked.get(1))) {
        questions.write((line + "\n").getBytes(StandardCharsets.UTF_8));
        questions.flush();
        JsonNode answer = ProgramRun.json(answers.readLine());
        assertThat(answer.has("answer")).isEqualTo(asked.contains(line));
      }
      questions.close();
      assertThat(code.get(60, TimeUnit.SECONDS)).isEqualTo(ExitCodes.BAD_LINES);
    }
  }
}
