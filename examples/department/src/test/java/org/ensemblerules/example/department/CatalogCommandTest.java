package org.ensemblerules.example.department;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class CatalogCommandTest {
  @Test
  void printsOneLineOfJsonForTheEditionAskedFor() {
    ProgramRun run = ProgramRun.of("catalog", "--edition", "2008");
    assertThat(run.code()).isEqualTo(ExitCodes.ALL_READ);
    assertThat(run.out().lines()).hasSize(1);
    assertThat(run.out())
        .startsWith("{\"language\":\"en\"")
        .contains("\"criterion\":", "\"NFPA_1851_2008\"");
  }
}
