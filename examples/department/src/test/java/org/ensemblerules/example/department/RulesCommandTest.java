package org.ensemblerules.example.department;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class RulesCommandTest {
  @Test
  void washingtonHasRulesSideBySide() {
    ProgramRun run = ProgramRun.of("rules", "--place", "US-WA");
    assertThat(run.code()).isEqualTo(ExitCodes.ALL_READ);
    assertThat(run.out())
        .contains("Rules that the law of US-WA names, as of 2026-11-25")
        .contains(
            "US-WA: fixed edition, NFPA 1851, 2008 edition",
            "US-WA: manufacturer",
            "US: fixed edition, 29 CFR 1910.156, Fire brigades, 1980")
        .contains("wac-296-305-02001")
        .contains("age\n  - not known");
    assertThat(run.out().replaceAll("\\s+", " ")).contains("never more than six months apart");
  }

  @Test
  void whatDecidesAtPurchaseNeedsItsDay() {
    assertThat(ProgramRun.of("rules", "--place", "US-TX").out()).contains("US-TX: at purchase (");
    assertThat(ProgramRun.of("rules", "--place", "US-TX", "--bought", "2015-01-01").out())
        .contains("US-TX: at purchase, NFPA 1971, 2013 edition");
  }

  @Test
  void aPlaceThatIsNoneIsNamed() {
    ProgramRun run = ProgramRun.of("rules", "--place", "Washington");
    assertThat(run.code()).isEqualTo(ExitCodes.USAGE);
    assertThat(run.err()).contains("--place", "ISO 3166-2");
  }
}
