package org.ensemblerules.example.department;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@Tag("slow")
class OverlayOptionTest {
  private static final String OURS = Path.of("overlays", "exampleton.json").toString();
  @TempDir private Path folder;

  @Test
  void whatAnOverlayCausesNamesIt() {
    ProgramRun before = ProgramRun.of("explain", "1-07-TROUSERS", "--full");
    ProgramRun after =
        ProgramRun.of(
            "explain", "1-07-TROUSERS", "--full", "--overlay", OURS, "--overlay", "WASHINGTON");
    assertThat(before.code()).isZero();
    assertThat(before.out()).contains("1-07-TROUSERS").doesNotContain("EXAMPLETON");
    assertThat(after.code()).isZero();
    assertThat(words(after))
        .contains("overlays EXAMPLETON, WASHINGTON; fingerprint ")
        .contains("EXAMPLETON exampleton-officers-look")
        .contains("WASHINGTON washington-six-month-inspection");
    assertThat(words(ProgramRun.of("explain", "2-01-HOOD", "--overlay", OURS)))
        .contains("2-01-HOOD structural hood RETIRE (OUT)");
  }

  /** What was printed, without the breaks of lines. */
  private static String words(ProgramRun run) {
    return run.out().replaceAll("\\s+", " ");
  }

  @Test
  void theDemoAndTheMorningListGoByTheOverlayToo() throws IOException {
    Path plain = folder.resolve("plain.jsonl");
    Path laid = folder.resolve("laid.jsonl");
    assertThat(ProgramRun.of("demo", "--out", plain.toString()).code()).isZero();
    ProgramRun run = ProgramRun.of("demo", "--out", laid.toString(), "--overlay", "MICHIGAN");
    assertThat(run.code()).isZero();
    assertThat(words(run)).contains("overlays MICHIGAN");
    assertThat(Files.readString(plain)).doesNotContain("MICHIGAN");
    assertThat(Files.readString(laid))
        .contains("\"overlays\":[\"MICHIGAN\"]", "\"origin\":\"MICHIGAN\"");
    assertThat(in(laid)).isLessThanOrEqualTo(in(plain));
    ProgramRun due = ProgramRun.of("due", "--overlay", "WASHINGTON");
    assertThat(due.code()).isZero();
    assertThat(words(due)).contains("six-month-inspection");
    assertThat(words(ProgramRun.of("due"))).doesNotContain("six-month-inspection");
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
    // Sooner the first time and later afterward compares with nothing: it applies beside.
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
                + " exampleton-helmets/HELMET/STRUCTURAL), allowed: at most 10 years");
    assertThat(out).doesNotExist();
  }

  @Test
  void aManufacturersInstructionsHoldForTheirModelAndAreNamed() throws IOException {
    String instructions = Path.of("overlays", "maker-two-pattern-cs.json").toString();
    assertThat(words(ProgramRun.of("explain", "4-12-COAT")))
        .contains("4-12-COAT structural coat EVALUATE (OUT)", "overheating in the wash");
    String loosened =
        "loosened by MAKER_TWO_PATTERN_CS: water temperature at most 60 degC by its row"
            + " maker-two-water/COAT/STRUCTURAL in place of at most 105 degF (also printed: 40"
            + " degC) by row water-temperature/COAT/STRUCTURAL of NFPA 1851, 2008 edition";
    assertThat(words(ProgramRun.of("explain", "4-12-COAT", "--overlay", instructions)))
        .contains("4-12-COAT structural coat SERVICEABLE (IN)", loosened);
    ProgramRun due = ProgramRun.of("due", "--overlay", instructions);
    assertThat(words(due)).contains("4-12-COAT cleaned advanced on 2026-11-18", loosened);
    assertThat(words(ProgramRun.of("due"))).doesNotContain("LOOSER LIMIT");
    Path other = folder.resolve("other.json");
    Files.writeString(
        other,
        Files.readString(Path.of(instructions))
            .replace("\"model\": \"Pattern CS\"", "\"model\": \"Pattern TS\""));
    assertThat(words(ProgramRun.of("explain", "4-12-COAT", "--overlay", other.toString())))
        .contains("4-12-COAT structural coat EVALUATE (OUT)")
        .doesNotContain("loosened");
    Files.writeString(
        other,
        Files.readString(Path.of(instructions))
            .replace("\"careLimits\": [", "\"ageLimits\": [], \"careLimits\": ["));
    ProgramRun refused = ProgramRun.of("explain", "4-12-COAT", "--overlay", other.toString());
    assertThat(refused.code()).isEqualTo(ExitCodes.USAGE);
    assertThat(refused.err())
        .contains("#/ageLimits: found ageLimits in MANUFACTURERS_INSTRUCTIONS, allowed: ");
  }

  @Test
  void aFileThatIsNotThereIsSaidSo() {
    ProgramRun run = ProgramRun.of("explain", "1-01-COAT", "--overlay", "no-such.json");
    assertThat(run.code()).isEqualTo(ExitCodes.FILE);
    assertThat(run.err()).contains("cannot read no-such.json: no such file or folder");
    assertThat(List.of(run.out())).containsExactly("");
  }
}
