package org.ensemblerules.example.department;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class OverlayOptionTest {
  private static final String OURS = Path.of("overlays", "exampleton.json").toString();
  @TempDir private Path folder;

  @Test
  void whatAnOverlayCausesNamesIt() {
    ProgramRun before = ProgramRun.of("explain", "1-01-COAT");
    ProgramRun after =
        ProgramRun.of("explain", "1-01-COAT", "--overlay", OURS, "--overlay", "WASHINGTON");
    assertThat(before.code()).isZero();
    assertThat(before.out()).contains("1-01-COAT").doesNotContain("EXAMPLETON");
    assertThat(after.code()).isZero();
    assertThat(after.out()).contains("overlays EXAMPLETON, WASHINGTON; fingerprint ");
    assertThat(after.out()).contains(" of EXAMPLETON").contains(" of WASHINGTON");
  }

  @Test
  void theDemoCountsByTheOverlayToo() throws IOException {
    Path plain = folder.resolve("plain.jsonl");
    Path laid = folder.resolve("laid.jsonl");
    assertThat(ProgramRun.of("demo", "--out", plain.toString()).code()).isZero();
    ProgramRun run = ProgramRun.of("demo", "--out", laid.toString(), "--overlay", "MICHIGAN");
    assertThat(run.code()).isZero();
    assertThat(run.out()).contains("overlays MICHIGAN");
    assertThat(in(plain)).isGreaterThan(in(laid));
  }

  private static long in(Path verdicts) throws IOException {
    return Files.readAllLines(verdicts).stream()
        .filter(line -> line.contains("\"service\":\"IN\""))
        .count();
  }

  @Test
  void aLooserRowIsRefusedWithBothRowsAndNothingIsJudged() throws IOException {
    Path looser = folder.resolve("looser.json");
    Files.writeString(
        looser,
        Files.readString(Path.of(OURS)).replace("\"repeatMonths\": 6", "\"repeatMonths\": 18"));
    Path out = folder.resolve("verdicts.jsonl");
    ProgramRun six = ProgramRun.of("demo", "--overlay", looser.toString(), "--out", out.toString());
    // Sooner the first time and later afterwards compares with nothing: it applies beside.
    assertThat(six.code()).isZero();
    Files.writeString(
        looser,
        Files.readString(Path.of(OURS))
            .replace("\"years\": 8", "\"years\": 12")
            .replace("\"repeatMonths\"", "\"repeatMonth\""));
    Files.delete(out);
    ProgramRun form =
        ProgramRun.of("demo", "--overlay", looser.toString(), "--out", out.toString());
    assertThat(form.code()).isEqualTo(ExitCodes.USAGE);
    assertThat(form.err())
        .contains(
            "#/intervals/0: found no field \"repeatMonths\"",
            "#/intervals/0/repeatMonth: found unknown field \"repeatMonth\", allowed: ",
            "refused; nothing was judged");
    Files.writeString(
        looser, Files.readString(Path.of(OURS)).replace("\"years\": 8", "\"years\": 12"));
    ProgramRun refused =
        ProgramRun.of("demo", "--overlay", looser.toString(), "--out", out.toString());
    assertThat(refused.code()).isEqualTo(ExitCodes.USAGE);
    assertThat(refused.out()).isEmpty();
    assertThat(refused.err())
        .contains(
            looser
                + "#/ageLimits/0/limit: found 12 years, looser than 10 years by row"
                + " elements-structural/HELMET/STRUCTURAL of NFPA_1851_2020 (row"
                + " exampleton-helmets/HELMET/STRUCTURAL), allowed: no more years than there");
    assertThat(out).doesNotExist();
  }

  @Test
  void aFileThatIsNotThereIsSaidSo() {
    ProgramRun run = ProgramRun.of("explain", "1-01-COAT", "--overlay", "no-such.json");
    assertThat(run.code()).isEqualTo(ExitCodes.FILE);
    assertThat(run.err()).contains("cannot read no-such.json: no such file or folder");
    assertThat(List.of(run.out())).containsExactly("");
  }
}
