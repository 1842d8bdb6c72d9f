package org.ensemblerules.example.department;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The daily questions: what is due, how to clean, who may mend, what is missing from the file. */
class DailyCommandsTest {
  private static String sample(String name) throws IOException {
    try (InputStream in = RequestFile.class.getResourceAsStream(name)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
  }

  /** What is said of one element, on one line. */
  private static String of(String id, String text) {
    int from = text.startsWith(id + "  ") ? 0 : text.indexOf("\n" + id + "  ") + 1;
    assertThat(text.substring(from)).startsWith(id);
    return text.substring(from, text.indexOf("\n\n", from)).replaceAll("\\s+", " ");
  }

  @Test
  void careTellsTheRouteAfterEachExposure() {
    ProgramRun run = ProgramRun.of("care");
    assertThat(run.err()).isEmpty();
    assertThat(run.code()).isEqualTo(ExitCodes.ALL_READ);
    assertThat(of("2-04-COAT", run.out()))
        .containsSubsequence(
            "met: products of combustion",
            "1. reduce the exposure at the scene",
            "2. isolate it",
            "3. take the drag rescue device out",
            "4. take shell and liners apart",
            "5. advanced cleaning, apart from the other layers",
            "by [b]; record: day, who did it, reason, findings",
            "6. show it clean",
            "7. put the drag rescue device back");
    assertThat(run.out().replaceAll("\\s+", " "))
        .containsSubsequence(
            "WHO MAY",
            "[b] organization, verified organization, verified independent service provider trained"
                + " for cleaning",
            "ROWS AND THEIR BASIS",
            "RESTATED, nfpa-1851-2020",
            "What a fire leaves on gear harms through the skin");
    assertThat(of("3-02-HELMET", run.out())).contains("disinfect what is hard", "biohazard");
    assertThat(of("3-02-COVERALL", run.out())).contains("by hand, never by machine");
    assertThat(of("1-06-GLOVES", run.out()))
        .contains("find out what it met", "only if whoever found out what it met allows it");
    assertThat(of("2-07-COAT", run.out()))
        .contains("returns no, not by this route", "retire it; it does not go back into service")
        .doesNotContain("1. advanced cleaning");
    assertThat(run.out()).contains("CAUTIONS", "manufacturer's instructions");
  }

  @Test
  void repairTellsWhoMayMendWhat() {
    ProgramRun run = ProgramRun.of("repair");
    assertThat(run.err()).isEmpty();
    assertThat(run.code()).isEqualTo(ExitCodes.ALL_READ);
    assertThat(of("1-02-COAT", run.out()))
        .contains("0.5 in: basic repair", "may do all of the repairs", "afterward seam pull");
    assertThat(run.out().replaceAll("\\s+", " "))
        .contains("4 in: advanced repair", "organization may not do advanced repair")
        .contains(
            "afterward water pressure test of the barrier",
            "the part replaced as an advanced repair")
        .contains("advice: 140 is above 60 %", "not repaired before it is decided by");
    assertThat(of("2-05-TROUSERS", run.out())).contains("advanced repair", "may do all");
    assertThat(of("3-04-COAT", run.out()))
        .contains("liner opened for its inspection", "basic repair", "before liner inspection");
  }

  @Test
  void recordTellsWhatIsMissingAndWhatCannotBe() {
    ProgramRun run = ProgramRun.of("record", "--keep-years", "5");
    assertThat(run.err()).isEmpty();
    assertThat(run.code()).isEqualTo(ExitCodes.ALL_READ);
    assertThat(of("1-04-COAT", run.out()))
        .contains("not complete", "missing: the condition when issued on 2024-02-10")
        .contains("held by Member 4 from 2021-07-15 until 2024-02-01")
        .contains("keep it through 2024-06-30");
    assertThat(of("2-03-HELMET", run.out()))
        .contains("label H-203, file H-302", "nothing after it was disposed of, 2025-03-03")
        .contains("kept through 2030-03-03, by the owner's policy");
    assertThat(of("3-08-HOOD", run.out())).contains("the file is complete", "never issued");
    assertThat(ProgramRun.of("record", "--keep-years", "0").code()).isEqualTo(ExitCodes.USAGE);
  }

  @Test
  void custodyTellsWhichStepsAreOnRecord() {
    ProgramRun run = ProgramRun.of("custody");
    assertThat(run.err()).isEmpty();
    assertThat(run.code()).isEqualTo(ExitCodes.ALL_READ);
    assertThat(of("2-03-COAT", run.out()))
        .contains("every step is on record; not released: keep it as it was found")
        .contains("recorded release not yet");
    assertThat(of("2-03-TROUSERS", run.out()))
        .contains("6 steps are not on record", "missing: it was not left as it was found")
        .contains("by Captain 3 to Evidence room: Captain 2 had it")
        .contains("recorded release on record");
    assertThat(run.out()).contains("CAUTIONS");
    assertThat(of("2-03-TROUSERS", ProgramRun.of("custody", "--as-of", "2026-10-20").out()))
        .contains("missing: a release that certainly came by 2026-10-20");
  }

  @Test
  void disposalTellsWhichRoutesAreOpen() {
    ProgramRun run = ProgramRun.of("disposal");
    assertThat(run.err()).isEmpty();
    assertThat(run.code()).isEqualTo(ExitCodes.ALL_READ);
    assertThat(of("1-09-COAT", run.out()))
        .contains("retired: over age limit", "destroy open", "training without live fire open");
    assertThat(of("2-07-COAT", run.out()))
        .containsSubsequence(
            "training without live fire closed", "the cause of retirement is CBRN agent");
    assertThat(of("2-03-COAT", run.out()))
        .contains("destroy closed: not known to be free of custody", "custody open");
    assertThat(run.out()).contains("CAUTIONS");
  }

  @ParameterizedTest
  @CsvSource({
    "care, care-requests.jsonl, COAT, COTA, element/kind",
    "repair, repair-requests.jsonl, COAT, COTA, element/kind",
    "record, element-files.jsonl, COAT, COTA, element/kind",
    "custody, custody-records.jsonl, COAT, COTA, element/kind",
    "disposal, disposal-requests.jsonl, COAT, COTA, element/kind"
  })
  void aBadLineIsNamedAndTheOthersAreAnswered(
      String command, String file, String found, String wrong, String place) throws IOException {
    List<String> lines = sample(file).lines().toList();
    String bad = lines.get(0).replace('"' + found + '"', '"' + wrong + '"');
    ProgramRun run = ProgramRun.withInput(bad + "\n\n" + lines.get(1) + "\n", command, "-");
    assertThat(run.code()).isEqualTo(ExitCodes.BAD_LINES);
    assertThat(run.err())
        .contains(
            "standard input:1#/" + place + ": found \"" + wrong + "\", allowed: nearest " + found);
    assertThat(run.out()).contains("ROWS AND THEIR BASIS").contains("CAUTIONS");
    assertThat(ProgramRun.of(command, "nowhere.jsonl").code()).isEqualTo(ExitCodes.FILE);
  }

  @Test
  void dueListsTheLongestOverdueFirst() {
    ProgramRun run = ProgramRun.of("due");
    assertThat(run.err()).isEmpty();
    assertThat(run.code()).isEqualTo(ExitCodes.ALL_READ);
    String overdue =
        run.out().substring(run.out().indexOf("OVERDUE ("), run.out().indexOf("DUE TODAY"));
    assertThat(overdue.replaceAll(" +", " "))
        .containsSubsequence(
            "2-07-COAT 2024-06-15 893 days complete liner inspection",
            "1-09-HELMET 2025-04-11 593 days advanced cleaning and 1 more",
            "2-02-COAT 2026-02-28 270 days leave service, liner system");
    List<String> lines = overdue.lines().filter(line -> line.matches("  \\d+-.*")).toList();
    assertThat(lines)
        .extracting(line -> line.replaceAll("^  \\S+ +(\\d{4}-\\d\\d-\\d\\d|unknown).*", "$1"))
        .filteredOn(day -> !day.equals("unknown"))
        .isSorted();
    assertThat(run.out().lines()).allMatch(line -> line.length() <= 120);
    List<String> ids =
        run.out()
            .lines()
            .takeWhile(line -> !line.startsWith("TAKEN OUT"))
            .filter(line -> line.matches("  \\d+-.*"))
            .map(line -> line.strip().split(" ")[0])
            .toList();
    assertThat(ids).doesNotHaveDuplicates().hasSizeGreaterThanOrEqualTo(lines.size());
    assertThat(run.out()).contains("DUE BY 2027-01-24", "TAKEN OUT OF SERVICE", "CAUTIONS");
  }

  @Test
  void dueTellsTheCalendarOfOneElement() {
    ProgramRun run = ProgramRun.of("due", "--element", "1-01-COAT");
    assertThat(run.code()).isEqualTo(ExitCodes.ALL_READ);
    assertThat(run.out())
        .contains("FROM 2026-11-25 TO 2028-11-25, IF EACH IS DONE ON ITS LAST DAY")
        .containsPattern("2027-11-\\d\\d  advanced-inspection")
        .containsPattern("2028-11-\\d\\d  advanced-inspection")
        .containsPattern("2027-\\d\\d-\\d\\d  advanced-cleaning");
    ProgramRun later =
        ProgramRun.of(
            "due", "--element", "1-01-COAT", "--from", "2027-01-01", "--to", "2026-01-01");
    assertThat(later.code()).isEqualTo(ExitCodes.USAGE);
    assertThat(ProgramRun.of("due", "--element", "9-99-COAT").code()).isEqualTo(ExitCodes.USAGE);
    assertThat(ProgramRun.of("due", "--within", "-1").code()).isEqualTo(ExitCodes.USAGE);
  }

  @Test
  void dueReadsAFileOfAssessments(@TempDir Path folder) throws IOException {
    Path department = folder.resolve("department.jsonl");
    Path verdicts = folder.resolve("verdicts.jsonl");
    ProgramRun.of("demo", "--write", department.toString(), "--out", verdicts.toString());
    String two = Files.readAllLines(department).get(0) + "\n{}\n";
    ProgramRun run = ProgramRun.withInput(two, "due", "-", "--as-of", "2030-01-01");
    assertThat(run.code()).isEqualTo(ExitCodes.BAD_LINES);
    assertThat(run.err()).contains("standard input:2#");
    assertThat(run.out()).contains("Due as of 2030-01-01, 1 elements", "days  advanced cleaning");
    assertThat(ProgramRun.of("due", department.toString()).out())
        .isEqualTo(ProgramRun.of("due").out());
  }
}
