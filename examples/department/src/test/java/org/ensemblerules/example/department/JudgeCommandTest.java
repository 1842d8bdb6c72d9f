package org.ensemblerules.example.department;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;

class JudgeCommandTest {
  private static String sample() throws IOException {
    try (InputStream in = JudgeCommand.class.getResourceAsStream("test-reports.jsonl")) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
  }

  @Test
  void theSampleReachesEachOutcomeByEachRule() {
    ProgramRun run = ProgramRun.of("judge");
    assertThat(run.err()).isEmpty();
    assertThat(run.code()).isEqualTo(ExitCodes.ALL_READ);
    assertThat(run.out())
        .contains(
            "  pass\n",
            "  conditional pass\n",
            "  conditional fail\n",
            "  fail\n",
            "simple acceptance, absolute method",
            "rounding method",
            "guard band w = r U",
            "conformance probability",
            "confidence bound of the mean",
            "normal tolerance bound",
            "small-sample non-parametric bound",
            "as for certification",
            "used gear, policy of EXAMPLE_DEPARTMENT_POLICY")
        .contains("no specimens", "direction missing", "mixed units", "origin unknown")
        .contains("purpose does not fit", "uncertainty missing", "no requirement")
        .contains("1 conditional fail, 1 conditional pass");
  }

  /** 22 lbf is 97.86 N: 22.2 lbf is more than the second column and less than the first. */
  @Test
  void aValueBetweenTheColumnsFailsAndIsToldSo() {
    String text = ProgramRun.of("judge").out();
    String one = text.substring(text.indexOf("tear-between-the-columns"));
    one = one.substring(0, one.indexOf("\n\n")).replaceAll("\\s+", " ");
    assertThat(one).contains("fail", "mean of specimens ~ 98.8 N", "; remarks (1)");
    assertThat(text.replaceAll("\\s+", " "))
        .contains("(1) the limit is printed as 100 N and as 22 lbf")
        .contains("second unit would answer otherwise");
  }

  @Test
  void theOthersAreJudgedBesideABadLine() throws IOException {
    List<String> lines = sample().lines().toList();
    String bad = lines.get(0).replace("\"118.2\"", "\"-118.2\"").replace("COAT", "COTA");
    ProgramRun run = ProgramRun.withInput(bad + "\n\n" + lines.get(1) + "\n", "judge", "-");
    assertThat(run.code()).isEqualTo(ExitCodes.BAD_LINES);
    assertThat(run.err())
        .contains("standard input:1#/report/element: found \"COTA\", allowed: nearest COAT")
        .contains("standard input:1#/report/specimens/0/meanOfHighestPeaks");
    assertThat(run.out()).contains("tear-new-pounds  pass", "1 pass; bad lines: 1");
  }

  @Test
  void aFileThatIsNotThereIsNamed() {
    ProgramRun run = ProgramRun.of("judge", "nowhere.jsonl");
    assertThat(run.code()).isEqualTo(ExitCodes.FILE);
    assertThat(run.err()).contains("cannot read nowhere.jsonl: no such file or folder");
  }
}
