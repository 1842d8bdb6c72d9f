package org.ensemblerules.pages;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.ensemblerules.ruleset.RuleSet;
import org.ensemblerules.tables.AssessmentJson;
import org.ensemblerules.tables.ShippedRules;
import org.ensemblerules.verdict.Assessment;
import org.ensemblerules.verdict.Service;
import org.junit.jupiter.api.Test;

/** The page on mapping shows what compiles, and says what the library answers. */
class MappingTest {
  private static final Path FILE = Path.of("..", "docs", "mapping.md");
  private static final RuleSet RULES = ShippedRules.standard();

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

  /** Ids and dates alone bring nothing into service. */
  @Test
  void onlyTheLastRecordIsInService() {
    List<MappingRecords.Sample> records = MappingRecords.all(RULES);
    assertThat(records).hasSize(6);
    for (MappingRecords.Sample each : records) {
      var verdict = RowToVerdict.verdict(RULES, each.people(), each.row(), MappingRecords.AS_OF);
      boolean last = each.equals(records.get(records.size() - 1));
      assertThat(verdict.service()).as(each.adds()).isEqualTo(last ? Service.IN : Service.OUT);
    }
  }

  /** What the columns are said to go to are fields and events of the JSON. */
  @Test
  void theRecordsAreReadBack() {
    for (MappingRecords.Sample each : MappingRecords.all(RULES)) {
      Assessment given = RowToVerdict.assessment(each.people(), each.row());
      assertThat(AssessmentJson.read(AssessmentJson.write(given)).orElseThrow()).isEqualTo(given);
    }
  }
}
