package org.ensemblerules.example.department;

import static org.assertj.core.api.Assertions.assertThat;

import org.ensemblerules.tables.ShippedRules;
import org.junit.jupiter.api.Test;

class AuditCommandTest {
  private static final String BROKEN = "broken-tables";

  @Test
  void theShippedRulesAreSoundAndWhatIsKnownIsNoted() {
    ProgramRun run = ProgramRun.of("audit", "--as-of", "2026-11-25");
    assertThat(run.code()).isZero();
    ShippedRules.editions()
        .forEach(edition -> assertThat(run.out()).contains(edition.id() + ": sound"));
    assertThat(run.out())
        .contains("combinations")
        .contains("at least 675 N (also printed: 150 lbf)")
        .doesNotContain("FAULTS");
    assertThat(run.out().lines()).allMatch(line -> line.length() <= 100);
  }

  @Test
  void oneEditionOnly() {
    ProgramRun run = ProgramRun.of("audit", "--edition", "2014", "--as-of", "2026-11-25");
    assertThat(run.code()).isZero();
    assertThat(run.out()).contains("NFPA_1851_2014: sound").doesNotContain("NFPA_1851_2020: ");
    assertThat(ProgramRun.of("audit", "--edition", "1999").code()).isEqualTo(2);
  }

  @Test
  void aBrokenFolderIsReportedWithEveryFault() {
    ProgramRun run = ProgramRun.of("audit", BROKEN);
    assertThat(run.code()).isEqualTo(1);
    assertThat(run.out())
        .contains("The set cannot be loaded: not sound")
        .contains("DANGLING_SOURCE")
        .contains("NO_BASIS")
        .contains("DUPLICATE")
        .contains("BANDS_DO_NOT_JOIN")
        .contains("UNREACHABLE");
  }

  @Test
  void aFolderThatIsNotThereIsNoReport() {
    ProgramRun run = ProgramRun.of("audit", "no-such-folder");
    assertThat(run.code()).isEqualTo(3);
    assertThat(run.err()).contains("no-such-folder");
  }
}
