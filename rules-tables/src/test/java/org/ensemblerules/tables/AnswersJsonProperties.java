package org.ensemblerules.tables;

import static org.assertj.core.api.Assertions.assertThat;
import static org.ensemblerules.tables.AnswersJsonTest.valid;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.ensemblerules.GearRules;
import org.ensemblerules.record.RecordFile;
import org.ensemblerules.ruleset.RuleSet;
import org.ensemblerules.schedule.TaskKey;
import org.ensemblerules.source.Row;
import org.ensemblerules.tables.message.AnswerKind;
import org.ensemblerules.tables.message.DueAnswer;
import org.ensemblerules.tables.message.RecordFileAnswer;
import org.ensemblerules.tables.message.ToldAnswer;
import org.ensemblerules.tables.message.ToldItem;
import org.ensemblerules.testkit.ArbitrariesOfAssessments;
import org.ensemblerules.testkit.InventedRules;
import org.ensemblerules.verdict.Assessment;

/** What is asked of a record is answered in the form of the schemas, whatever the record is. */
class AnswersJsonProperties {
  private static final RuleSet RULES = ShippedRules.standard().rules();
  private static final LocalDate DAY = LocalDate.of(2026, 11, 25);

  private static ToldItem item(
      String list, TaskKey task, Optional<LocalDate> on, String why, Optional<? extends Row> row) {
    return new ToldItem(
        list,
        task.value(),
        Optional.empty(),
        on,
        List.of(why),
        row.stream().map(Row::cited).toList());
  }

  @Provide
  Arbitrary<Assessment> assessments() {
    return ArbitrariesOfAssessments.assessments(InventedRules.criteria());
  }

  @Property(tries = 200, edgeCases = EdgeCasesMode.NONE)
  void whatFallsDueIsAsTheSchemaHasIt(@ForAll("assessments") Assessment given) throws IOException {
    DueAnswer answer =
        DueAnswer.of(GearRules.of(RULES), given.serviceRecord(), DAY, DAY, DAY.plusYears(2));
    String text = DueJson.write(answer);
    JsonNode tree = valid("due-answer", text);
    assertThat(tree.get("due")).hasSize(RULES.schedule().due(given.serviceRecord(), DAY).size());
    ToldAnswer told = AnswerJson.read(AnswerKind.DUE, "kept", text).orElseThrow();
    assertThat(told.element()).contains(given.element().named());
    assertThat(told.asOf()).contains(DAY);
    assertThat(told.items("due"))
        .isEqualTo(
            answer.due().stream()
                .map(due -> item("due", due.task(), due.by(), due.reason(), due.row()))
                .toList());
    assertThat(told.items("missed"))
        .isEqualTo(
            answer.missed().stream()
                .map(
                    each ->
                        item(
                            "missed",
                            each.task(),
                            each.by(),
                            each.reason(),
                            Optional.of(each.row())))
                .toList());
    assertThat(told.items("calendar"))
        .isEqualTo(
            answer.calendar().stream()
                .map(
                    each ->
                        item(
                            "calendar",
                            each.task(),
                            Optional.of(each.on()),
                            each.reason(),
                            Optional.of(each.row())))
                .toList());
  }

  @Property(tries = 200, edgeCases = EdgeCasesMode.NONE)
  void whatTheFileOfAnElementLacksIsAsTheSchemaHasIt(@ForAll("assessments") Assessment given)
      throws IOException {
    RecordFile file = RecordFile.builder(given.element(), given.history()).build();
    RecordFileAnswer answer = RecordFileAnswer.of(GearRules.of(RULES), file, DAY, Optional.empty());
    String text = FileAnswerJson.write(answer);
    valid("file-answer", text);
    ToldAnswer told = AnswerJson.read(AnswerKind.FILE, "kept", text).orElseThrow();
    assertThat(told.code()).contains(String.valueOf(answer.report().complete()));
    assertThat(told.items("items").stream().map(ToldItem::code))
        .containsExactlyElementsOf(
            answer.report().answers().keySet().stream().map(Enum::name).toList());
  }
}
