package org.ensemblerules.audit.soundness;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.ensemblerules.GearRules;
import org.ensemblerules.audit.soundness.ExampleCase.Answer;
import org.ensemblerules.audit.soundness.ExampleCase.Condition;
import org.ensemblerules.audit.soundness.ExampleCase.Question;
import org.ensemblerules.defect.DefectRow;
import org.ensemblerules.defect.Demand;
import org.ensemblerules.defect.ExtentKind;
import org.ensemblerules.defect.Finding;
import org.ensemblerules.defect.FindingId;
import org.ensemblerules.gear.Element;
import org.ensemblerules.gear.ElementId;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.ruleset.RuleSet;
import org.ensemblerules.shipped.TableTexts;
import org.ensemblerules.source.Edition;
import org.ensemblerules.source.RowKey;
import org.ensemblerules.tables.ShippedRules;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.TestReporter;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Each case made from the rows is answered as expected, and differs in what it says it does. */
@Tag("slow")
class ExampleCasesTest {
  private static final Map<Edition, List<ExampleCase>> CASES =
      ShippedRules.editions().stream()
          .collect(
              Collectors.toMap(
                  Function.identity(), each -> ExampleCases.of(GearRules.of(rules(each)))));

  static List<Edition> editions() {
    return ShippedRules.editions();
  }

  private static RuleSet rules(Edition edition) {
    return ShippedRules.of(edition.id()).orElseThrow().rules();
  }

  private static List<ExampleCase> cases(Edition edition) {
    return Objects.requireNonNull(CASES.get(edition));
  }

  @ParameterizedTest
  @MethodSource("editions")
  void theTablesAnswerAsExpected(Edition edition, TestReporter report) {
    RuleSet rules = rules(edition);
    List<String> wrong = new ArrayList<>();
    List<ExampleCase> cases = cases(edition);
    for (ExampleCase each : cases) {
      List<Answer> answered =
          Demand.of(
                  finding(each.asked()),
                  Element.builder(new ElementId("any"), each.asked().element(), each.asked().use())
                      .build(),
                  rules.tables().anatomy(),
                  rules.tables().defects())
              .stream()
              .map(
                  demand ->
                      new Answer(
                          demand.kind(),
                          demand.site(),
                          demand.row().map(DefectRow::key),
                          demand.row().map(DefectRow::effect)))
              .toList();
      if (!answered.equals(each.expected())) {
        wrong.add(each + " answered " + answered);
      }
    }
    assertThat(wrong).isEmpty();
    report.publishEntry(edition.id() + " example cases", Integer.toString(cases.size()));
  }

  @ParameterizedTest
  @MethodSource("editions")
  void everyConditionOfEveryRowDecidesByItself(Edition edition) {
    RuleSet rules = rules(edition);
    Map<RowKey, List<ExampleCase>> byRow =
        cases(edition).stream().collect(Collectors.groupingBy(ExampleCase::about));
    List<String> wrong = new ArrayList<>();
    for (DefectRow row : rules.tables().defects().rows()) {
      List<ExampleCase> cases = Objects.requireNonNull(byRow.get(row.key()));
      ExampleCase deciding = cases.get(0);
      Map<Condition, ExampleCase> neighbors = new EnumMap<>(Condition.class);
      cases.stream()
          .filter(each -> !each.decides())
          .forEach(each -> neighbors.put(each.changed().orElseThrow(), each));
      Set<Condition> conditions = EnumSet.allOf(Condition.class);
      if (row.band().kind() == ExtentKind.PRESENCE) {
        conditions.remove(Condition.EXTENT); // any extent is held
      }
      if (!neighbors.keySet().equals(conditions)
          || !deciding.decides()
          || !deciding.expected().get(0).row().equals(Optional.of(row.key()))) {
        wrong.add(row.key() + " has " + neighbors.keySet());
      }
      neighbors.forEach(
          (condition, each) -> {
            if (!differing(deciding.asked(), each.asked()).equals(Set.of(condition))
                || each.expected().stream()
                    .anyMatch(answer -> answer.row().equals(Optional.of(row.key())))) {
              wrong.add(each.toString());
            }
          });
    }
    assertThat(wrong).isEmpty();
  }

  /** What a deciding case expects, read anew from the JSON of the row's family. */
  @ParameterizedTest
  @MethodSource("editions")
  void theFilesSayWhatADecidingCaseExpects(Edition edition) {
    Map<String, JsonNode> files = new HashMap<>();
    for (TableTexts.Text text : TableTexts.all(Path.of(".."))) {
      if (text.table().equals("defects")) {
        text.root()
            .path("rows")
            .forEach(row -> files.put(text.edition() + " " + row.path("key").asText(), row));
      }
    }
    Map<RowKey, DefectRow> rows =
        rules(edition).tables().defects().rows().stream()
            .collect(Collectors.toMap(DefectRow::key, row -> row));
    List<String> wrong = new ArrayList<>();
    for (ExampleCase each : cases(edition)) {
      if (each.decides()) {
        String origin =
            Objects.requireNonNull(rows.get(each.about())).provenance().origin().value();
        JsonNode file = files.get(origin + " " + each.about().value().split("/", 2)[0]);
        String effect = file == null ? "" : file.path("effect").path("kind").asText();
        if (file == null
            || !named(file, "sites", each.asked().site().toString())
            || !named(file, "defects", each.asked().defect().name())
            || !named(file, "elements", each.asked().element().name())
            || !named(file, "uses", each.asked().use().name())
            || !effect.equals(each.expected().get(0).effect().orElseThrow().effectKind().name())) {
          wrong.add(each.toString());
        }
      }
    }
    assertThat(wrong).isEmpty();
  }

  private static boolean named(JsonNode row, String field, String name) {
    for (JsonNode each : row.path(field)) {
      if (each.asText().equals(name)) {
        return true;
      }
    }
    return false;
  }

  private static Set<Condition> differing(Question one, Question other) {
    Set<Condition> differing = EnumSet.noneOf(Condition.class);
    note(differing, Condition.ELEMENT, one.element(), other.element());
    note(differing, Condition.USE, one.use(), other.use());
    note(differing, Condition.PART, one.site().part(), other.site().part());
    note(differing, Condition.LAYER, one.site().layer(), other.site().layer());
    note(differing, Condition.DEFECT, one.defect(), other.defect());
    note(differing, Condition.EXTENT, one.extent(), other.extent());
    return differing;
  }

  private static void note(Set<Condition> all, Condition condition, Object one, Object other) {
    if (!one.equals(other)) {
      all.add(condition);
    }
  }

  private static Finding finding(Question asked) {
    return new Finding(
        new FindingId("F1"),
        asked.site(),
        "",
        asked.defect(),
        asked.extent(),
        MarkedDate.of(LocalDate.of(2026, 11, 25)));
  }
}
