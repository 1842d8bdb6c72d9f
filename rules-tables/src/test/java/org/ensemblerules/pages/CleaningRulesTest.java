package org.ensemblerules.pages;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.ensemblerules.testkit.ShippedLoad;
import org.junit.jupiter.api.Test;

/** The worked comparison in the docs is what the library computes. */
class CleaningRulesTest {
  private static final Path FILE = Path.of("..", "docs", "cleaning-rules.md");
  private static final Page PAGE = CleaningRulesPage.page(ShippedLoad.tables());

  @Test
  void theComparisonSaysWhatTheTablesSay() throws IOException {
    if (Boolean.getBoolean("docs.update")) {
      Files.writeString(FILE, PAGE.text());
    }
    assertThat(FILE)
        .as("differs from the tables; write it anew with -Ddocs.update=true")
        .usingCharset(StandardCharsets.UTF_8)
        .hasContent(PAGE.text());
  }

  // By hand, with a calendar: January 10 and a year is January 10; February 10 and six months is
  // August 10.
  @Test
  void theDaysAreThoseOfACalendar() {
    assertThat(PAGE.text())
        .contains("| 2026-08-10 | by 2027-01-10 | by 2026-08-10 |")
        .contains("| 2026-08-11 | by 2027-01-10 | by 2026-08-10, overdue by 1 |")
        .contains("| 2027-01-11 | by 2027-01-10, overdue by 1 | by 2026-08-10, overdue by 154 |");
  }
}
