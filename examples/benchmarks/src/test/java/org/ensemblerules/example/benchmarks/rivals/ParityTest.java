package org.ensemblerules.example.benchmarks.rivals;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.ensemblerules.defect.DefectRow;
import org.ensemblerules.ruleset.Tables;
import org.ensemblerules.tables.ShippedRules;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What is compared for speed gives the same answers: every row, at both edges of each band. */
@Tag("slow")
class ParityTest {
  /** As many rows as a decision engine, which reads all of them each time, can be asked about. */
  private static final int ROWS_AT_ONCE = 24;

  private final Tables tables = ShippedRules.standard().tables();

  @ParameterizedTest
  @EnumSource
  void everyRivalAnswersAsTheLinesSay(RivalKind kind) {
    List<String> wrong = new ArrayList<>();
    int asked = 0;
    for (List<DefectRow> rows : parts(kind)) {
      NeutralTable table = NeutralTable.of(rows);
      try (Rival<?> rival = kind.on(table, tables.anatomy())) {
        asked += ask(rival, table, table.questions(), wrong);
        asked += ask(rival, table, table.inchesInMillimeters(), wrong);
      }
    }
    assertThat(wrong).isEmpty();
    assertThat(asked).isGreaterThan(9_000);
  }

  private List<List<DefectRow>> parts(RivalKind kind) {
    List<DefectRow> all = tables.defects().rows();
    if (kind != RivalKind.DMN) {
      return List.of(all);
    }
    Map<String, List<DefectRow>> cells = new LinkedHashMap<>();
    all.forEach(
        row ->
            cells
                .computeIfAbsent(
                    row.element() + " " + row.use() + " " + row.site() + " " + row.defect(),
                    cell -> new ArrayList<>())
                .add(row));
    List<List<DefectRow>> parts = new ArrayList<>();
    parts.add(new ArrayList<>());
    for (List<DefectRow> cell : cells.values()) {
      if (parts.get(parts.size() - 1).size() >= ROWS_AT_ONCE) {
        parts.add(new ArrayList<>());
      }
      parts.get(parts.size() - 1).addAll(cell);
    }
    return parts;
  }

  private static <I> int ask(
      Rival<I> rival, NeutralTable table, List<Asked> questions, List<String> wrong) {
    Map<String, List<Line>> lines = new HashMap<>();
    for (Line line : table.lines()) {
      lines
          .computeIfAbsent(line.place() + " " + line.defect(), cell -> new ArrayList<>())
          .add(line);
    }
    for (Asked asked : questions) {
      String expected =
          lines.getOrDefault(asked.place() + " " + asked.defect(), List.of()).stream()
              .filter(line -> line.holds(asked))
              .map(Line::row)
              .findFirst()
              .orElse("");
      String answer = rival.answer(rival.input(asked));
      if (!answer.equals(expected)) {
        wrong.add(asked + ": " + answer + ", not " + expected);
      }
    }
    return questions.size();
  }
}
