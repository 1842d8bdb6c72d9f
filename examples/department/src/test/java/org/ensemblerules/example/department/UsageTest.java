package org.ensemblerules.example.department;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class UsageTest {
  private static final Pattern COMMAND = Pattern.compile("^  ([a-z]+)  ", Pattern.MULTILINE);

  /** The commands as the program itself lists them. */
  static List<String> commands() {
    String help = ProgramRun.of("--help").out();
    String listed = help.substring(help.indexOf("Commands:"), help.indexOf("Exit codes:"));
    return COMMAND.matcher(listed).results().map((MatchResult found) -> found.group(1)).toList();
  }

  @ParameterizedTest
  @MethodSource("commands")
  void everyCommandSaysHowItIsUsedAndWhatItsExitCodesMean(String command) {
    ProgramRun run = ProgramRun.of(command, "--help");
    assertThat(run.code()).isZero();
    assertThat(run.out())
        .contains("department " + command)
        .contains("Exit codes:")
        .contains(ExitCodes.meanings().keySet());
  }

  @Test
  void everyCommandIsInTheReadme() throws IOException {
    String readme = Files.readString(Path.of("README.md"));
    assertThat(commands())
        .hasSizeGreaterThan(10)
        .allSatisfy(command -> assertThat(readme).containsPattern("\\| `" + command + "[ `]"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"--bogus", "bogus"})
  void whatIsNotUnderstoodIsRefused(String argument) {
    ProgramRun run = ProgramRun.of(argument);
    assertThat(run.code()).isEqualTo(2);
    assertThat(run.err()).contains(argument).contains("--help");
  }
}
