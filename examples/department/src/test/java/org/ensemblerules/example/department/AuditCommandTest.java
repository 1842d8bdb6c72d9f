package org.ensemblerules.example.department;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.ensemblerules.tables.ShippedRules;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@Tag("slow")
class AuditCommandTest {
  private static final String BROKEN = "broken-tables";

  @Test
  void theShippedRulesAreSoundAndWhatIsKnownIsNoted() {
    ProgramRun run = ProgramRun.of("audit", "--as-of", "2026-11-25");
    assertThat(run.code()).isZero();
    ShippedRules.editions()
        .forEach(edition -> assertThat(run.out()).contains(edition.title() + ": sound"));
    assertThat(run.out()).contains("combinations").doesNotContain("FAULTS");
    assertThat(run.out().lines()).hasSameSizeAs(RulesOption.known());
    ProgramRun whole =
        ProgramRun.of("audit", "--edition", "2020", "--as-of", "2026-11-25", "--notes");
    assertThat(whole.out()).contains("at least 675 N (also printed: 150 lbf)");
    assertThat(run.out().lines()).allMatch(line -> line.length() <= 120);
  }

  @Test
  void oneEditionOnly() {
    ProgramRun run = ProgramRun.of("audit", "--edition", "2008", "--as-of", "2026-11-25");
    assertThat(run.code()).isZero();
    assertThat(run.out())
        .contains("NFPA 1851, 2008 edition: sound")
        .doesNotContain("2020 edition: ");
    ProgramRun unknown = ProgramRun.of("audit", "--edition", "1999");
    assertThat(unknown.code()).isEqualTo(ExitCodes.USAGE);
    assertThat(unknown.err()).contains("--edition: found 1999, allowed: [NFPA_1851_2008, ");
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
  void theRulesAreAuditedWithTheOverlaysLaidOverThem() {
    String ours = Path.of("overlays", "exampleton.json").toString();
    ProgramRun run =
        ProgramRun.of(
            "audit", "--edition", "2020", "--overlay", ours, "--overlay", "NEW_JERSEY", "--notes");
    assertThat(run.code()).isZero();
    assertThat(run.out())
        .contains("NFPA 1851, 2020 edition with EXAMPLETON, NEW_JERSEY: sound")
        .contains("ADDS_NOTHING at yearly-inspection")
        .contains("asks for no more than NFPA_1851_2020 where the row applies");
    assertThat(run.out().lines()).allMatch(line -> line.length() <= 120);
  }

  @Test
  void anOverlayThatAsksForLessIsReported(@TempDir Path folder) throws IOException {
    Path looser = folder.resolve("looser.json");
    String text = Files.readString(Path.of("overlays", "exampleton.json"));
    Files.writeString(looser, text.replace("{\"years\": 8}", "{\"years\": 12}"));
    ProgramRun run = ProgramRun.of("audit", "--edition", "2020", "--overlay", looser.toString());
    assertThat(run.code()).isEqualTo(1);
    assertThat(run.out()).contains("with EXAMPLETON: not sound, 1 faults").contains("12 years");
    Files.writeString(looser, "{}");
    assertThat(ProgramRun.of("audit", "--overlay", looser.toString()).code())
        .isEqualTo(ExitCodes.USAGE);
    assertThat(ProgramRun.of("audit", "--overlay", "no-such.json").code())
        .isEqualTo(ExitCodes.FILE);
  }

  @Test
  void aFolderThatIsNotThereIsNoReport() {
    ProgramRun run = ProgramRun.of("audit", "no-such-folder");
    assertThat(run.code()).isEqualTo(3);
    assertThat(run.err()).contains("no-such-folder");
  }
}
