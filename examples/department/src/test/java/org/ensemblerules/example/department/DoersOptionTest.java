package org.ensemblerules.example.department;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Records that name their doers, read beside a register. */
@Tag("slow")
class DoersOptionTest {
  private static final String DAY = "2026-11-25";

  @TempDir private static Path folder;

  private static String path(String name) {
    return folder.resolve(name).toString();
  }

  @BeforeAll
  static void theDepartmentNamesItsDoers() {
    ProgramRun run =
        ProgramRun.of(
            "demo",
            "--out",
            path("verdicts.jsonl"),
            "--write",
            path("gear.jsonl"),
            "--write-doers",
            path("doers.json"));
    assertThat(run.err()).isEmpty();
    assertThat(run.code()).isZero();
  }

  private ProgramRun assess(String... more) {
    String[] args = new String[more.length + 4];
    args[0] = "assess";
    args[1] = path("gear.jsonl");
    args[2] = "--as-of";
    args[3] = DAY;
    System.arraycopy(more, 0, args, 4, more.length);
    return ProgramRun.of(args);
  }

  private String firstElement() throws IOException {
    return ProgramRun.json(Files.readAllLines(folder.resolve("gear.jsonl")).get(0))
        .at("/element/id")
        .asText();
  }

  @Test
  void givesTheSameVerdictsAsDoersInFull() throws IOException {
    assertThat(Files.readString(folder.resolve("gear.jsonl"))).doesNotContain("credentials");
    ProgramRun run = assess("--doers", path("doers.json"), "--known-doers-only");
    assertThat(run.err()).isEmpty();
    assertThat(run.code()).isZero();
    assertThat(run.out()).isEqualTo(Files.readString(folder.resolve("verdicts.jsonl")));
  }

  @Test
  void everyCommandThatReadsAssessmentsTakesIt() throws IOException {
    String doers = path("doers.json");
    String gear = path("gear.jsonl");
    String id = firstElement();
    List<ProgramRun> runs =
        List.of(
            ProgramRun.of("due", gear, "--as-of", DAY, "--doers", doers),
            ProgramRun.of("due", gear, "--as-of", DAY, "--element", id, "--doers", doers),
            ProgramRun.of("explain", id, "--from", gear, "--as-of", DAY, "--doers", doers),
            ProgramRun.of("difference", gear, "--as-of", DAY, "--doers", doers),
            ProgramRun.of("recompute", path("verdicts.jsonl"), "--from", gear, "--doers", doers));
    assertThat(runs).allSatisfy(run -> assertThat(run.err()).isEmpty());
    assertThat(runs).allSatisfy(run -> assertThat(run.code()).isZero());
    assertThat(runs.get(4).out().lines()).allMatch(line -> line.contains("the same"));
  }

  @Test
  void criteriaAreNamedShortAsWell() throws IOException {
    ProgramRun demo =
        ProgramRun.of("demo", "--out", path("v.jsonl"), "--write", path("short.jsonl"), "--short");
    assertThat(demo.code()).isZero();
    assertThat(Files.readString(folder.resolve("short.jsonl")))
        .doesNotContain("\"criterion\"")
        .contains("\"CLEAR\":[");
    ProgramRun run = ProgramRun.of("assess", path("short.jsonl"), "--as-of", DAY);
    assertThat(run.err()).isEmpty();
    assertThat(run.out()).isEqualTo(Files.readString(folder.resolve("verdicts.jsonl")));
  }

  @Test
  void aNameThatNoRegisterHasIsToldOnceWithItsLines() throws IOException {
    Path nobody = folder.resolve("nobody.json");
    Files.writeString(nobody, "{\"doers\":[]}");
    ProgramRun run = assess("--doers", nobody.toString());
    assertThat(run.code()).isZero();
    assertThat(run.verdicts())
        .isNotEmpty()
        .allMatch(verdict -> verdict.get("service").asText().equals("OUT"));
    List<String> told =
        run.err().lines().filter(line -> line.contains("is in no register of doers")).toList();
    assertThat(told).isNotEmpty().doesNotHaveDuplicates();
    assertThat(told.get(0))
        .contains("nothing that they did counts: " + path("gear.jsonl") + ":1 (" + firstElement())
        .containsPattern(" and \\d+ other lines?$");
  }

  @Test
  void orMakesItsLineBad() throws IOException {
    Path nobody = folder.resolve("nobody.json");
    Files.writeString(nobody, "{\"doers\":[]}");
    ProgramRun run = assess("--doers", nobody.toString(), "--known-doers-only");
    assertThat(run.code()).isEqualTo(1);
    assertThat(run.err())
        .contains("gear.jsonl:1#/history/")
        .contains("allowed: a name that the register of doers has")
        .doesNotContain("is in no register of doers");
  }

  @Test
  void withoutARegisterANameIsABadLine() {
    ProgramRun run = assess();
    assertThat(run.code()).isEqualTo(1);
    assertThat(run.err()).contains("a name alone needs a register of doers");
  }

  @Test
  void twoRegistersThatDisagreeAreRefusedWithTheirLines() throws IOException {
    Path one = folder.resolve("one.json");
    Path two = folder.resolve("two.json");
    Files.writeString(one, "{\"doers\":[\n{\"name\":\"A\",\"kind\":\"MEMBER\"}]}");
    Files.writeString(two, "{\"doers\":[\n\n{\"name\":\"A\",\"kind\":\"ORGANIZATION\"}]}");
    ProgramRun run = assess("--doers", one.toString(), "--doers", two.toString());
    assertThat(run.code()).isEqualTo(2);
    assertThat(run.out()).isEmpty();
    assertThat(run.err())
        .contains(two + ":3#/doers/0: found \"A\" with other particulars than in " + one + ":2");
    assertThat(assess("--doers", one.toString(), "--doers", one.toString()).code()).isZero();
  }

  @Test
  void filesOfElementsNameThemToo() throws IOException {
    String file =
        "{\"element\":{\"id\":\"1\",\"kind\":\"COAT\",\"use\":\"STRUCTURAL\"},\"history\":"
            + "[{\"event\":\"CLEANED\",\"on\":\"2024-06-01\",\"cleaning\":\"ADVANCED\","
            + "\"by\":\"Laundry\"}]}";
    ProgramRun run =
        ProgramRun.withInput(file, "record", "-", "--as-of", DAY, "--doers", path("doers.json"));
    assertThat(run.code()).isZero();
    assertThat(run.out()).contains("coat, structural");
    assertThat(run.err())
        .isEqualToIgnoringNewLines(
            "Laundry is in no register of doers; nothing that they did counts:"
                + " standard input:1 (1)");
  }

  @Test
  void doesNotOverwriteARegister() throws IOException {
    String before = Files.readString(folder.resolve("doers.json"));
    ProgramRun run = assess("--doers", path("doers.json"), "--out", path("doers.json"));
    assertThat(run.code()).isEqualTo(2);
    assertThat(run.err()).contains("found the register");
    assertThat(folder.resolve("doers.json")).hasContent(before);
  }

  @Test
  void threeFilesAreWrittenToThreePlaces() {
    ProgramRun run =
        ProgramRun.of("demo", "--out", path("x.jsonl"), "--write-doers", path("x.jsonl"));
    assertThat(run.code()).isEqualTo(2);
    assertThat(run.err()).contains("--write-doers: found the file that --out names too");
  }

  @Test
  void knownDoersOnlyNeedsARegister() {
    ProgramRun run = assess("--known-doers-only");
    assertThat(run.code()).isEqualTo(2);
    assertThat(run.err()).contains("allowed: with --doers FILE");
  }
}
