package org.ensemblerules.example.department;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What is wrong with a department's files has an answer that names it, or an error that does. */
class FleetBadInputTest {
  private static final String MEMBER =
      "{\"name\":\"A. Own\",\"station\":\"7\",\"uses\":[\"STRUCTURAL\"]}\n";
  private static final String NOTICE =
      "{\"id\":\"N-1\",\"asks\":\"STOP_USE\",\"manufacturer\":\"Maker One\"}\n";

  @TempDir private Path folder;

  private String file(String name, String text) throws IOException {
    return Files.writeString(folder.resolve(name), text).toString();
  }

  private static ProgramRun asked(String... args) {
    return ProgramRun.of(
        Stream.concat(Stream.of(args), Stream.of("--as-of", "2026-11-25")).toArray(String[]::new));
  }

  private static JsonNode answer(String... args) {
    ProgramRun run =
        asked(Stream.concat(Stream.of(args), Stream.of("--json")).toArray(String[]::new));
    assertThat(run.err()).isEmpty();
    assertThat(run.code()).isEqualTo(ExitCodes.ALL_READ);
    return ProgramRun.json(run.out());
  }

  private String gear(String... args) throws IOException {
    ProgramRun run =
        ProgramRun.of(Stream.concat(Stream.of("sample"), Stream.of(args)).toArray(String[]::new));
    return file("gear.jsonl", run.out());
  }

  private static String texts(JsonNode list, String field) {
    return StreamSupport.stream(list.spliterator(), false)
        .map(each -> each.path(field).asText())
        .collect(Collectors.joining("; "));
  }

  @ParameterizedTest
  @ValueSource(strings = {"morning", "ready", "notice", "plan", "figures"})
  void noGear(String command) throws IOException {
    JsonNode answer = answer(command, file("none.jsonl", ""));
    assertThat(answer.isObject()).isTrue();
    assertThat(answer.path("elements").asInt()).isZero();
    assertThat(answer.path("lists")).isEmpty();
  }

  @Test
  void noGearToIssue() throws IOException {
    ProgramRun run =
        asked(
            "issue",
            file("none.jsonl", ""),
            "--members",
            file("members.jsonl", MEMBER),
            "--element",
            "C-1",
            "--to",
            "A. Own");
    assertThat(run.code()).isEqualTo(ExitCodes.USAGE);
    assertThat(run.err()).contains("--element: found C-1");
  }

  @Test
  void membersWithoutGear() throws IOException {
    JsonNode set =
        answer(
                "ready",
                file("none.jsonl", ""),
                "--members",
                file("members.jsonl", MEMBER),
                "--sets",
                file("sets.jsonl", ProgramRun.of("sample", "sets").out()))
            .at("/sets/0");
    assertThat(set.get("complete").booleanValue()).isFalse();
    assertThat(texts(set.get("gaps"), "text"))
        .contains("coat: none issued", "helmet: none issued", "drag rescue device: none issued");
    JsonNode without =
        answer("ready", file("none.jsonl", ""), "--members", file("members.jsonl", MEMBER))
            .at("/sets/0");
    assertThat(texts(without.get("gaps"), "gap")).isEqualTo("NO_ROW");
  }

  @Test
  void unknownStationsAndSizes() throws IOException {
    String where =
        file(
            "where.jsonl",
            "{\"element\":\"1-01-COAT\",\"holder\":\"A. Own\",\"station\":\"No such station\"}\n");
    JsonNode ready =
        answer(
            "ready",
            gear("ready"),
            "--where",
            where,
            "--members",
            file("members.jsonl", MEMBER),
            "--sets",
            file("sets.jsonl", ProgramRun.of("sample", "sets").out()));
    assertThat(texts(ready.get("counts"), "station")).contains("No such station");
    long counted =
        StreamSupport.stream(ready.get("counts").spliterator(), false)
            .mapToLong(count -> count.get("in").asLong() + count.get("out").asLong())
            .sum();
    assertThat(counted).isEqualTo(3);
    assertThat(texts(ready.at("/sets/0/gaps"), "text"))
        .contains("coat 1-01-COAT is not shown to fit: a size is not known");
    JsonNode issue =
        answer(
            "issue",
            gear("ready"),
            "--members",
            file("members.jsonl", MEMBER),
            "--element",
            "1-01-COAT",
            "--to",
            "A. Own");
    assertThat(texts(issue.get("against"), "code")).contains("SIZE_NOT_KNOWN");
    assertThat(issue.get("mayBeIssued").booleanValue()).isFalse();
  }

  /** A price that is left out could make a plan cheaper, so that one that is bad ends the run. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "{\"of\":\"NEW_GEAR\",\"kind\":\"COAT\",\"use\":\"STRUCTURAL\",\"amount\":-1} | /amount",
        "{\"of\":\"CLEANING\",\"cleaning\":\"ADVANCED\",\"amount\":\"-0.01\"} | /amount",
        "{\"of\":\"REPAIR\",\"class\":\"BASIC\",\"amount\":1.005} | /amount",
        "{\"of\":\"NEW_GEAR\",\"kind\":\"COTA\",\"use\":\"STRUCTURAL\",\"amount\":1} | /kind",
        "{\"of\":\"LUNCH\",\"amount\":1} | /of"
      })
  void negativeAndOtherBadCosts(String line, String pointer) throws IOException {
    String costs = file("costs.jsonl", ProgramRun.of("sample", "costs").out() + line + "\n");
    for (String command : new String[] {"plan", "figures"}) {
      ProgramRun run = asked(command, "--costs", costs);
      assertThat(run.code()).isEqualTo(ExitCodes.USAGE);
      assertThat(run.err()).contains("costs.jsonl:25#" + pointer + ": found", "refused");
      assertThat(run.out()).isEmpty();
    }
  }

  @Test
  void aCostTwice() throws IOException {
    String line = ProgramRun.of("sample", "costs").out().lines().findFirst().orElseThrow() + "\n";
    ProgramRun run = asked("plan", "--costs", file("costs.jsonl", line + line));
    assertThat(run.code()).isEqualTo(ExitCodes.USAGE);
    assertThat(run.err()).contains("Prices.costs: given COAT for STRUCTURAL, allowed: each once");
  }

  @Test
  void aBudgetOfZero() {
    JsonNode plan = answer("plan", "--budget", "0").get("plan");
    assertThat(plan.get("spent").textValue()).isEqualTo("0.00");
    assertThat(plan.get("years")).allMatch(year -> year.get("bought").isEmpty());
    int last = plan.get("years").size() - 1;
    assertThat(plan.at("/years/" + last + "/uncovered").size()).isGreaterThan(500);
  }

  @Test
  void capacityBelowADaysNeed() {
    JsonNode work = answer("morning", "--per-day", "1").get("work");
    assertThat(texts(work.get("late"), "why")).contains("NO_ROOM", "OVERDUE");
    JsonNode roomy = answer("morning", "--per-day", "50").get("work");
    assertThat(tasks(work)).isEqualTo(tasks(roomy));
  }

  /** How many tasks there are, in time or late: none is lost. */
  private static int tasks(JsonNode work) {
    int tasks = work.get("late").size();
    for (JsonNode day : work.get("planned")) {
      tasks += day.get("tasks").size();
    }
    return tasks;
  }

  @Test
  void anIdThatTwoElementsHave() throws IOException {
    String lines = ProgramRun.of("sample", "ready").out();
    String twice = file("twice.jsonl", lines + lines.lines().findFirst().orElseThrow() + "\n");
    ProgramRun run = asked("ready", twice, "--json");
    assertThat(run.err()).contains("twice.jsonl:4: id 1-01-COAT again");
    JsonNode ready = ProgramRun.json(run.out());
    assertThat(ready.at("/repeated/0").textValue()).isEqualTo("1-01-COAT");
    assertThat(ready.at("/counts/0/in").asInt() + ready.at("/counts/0/out").asInt()).isEqualTo(2);
  }

  @Test
  void anIdThatTwoFilesHave() throws IOException {
    String order = ProgramRun.of("sample", "orders").out();
    ProgramRun run = asked("delivery", "--orders", file("orders.jsonl", order + order), "--json");
    assertThat(run.err()).contains("id 2026-31 again");
    JsonNode second = ProgramRun.verdicts(run.out()).get(1).get("answer");
    assertThat(second.get("elements"))
        .allMatch(element -> texts(element.get("against"), "code").contains("ID_TAKEN"));
    JsonNode first = ProgramRun.verdicts(run.out()).get(0).get("answer");
    assertThat(texts(first.at("/elements/0/against"), "code")).contains("ID_TAKEN");
  }

  @Test
  void aMemberTwiceAndAPlaceTwice() throws IOException {
    ProgramRun run = asked("ready", "--members", file("members.jsonl", MEMBER + MEMBER));
    assertThat(run.code()).isEqualTo(ExitCodes.USAGE);
    assertThat(run.err())
        .contains("Readiness.members: given \"A. Own\", allowed: each member once");
    String where =
        file(
            "where.jsonl",
            "{\"element\":\"10-02-COAT\",\"place\":\"Rack\"}\n"
                + "{\"element\":\"10-02-COAT\",\"holder\":\"A. Sample\"}\n");
    JsonNode lists = answer("morning", "--where", where).get("lists");
    assertThat(lists).isNotEmpty();
    String spares = answer("ready", "--where", where).findValues("spares").toString();
    assertThat(answer("ready").findValues("spares").toString()).contains("10-02-COAT");
    assertThat(spares).doesNotContain("10-02-COAT");
  }

  @Test
  void aNoticeWithoutDates() throws IOException {
    JsonNode effect = answer("notice", "--notices", file("notices.jsonl", NOTICE));
    assertThat(effect.get("touched").size()).isGreaterThan(100);
    assertThat(effect.at("/after/in").asInt()).isLessThan(effect.at("/before/in").asInt());
    assertThat(effect.at("/touched/0/notices/0/text").textValue())
        .isEqualTo("notice N-1 touches it: stop using it");
  }

  /** A notice that cannot be read may touch anything. */
  @Test
  void aNoticeThatCannotBeReadEndsTheRun() throws IOException {
    String bad = NOTICE + NOTICE.replace("STOP_USE", "STOP");
    for (String command : new String[] {"notice", "ready", "morning", "delivery"}) {
      ProgramRun run = asked(command, "--notices", file("notices.jsonl", bad));
      assertThat(run.code()).isEqualTo(ExitCodes.USAGE);
      assertThat(run.err()).contains("notices.jsonl:2#/asks: found \"STOP\"", "STOP_USE");
      assertThat(run.out()).isEmpty();
    }
  }

  /** One member fewer makes nobody else ready, so that the others are answered. */
  @Test
  void aBadMemberIsToldAndTheOthersAreAnswered() throws IOException {
    String members = file("members.jsonl", "{\"name\":7}\n" + MEMBER);
    ProgramRun run = asked("ready", "--members", members);
    assertThat(run.code()).isEqualTo(ExitCodes.BAD_LINES);
    assertThat(run.err()).contains("members.jsonl:1#/name: found 7, allowed: a text");
    assertThat(run.out()).contains("A. Own");
    ProgramRun json = asked("ready", "--members", members, "--json");
    assertThat(json.err()).isEmpty();
    AnswerSchemas.valid("line", json.out().lines().findFirst().orElseThrow());
  }
}
