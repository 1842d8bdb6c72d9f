package org.ensemblerules.example.department;

import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.time.Clock;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Objects;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.TypeConversionException;

/**
 * The program, apart from the process it runs in: it reads and writes through what it is given, so
 * that a test can run it as a user does.
 */
final class DepartmentProgram {
  private final InputStream in;
  private final PrintWriter out;
  private final PrintWriter err;
  private final Clock clock;

  DepartmentProgram(InputStream in, PrintWriter out, PrintWriter err, Clock clock) {
    this.in = Objects.requireNonNull(in, "in");
    this.out = Objects.requireNonNull(out, "out");
    this.err = Objects.requireNonNull(err, "err");
    this.clock = Objects.requireNonNull(clock, "clock");
  }

  /** Runs a command line and returns its exit code. */
  int run(String... args) {
    int code = execute(args);
    // A writer keeps quiet about a full disk or a closed pipe.
    boolean written = !out.checkError();
    if (!written) {
      err.println("department: the standard output cannot be written");
    }
    return written ? code : ExitCodes.FILE;
  }

  private int execute(String... args) {
    CommandLine program =
        new CommandLine(new DepartmentCommand())
            .addSubcommand(new DemoCommand())
            .addSubcommand(new AssessCommand(in, clock))
            .addSubcommand(new RecomputeCommand(in))
            .addSubcommand(new CriteriaCommand())
            .addSubcommand(new ExplainCommand(clock))
            .addSubcommand(new JudgeCommand(in))
            .addSubcommand(new DueCommand(in, clock))
            .addSubcommand(new CareCommand(in))
            .addSubcommand(new RepairCommand(in))
            .addSubcommand(new RecordCommand(in, clock))
            .addSubcommand(new CustodyCommand(in, clock))
            .addSubcommand(new DisposalCommand(in))
            .addSubcommand(new DifferenceCommand(in, clock))
            .addSubcommand(new RulesCommand(clock))
            .addSubcommand(new AuditCommand(clock));
    addHelp(program.getCommandSpec());
    program.getSubcommands().values().forEach(each -> addHelp(each.getCommandSpec()));
    return program
        .registerConverter(LocalDate.class, DepartmentProgram::day)
        .setCaseInsensitiveEnumValuesAllowed(true)
        .setOut(out)
        .setErr(err)
        .setParameterExceptionHandler((misuse, given) -> misused(misuse))
        .setExecutionExceptionHandler(
            (failure, command, parsed) -> failed(failure, command.getCommandSpec()))
        .execute(args);
  }

  private static LocalDate day(String text) {
    try {
      return LocalDate.parse(text);
    } catch (DateTimeException e) {
      throw new TypeConversionException("found " + text + ", allowed: a day as in 2026-11-25");
    }
  }

  /** Every command tells how it is used, and what its exit codes mean. */
  private static void addHelp(CommandSpec command) {
    command.addOption(
        OptionSpec.builder("-h", "--help")
            .usageHelp(true)
            .description("Prints this and ends.")
            .build());
    command
        .usageMessage()
        .exitCodeListHeading("%nExit codes:%n")
        .exitCodeList(ExitCodes.meanings());
  }

  private int misused(ParameterException misuse) {
    String command = misuse.getCommandLine().getCommandSpec().qualifiedName();
    err.println(command + ": " + misuse.getMessage());
    err.println("How to use it: " + command + " --help");
    return ExitCodes.USAGE;
  }

  private int failed(Exception failure, CommandSpec command) {
    if (failure instanceof IOException || failure instanceof UncheckedIOException) {
      err.println(command.qualifiedName() + ": " + failure.getMessage());
      return ExitCodes.FILE;
    }
    if (failure instanceof RefusedException) {
      err.println(failure.getMessage());
      err.println(command.qualifiedName() + ": refused; nothing was judged");
      return ExitCodes.USAGE;
    }
    err.println(command.qualifiedName() + ": a fault of the program itself");
    failure.printStackTrace(err);
    return ExitCodes.FAULT;
  }
}
