package org.ensemblerules.tables;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.ensemblerules.GearRules;
import org.ensemblerules.care.CareRoute;
import org.ensemblerules.care.CareStep;
import org.ensemblerules.record.RecordFile;
import org.ensemblerules.record.RetentionPolicy;
import org.ensemblerules.record.RetentionStart;
import org.ensemblerules.repair.RepairPlan;
import org.ensemblerules.retirement.CustodyAnswer;
import org.ensemblerules.retirement.CustodyStep;
import org.ensemblerules.retirement.RouteAnswer;
import org.ensemblerules.ruleset.RuleSet;
import org.ensemblerules.source.Checked;
import org.ensemblerules.source.FaultCode;
import org.ensemblerules.source.Row;
import org.ensemblerules.strength.ReportJudge;
import org.ensemblerules.strength.TestCase;
import org.ensemblerules.tables.message.AnswerKind;
import org.ensemblerules.tables.message.AnsweredLine;
import org.ensemblerules.tables.message.CareRequest;
import org.ensemblerules.tables.message.CustodyRequest;
import org.ensemblerules.tables.message.DisposalRequest;
import org.ensemblerules.tables.message.JsonFault;
import org.ensemblerules.tables.message.RecordFileAnswer;
import org.ensemblerules.tables.message.RefusedLine;
import org.ensemblerules.tables.message.RepairRequest;
import org.ensemblerules.tables.message.ToldAnswer;
import org.ensemblerules.tables.message.ToldItem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Every answer as it is written in JSON, against the schemas, by a validator of another project.
 */
class AnswersJsonTest {
  private static final RuleSet RULES = ShippedRules.standard().rules();
  private static final LocalDate DAY = LocalDate.of(2026, 11, 25);
  private static final ObjectMapper MAPPER = new ObjectMapper();

  private static List<String> sample(String name) throws IOException {
    return Files.readAllLines(
        Path.of("..", "examples", "department", "src", "main", "resources")
            .resolve("org/ensemblerules/example/department/" + name));
  }

  static JsonNode valid(String schema, String text) throws IOException {
    assertThat(TableSchemas.objections(schema, text)).as(text).isEmpty();
    assertThat(text).doesNotContain("\n");
    return MAPPER.readTree(text);
  }

  @Test
  void filesWithNoticesAndAPolicy() throws IOException {
    Optional<RetentionPolicy> policy = Optional.of(new RetentionPolicy(5, RetentionStart.DISPOSAL));
    boolean kept = false;
    boolean told = false;
    for (String line : sample("element-files.jsonl")) {
      valid("file", line);
      RecordFile file = RecordFileJson.read("file", line).orElseThrow();
      JsonNode tree =
          valid(
              "file-answer",
              FileAnswerJson.write(RecordFileAnswer.of(GearRules.of(RULES), file, DAY, policy)));
      assertThat(tree.get("complete").booleanValue())
          .isEqualTo(GearRules.of(RULES).file(file, DAY).complete());
      kept |= tree.has("keptThrough");
      told |= tree.get("pfasNotices").size() > 0;
    }
    assertThat(kept && told).isTrue();
  }

  @Test
  void whatLaboratoryReportsComeTo() throws IOException {
    List<String> answers = new ArrayList<>();
    for (String line : sample("test-reports.jsonl")) {
      valid("test-case", line);
      TestCase given = TestCaseJson.read("test case", line).orElseThrow();
      JsonNode tree =
          valid(
              "test-answer",
              TestCaseJson.write(
                  given,
                  GearRules.of(RULES)
                      .judge(given.purpose(), given.rule())
                      .judge(given.product(), given.report())));
      assertThat(tree.get("id").textValue()).isEqualTo(given.id());
      answers.add(tree.get("answer").textValue());
    }
    assertThat(answers).contains("JUDGED", "NO_RESULT");
  }

  /** The samples of the example, which its commands read. */
  @ParameterizedTest
  @CsvSource({
    "care-request, care-requests",
    "repair-request, repair-requests",
    "custody-request, custody-records",
    "disposal-request, disposal-requests",
    "test-case, test-reports",
    "file, element-files"
  })
  void whatIsAskedIsAsTheSchemaHasIt(String schema, String file) throws IOException {
    for (String line : sample(file + ".jsonl")) {
      valid(schema, line);
    }
  }

  /** What was answered to the samples is read back as it was written. */
  @Test
  void answersAreReadBack() throws IOException {
    for (String line : sample("care-requests.jsonl")) {
      CareRequest asked = CareJson.read("care request", line).orElseThrow();
      CareRoute route = RULES.careRoutes().route(asked.element(), asked.exposures());
      ToldAnswer told = told(AnswerKind.CARE, CareJson.write(asked, route));
      assertThat(told.element()).contains(asked.element().named());
      List<CareStep> steps = route instanceof CareRoute.Steps way ? way.steps() : List.of();
      assertThat(told.code()).contains(steps.isEmpty() ? "NO_RULE" : "STEPS");
      assertThat(told.items())
          .isEqualTo(
              steps.stream()
                  .map(
                      step ->
                          new ToldItem(
                              "steps",
                              step.action().name(),
                              Optional.of(step.standing().name()),
                              Optional.empty(),
                              List.of(step.text()),
                              step.rows().stream().map(Row::cited).toList()))
                  .toList());
    }
    for (String line : sample("repair-requests.jsonl")) {
      RepairRequest asked = RepairJson.read("repair request", line).orElseThrow();
      RepairPlan plan = asked.plan(GearRules.of(RULES));
      ToldAnswer told = told(AnswerKind.REPAIR, RepairJson.write(asked, plan));
      assertThat(told.code()).contains(plan.level().name());
      assertThat(told.items().stream().map(ToldItem::code))
          .containsExactlyElementsOf(
              plan.orders().stream().map(order -> order.level().name()).toList());
      assertThat(told.items().stream().map(ToldItem::rows))
          .containsExactlyElementsOf(
              plan.orders().stream()
                  .map(order -> order.limits().stream().map(Row::cited).toList())
                  .toList());
    }
    for (String line : sample("disposal-requests.jsonl")) {
      DisposalRequest asked = DisposalJson.read("disposal request", line).orElseThrow();
      List<RouteAnswer> answers = RULES.tables().records().disposalRoutes().routes(asked.gear());
      ToldAnswer told = told(AnswerKind.DISPOSAL, DisposalJson.write(asked, answers));
      assertThat(told.items()).hasSameSizeAs(answers);
      for (int i = 0; i < answers.size(); i++) {
        ToldItem item = told.items().get(i);
        assertThat(item.code()).isEqualTo(answers.get(i).route().name());
        if (answers.get(i) instanceof RouteAnswer.Closed closed) {
          assertThat(item.texts())
              .isEqualTo(closed.whyNot().stream().map(Object::toString).toList());
        }
      }
    }
    for (String line : sample("custody-records.jsonl")) {
      CustodyRequest asked = CustodyJson.read("custody record", line).orElseThrow();
      Map<CustodyStep, CustodyAnswer> answers =
          RULES.tables().records().custodySteps().check(asked.custody(), DAY);
      ToldAnswer told = told(AnswerKind.CUSTODY, CustodyJson.write(asked, answers, DAY));
      assertThat(told.items().stream().map(ToldItem::code))
          .containsExactlyElementsOf(answers.keySet().stream().map(Enum::name).toList());
      assertThat(told.items()).allMatch(item -> item.rows().size() == 1);
    }
    for (String line : sample("test-reports.jsonl")) {
      TestCase given = TestCaseJson.read("test case", line).orElseThrow();
      ReportJudge.Result result =
          GearRules.of(RULES)
              .judge(given.purpose(), given.rule())
              .judge(given.product(), given.report());
      ToldAnswer told = told(AnswerKind.TEST, TestCaseJson.write(given, result));
      assertThat(told.id()).isEqualTo(given.id());
      assertThat(told.code())
          .contains(
              result instanceof ReportJudge.Judged judged
                  ? judged.outcome().name()
                  : ((ReportJudge.NoResult) result).reason().name());
    }
  }

  private static ToldAnswer told(AnswerKind question, String written) {
    return AnswerJson.read(question, "kept", written).orElseThrow();
  }

  @Test
  void whatIsNoAnswerIsRefusedWithItsPlace() {
    Checked<ToldAnswer, JsonFault> read =
        AnswerJson.read(AnswerKind.CUSTODY, "kept", "{\"steps\": [{\"answer\": 7}]}");
    assertThat(
            ((Checked.Refused<ToldAnswer, JsonFault>) read)
                .faults().stream().map(JsonFault::pointer))
        .containsExactlyInAnyOrder("", "/steps/0", "/steps/0/answer");
  }

  @Test
  void aLineIsAnsweredOrItsFaultsAreTold() throws IOException {
    String asked = sample("care-requests.jsonl").get(0);
    CareRequest request = CareJson.read("care request", asked).orElseThrow();
    String answer =
        CareJson.write(request, RULES.careRoutes().route(request.element(), request.exposures()));
    String id = request.element().id().value();
    JsonNode line =
        valid(
            "line",
            LineJson.write(
                new AnsweredLine("gear.jsonl", 7, Optional.of(id), List.of("Ask."), answer)));
    assertThat(line.get("line").intValue()).isEqualTo(7);
    assertThat(line.get("id").textValue()).isEqualTo(id);
    assertThat(line.at("/cautions/0").textValue()).isEqualTo("Ask.");
    assertThat(line.get("answer")).isEqualTo(MAPPER.readTree(answer));

    String bad = asked.replace("\"COAT\"", "\"COTA\"");
    JsonLines.BadLine<?> refused = bad("gear.jsonl", bad);
    String text = LineJson.write(LineJson.refused("gear.jsonl", refused));
    JsonNode told = valid("line", text);
    assertThat(told.get("id").textValue()).isEqualTo(id);
    assertThat(told.at("/faults/0/pointer").textValue()).isEqualTo("/element/kind");
    assertThat(told.at("/faults/0/code").textValue()).isEqualTo(FaultCode.NOT_ALLOWED.name());
    RefusedLine read = LineJson.readRefused("line", text).orElseThrow();
    assertThat(read.faults()).isEqualTo(refused.faults());
    assertThat(LineJson.write(read)).isEqualTo(text);
  }

  @Test
  void whatALineIsAboutIsToldAsFarAsItCanBeRead() throws IOException {
    for (String text : List.of("{", "[]", "7", "{\"element\": 7}", "{\"id\": []}")) {
      String told = LineJson.write(LineJson.refused("f", bad("f", text)));
      assertThat(valid("line", told).has("id")).as(told).isFalse();
    }
    assertThat(LineJson.refused("f", bad("f", "{\"id\": \"T-1\"}")).id()).contains("T-1");
  }

  private static JsonLines.BadLine<?> bad(String source, String text) {
    try (JsonLines<CareRequest> lines =
        JsonLines.of(source, new StringReader(text), CareJson::read)) {
      return (JsonLines.BadLine<?>) lines.next();
    }
  }
}
