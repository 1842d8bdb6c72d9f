package org.ensemblerules.example.department;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** For a program, what is wrong in a list stands where the answers would: one line a bad line. */
class ListFaultsJsonTest {
  @TempDir private Path folder;

  private ProgramRun asked(String command, String option, String list) throws IOException {
    String file = Files.writeString(folder.resolve("list.jsonl"), list).toString();
    return ProgramRun.of(command, "--as-of", "2026-11-25", option, file, "--json");
  }

  private JsonNode told(String line) {
    AnswerSchemas.valid("line", line);
    JsonNode told = ProgramRun.json(line);
    assertThat(told.get("source").textValue()).isEqualTo(folder.resolve("list.jsonl").toString());
    return told;
  }

  private static List<String> pointers(JsonNode told) {
    return told.get("faults").findValuesAsText("pointer");
  }

  /** What a list leaves out could make an answer milder, so that nothing is answered. */
  private void isRefused(String command, String option, String list, int line, String pointer)
      throws IOException {
    ProgramRun run = asked(command, option, list);
    assertThat(run.code()).isEqualTo(ExitCodes.USAGE);
    assertThat(run.err().strip()).endsWith("refused; nothing was judged");
    assertThat(run.err().lines()).hasSize(1);
    assertThat(run.out().lines()).hasSize(1);
    JsonNode told = told(run.out());
    assertThat(told.get("line").asInt()).isEqualTo(line);
    assertThat(pointers(told)).containsExactly(pointer);
  }

  private static String sample(String list) {
    return ProgramRun.of("sample", list).out();
  }

  @ParameterizedTest
  @CsvSource({"plan", "figures"})
  void costs(String command) throws IOException {
    String good = sample("costs");
    int lines = (int) good.lines().count();
    isRefused(command, "--costs", good + "{\"of\":\"LUNCH\",\"amount\":1}\n", lines + 1, "/of");
  }

  @ParameterizedTest
  @CsvSource({"notice", "ready", "morning", "delivery"})
  void notices(String command) throws IOException {
    String notice = "{\"id\":\"N-1\",\"asks\":\"STOP_USE\",\"manufacturer\":\"Maker One\"}\n";
    isRefused(command, "--notices", notice + notice.replace("STOP_USE", "STOP"), 2, "/asks");
  }

  @Test
  void sets() throws IOException {
    String good = sample("sets");
    String first = good.lines().findFirst().orElseThrow();
    String bad = first.replaceFirst("\"kind\":\"[A-Z_]+\"", "\"kind\":\"CAPE\"");
    assertThat(bad).isNotEqualTo(first);
    isRefused("ready", "--sets", good.replace(first, bad), 1, "/basis/kind");
  }

  @Test
  void everyBadLineIsTold() throws IOException {
    ProgramRun run = asked("ready", "--sets", "{}\n\n[]\n");
    assertThat(run.code()).isEqualTo(ExitCodes.USAGE);
    assertThat(run.out().lines().map(line -> told(line).get("line").asInt())).containsExactly(1, 3);
  }

  /** In a list in which one fewer makes no answer milder a bad line is told, and no more. */
  @ParameterizedTest
  @CsvSource({
    "ready, --members, {\"name\":7}, /name",
    "ready, --fittings, {\"member\":7}, /member",
    "ready, --where, {\"element\":7}, /element",
    "delivery, --orders, {\"order\":7}, /order"
  })
  void aBadLineThatEndsNothing(String command, String option, String line, String pointer)
      throws IOException {
    ProgramRun run = asked(command, option, line + "\n");
    assertThat(run.code()).isEqualTo(ExitCodes.BAD_LINES);
    assertThat(run.err()).isEmpty();
    JsonNode told = told(run.out().lines().findFirst().orElseThrow());
    assertThat(told.get("line").asInt()).isEqualTo(1);
    assertThat(pointers(told)).contains(pointer);
    assertThat(told.get("faults").findValuesAsText("code")).contains("NOT_ALLOWED");
  }
}
