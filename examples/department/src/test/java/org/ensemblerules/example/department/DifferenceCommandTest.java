package org.ensemblerules.example.department;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class DifferenceCommandTest {
  @Test
  void tellsWhatTheEditionOf2020ChangesAgainst2014() {
    ProgramRun run = ProgramRun.of("difference");
    assertThat(run.err()).isEmpty();
    assertThat(run.code()).isEqualTo(ExitCodes.ALL_READ);
    assertThat(run.out())
        .contains("From NFPA_1851_2014 to NFPA_1851_2020, as of 2026-11-25")
        .contains("ROWS THAT DIFFER, BY TABLE", "TaskRow  ", "ADDED (", "ELEMENTS")
        .contains("  all: 192 elements");
  }

  @Test
  void nothingButTheBasisChangesWhereAnEditionIsCarriedOver() {
    ProgramRun run = ProgramRun.of("difference", "--from", "2020", "--to", "NFPA_1850_2026");
    assertThat(run.code()).isEqualTo(ExitCodes.ALL_READ);
    assertThat(run.out())
        .contains("DefectRow  reworded 7374")
        .contains("  all: 192 elements, 0 change; 0 leave service, 0 return to it");
  }

  @Test
  void anEditionThatDoesNotExistIsNamed() {
    ProgramRun run = ProgramRun.of("difference", "--to", "1999");
    assertThat(run.code()).isEqualTo(ExitCodes.USAGE);
    assertThat(run.err()).contains("--to: found 1999, allowed: [NFPA_1851_2008");
  }

  @Test
  void readsAFileAndGoesOnPastABadLine() {
    String line = "{\"element\": {\"id\": \"A\", \"kind\": \"HOOD\", \"use\": \"STRUCTURAL\"}}";
    ProgramRun run = ProgramRun.withInput(line + "\n{}\n", "difference", "-");
    assertThat(run.code()).isEqualTo(ExitCodes.BAD_LINES);
    assertThat(run.err()).contains("standard input:2#");
    assertThat(run.out()).contains("  all: 1 elements");
  }
}
