package org.ensemblerules.example.department;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class UsageTest {
  @ParameterizedTest
  @ValueSource(strings = {"demo", "assess", "criteria", "explain"})
  void everyCommandSaysHowItIsUsedAndWhatItsExitCodesMean(String command) {
    ProgramRun run = ProgramRun.of(command, "--help");
    assertThat(run.code()).isZero();
    assertThat(run.out())
        .contains("department " + command)
        .contains("Exit codes:")
        .contains(ExitCodes.meanings().keySet());
  }

  @ParameterizedTest
  @ValueSource(strings = {"--bogus", "bogus"})
  void whatIsNotUnderstoodIsRefused(String argument) {
    ProgramRun run = ProgramRun.of(argument);
    assertThat(run.code()).isEqualTo(2);
    assertThat(run.err()).contains(argument).contains("--help");
  }
}
