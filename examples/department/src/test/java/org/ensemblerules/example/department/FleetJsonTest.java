package org.ensemblerules.example.department;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What is answered about a whole department in JSON, and what is read for it. */
@Tag("slow")
class FleetJsonTest {
  @TempDir private Path folder;

  private static String json(String... args) {
    ProgramRun run =
        ProgramRun.of(Stream.concat(Stream.of(args), Stream.of("--json")).toArray(String[]::new));
    assertThat(run.err()).isEmpty();
    assertThat(run.code()).isEqualTo(ExitCodes.ALL_READ);
    return run.out();
  }

  private String sample(String list) throws IOException {
    ProgramRun run = ProgramRun.of("sample", list);
    assertThat(run.code()).as(run.err()).isZero();
    return Files.writeString(folder.resolve(list + ".jsonl"), run.out()).toString();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '"',
      value = {
        "morning-answer | morning",
        "morning-answer | morning --list WASH",
        "clearing-answer | morning --by 'Exampleton gear room, X. Instance'",
        "clearing-answer | morning --by 'A. Sample'",
        "ready-answer | ready",
        "ready-answer | ready --member 'D. Figment'",
        "issue-answer | issue --element 1-03-COAT --to 'A. Sample'",
        "line | delivery",
        "notice-answer | notice",
        "plan-answer | plan",
        "plan-answer | plan --budget 0",
        "figures-answer | figures"
      })
  void eachAnswerIsAsItsSchemaHasIt(String schema, String line) {
    String[] args =
        Stream.of(line.split(" (?=([^']*'[^']*')*[^']*$)"))
            .map(arg -> arg.replace("'", ""))
            .toArray(String[]::new);
    AnswerSchemas.valid(schema, json(args));
  }

  @ParameterizedTest
  @CsvSource({
    "member, members",
    "whereabouts, where",
    "set-entry, sets",
    "fitting, fittings",
    "order, orders",
    "notice, notices",
    "cost, costs"
  })
  void eachSampleOfAListIsAsItsSchemaHasIt(String schema, String list) throws IOException {
    AnswerSchemas.valid(schema, Files.readString(Path.of(sample(list))));
  }

  /** What the invented department has is what its lists say, whoever reads them. */
  @ParameterizedTest
  @CsvSource({
    "plan, costs",
    "figures, costs",
    "ready, sets",
    "notice, notices",
    "delivery, orders",
    "ready, where"
  })
  void aListReadIsTheListThatWasWritten(String command, String list) throws IOException {
    String own = json(command);
    String read = json(command, "--" + list, sample(list));
    // What is read is told by the name of its file.
    assertThat(read.replaceFirst("\"source\":\"[^\"]*\"", ""))
        .isEqualTo(own.replaceFirst("\"source\":\"[^\"]*\"", ""));
  }

  /** Codes for programs, words for people: no sentence has a code in it. */
  @ParameterizedTest
  @ValueSource(strings = {"morning", "ready", "notice", "delivery"})
  void noSentenceHasACode(String command) {
    ProgramRun.json(json(command).lines().findFirst().orElseThrow())
        .findValues("text")
        .forEach(
            text ->
                assertThat(text.textValue()).doesNotMatch("(?s).*(?<![-A-Z0-9_])[A-Z]+_[A-Z_]+.*"));
  }

  @Test
  void aUsersOwnDepartmentIsAnsweredFromItsOwnLists() throws IOException {
    String gear = sample("ready");
    String members =
        Files.writeString(
                folder.resolve("own.jsonl"),
                "{\"name\":\"A. Own\",\"station\":\"7\",\"uses\":[\"STRUCTURAL\"],"
                    + "\"sizes\":{\"COAT\":\"M\"}}\n")
            .toString();
    String where =
        Files.writeString(
                folder.resolve("places.jsonl"),
                "{\"element\":\"1-01-COAT\",\"holder\":\"A. Own\",\"station\":\"7\"}\n")
            .toString();
    JsonNode alone = ProgramRun.json(json("ready", gear));
    assertThat(alone.get("sets")).isEmpty();
    JsonNode ready =
        ProgramRun.json(
            json(
                "ready",
                gear,
                "--members",
                members,
                "--sets",
                sample("sets"),
                "--where",
                where,
                "--as-of",
                "2026-11-25"));
    assertThat(ready.at("/sets/0/member").textValue()).isEqualTo("A. Own");
    assertThat(ready.at("/sets/0/pieces/0/element/id").textValue()).isEqualTo("1-01-COAT");
    assertThat(ready.at("/counts").findValuesAsText("station")).contains("7");
  }
}
