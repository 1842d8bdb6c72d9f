package org.ensemblerules.pages;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.ensemblerules.GearRules;
import org.ensemblerules.ruleset.RuleSet;
import org.ensemblerules.source.Checked;
import org.ensemblerules.tables.AssessmentJson;
import org.ensemblerules.tables.ShippedRules;
import org.ensemblerules.verdict.Assessment;
import org.ensemblerules.verdict.Service;
import org.ensemblerules.verdict.Verdict;
import org.junit.jupiter.api.Test;

/** The page on mapping shows what compiles, and says what the library answers. */
class MappingTest {
  private static final Path FILE = Path.of("..", "docs", "mapping.md");
  private static final RuleSet RULES = ShippedRules.standard().rules();

  @Test
  void thePageSaysWhatTheLibraryAnswers() throws IOException {
    Page page = MappingPage.page(RULES);
    if (Boolean.getBoolean("docs.update")) {
      Files.writeString(FILE, page.text());
    }
    assertThat(FILE)
        .as("differs from what the library answers; write it anew with -Ddocs.update=true")
        .usingCharset(StandardCharsets.UTF_8)
        .hasContent(page.text());
  }

  /** Ids and dates alone bring nothing into service; each further fact leaves fewer reasons. */
  @Test
  void onlyASignedOffAndAnItemizedRecordAreInService() {
    List<MappingRecords.Sample> records = MappingRecords.all(RULES);
    assertThat(records).hasSize(6);
    List<Verdict> verdicts =
        records.stream()
            .map(
                each ->
                    RowToVerdict.verdict(
                        GearRules.of(RULES), each.people(), each.row(), MappingRecords.AS_OF))
            .toList();
    assertThat(verdicts.subList(0, 4)).allMatch(each -> each.service() == Service.OUT);
    assertThat(verdicts.subList(4, 6)).allMatch(each -> each.service() == Service.IN);
    for (int i = 1; i < 5; i++) {
      assertThat(keepOut(verdicts.get(i)))
          .as(records.get(i).adds())
          .isLessThan(keepOut(verdicts.get(i - 1)));
    }
  }

  /** A line of the first format is never read for less than it says. */
  @Test
  void linesOfTheFirstFormatAreRefusedAndConverted() throws IOException {
    assertThat(
            AssessmentJson.read("assessment", OldLines.converted(OldLines.OLD))
                .orElseThrow()
                .history())
        .matches(history -> history.events().size() == 2);
    for (MappingRecords.Sample each : MappingRecords.all(RULES)) {
      Assessment given = RowToVerdict.assessment(each.people(), each.row());
      String old = OldLines.old(AssessmentJson.write(given));
      assertThat(AssessmentJson.read("assessment", old)).isInstanceOf(Checked.Refused.class);
      assertThat(AssessmentJson.read("assessment", OldLines.converted(old)).orElseThrow())
          .isEqualTo(given);
    }
  }

  @Test
  void aRowTakesAtMostThirtyLines() throws IOException {
    assertThat(MappingPage.lines("RowToVerdict").lines()).hasSizeLessThanOrEqualTo(30);
  }

  private static long keepOut(Verdict verdict) {
    return verdict.reasons().stream().filter(why -> why.effect().keepsOut()).count();
  }

  /** What the columns are said to go to are fields and events of the JSON. */
  @Test
  void theRecordsAreReadBack() {
    for (MappingRecords.Sample each : MappingRecords.all(RULES)) {
      Assessment given = RowToVerdict.assessment(each.people(), each.row());
      assertThat(AssessmentJson.read("assessment", AssessmentJson.write(given)).orElseThrow())
          .isEqualTo(given);
    }
  }
}
