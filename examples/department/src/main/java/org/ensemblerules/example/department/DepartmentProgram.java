package org.ensemblerules.example.department;

import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.time.Clock;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Objects;
import java.util.Optional;
import org.ensemblerules.source.Printable;
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
  private final PrintedText printed;
  private final PrintWriter out;
  private final PrintWriter err;
  private final Clock clock;

  DepartmentProgram(InputStream in, Writer out, Writer err, Clock clock) {
    this.in = Objects.requireNonNull(in, "in");
    this.printed = new PrintedText(Objects.requireNonNull(out, "out"));
    this.out = new PrintWriter(printed);
    this.err = new PrintWriter(new PrintedText(Objects.requireNonNull(err, "err")), true);
    this.clock = Objects.requireNonNull(clock, "clock");
  }

  /** Runs a command line and returns its exit code. */
  int run(String... args) {
    int code = executed(args);
    // A writer keeps quiet about a full disk or a closed pipe.
    boolean written = !out.checkError();
    if (!written && !printed.isReaderGone()) {
      err.println(
          "department: cannot write the standard output"
              + printed.failure().map(failure -> ": " + failure.getMessage()).orElse(""));
    }
    err.flush();
    return written || code == ExitCodes.FAULT ? code : ExitCodes.FILE;
  }

  /** Whatever happens, no exit code says that all is well, or that only some lines were bad. */
  private int executed(String... args) {
    try {
      return execute(args);
    } catch (OutOfMemoryError e) {
      err.println(
          "department: out of memory; what was not answered so far is not answered. java -Xmx gives"
              + " it more.");
    } catch (StackOverflowError e) {
      err.println("department: out of stack; what was not answered so far is not answered");
    } catch (Error e) {
      faulty("department", e);
    }
    return ExitCodes.FAULT;
  }

  private int execute(String... args) {
    CommandLine program =
        new CommandLine(new DepartmentCommand())
            .addSubcommand(new DemoCommand())
            .addSubcommand(new AssessCommand(in, clock))
            .addSubcommand(new RecomputeCommand(in))
            .addSubcommand(new CatalogCommand())
            .addSubcommand(new SampleCommand())
            .addSubcommand(new CriteriaCommand())
            .addSubcommand(new ExplainCommand(in, clock))
            .addSubcommand(new JudgeCommand(in))
            .addSubcommand(new MorningCommand(in, clock))
            .addSubcommand(new ReadyCommand(in, clock))
            .addSubcommand(new IssueCommand(in, clock))
            .addSubcommand(new DeliveryCommand(in, clock))
            .addSubcommand(new NoticeCommand(in, clock))
            .addSubcommand(new PlanCommand(in, clock))
            .addSubcommand(new FiguresCommand(in, clock))
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
        .setExpandAtFiles(false)
        .setColorScheme(CommandLine.Help.defaultColorScheme(CommandLine.Help.Ansi.OFF))
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
    err.println(command + ": " + Printable.of(String.valueOf(misuse.getMessage())));
    err.println("How to use it: " + command + " --help");
    return ExitCodes.USAGE;
  }

  private int failed(Exception failure, CommandSpec command) {
    if (failure instanceof OutputEndedException) {
      return ExitCodes.FILE;
    }
    if (failure instanceof UncheckedIOException reading) {
      String why = Optional.ofNullable(reading.getCause()).map(Throwable::getMessage).orElse("");
      err.println(
          command.qualifiedName()
              + ": cannot read "
              + Printable.of(reading.getMessage() + ": " + why));
      return ExitCodes.FILE;
    }
    if (failure instanceof IOException) {
      err.println(
          command.qualifiedName() + ": " + Printable.of(String.valueOf(failure.getMessage())));
      return ExitCodes.FILE;
    }
    if (failure instanceof BadFileException) {
      String.valueOf(failure.getMessage()).lines().forEach(err::println);
      err.println(command.qualifiedName() + ": refused; nothing was judged");
      return ExitCodes.USAGE;
    }
    faulty(command.qualifiedName(), failure);
    return ExitCodes.FAULT;
  }

  private void faulty(String command, Throwable failure) {
    err.println(command + ": a fault of the program itself");
    failure.printStackTrace(err);
  }
}
