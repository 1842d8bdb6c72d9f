package org.ensemblerules.example.department;

import java.io.IOException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.ensemblerules.GearRules;
import org.ensemblerules.effect.Doer;
import org.ensemblerules.effect.DoerRegister;
import org.ensemblerules.gear.Element;
import org.ensemblerules.history.History;
import org.ensemblerules.record.RecordFile;
import org.ensemblerules.source.Checked;
import org.ensemblerules.tables.AssessmentJson;
import org.ensemblerules.tables.DoerRegisterJson;
import org.ensemblerules.tables.JsonLines;
import org.ensemblerules.tables.RecordFileJson;
import org.ensemblerules.tables.message.JsonFault;
import org.ensemblerules.tables.message.UnknownDoer;
import org.ensemblerules.verdict.Assessment;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;

/** Those whom the records that are read name as doers. */
final class DoersOption {
  // No register is longer; a larger file is not even read.
  private static final int MOST_BYTES = 16_000_000;

  private final UnknownNames unknown = new UnknownNames();

  @Option(
      names = "--doers",
      paramLabel = "FILE",
      description =
          "Register of the people and companies that the records name, with what they are trained"
              + " or verified for. May be given several times.")
  private List<String> files = List.of();

  @Option(
      names = "--known-doers-only",
      description =
          "A line is bad if it names somebody whom no register has. Without this the line is"
              + " answered, and what they did does not count.")
  private boolean knownOnly;

  /**
   * Returns how assessments are read; they may name the criteria of the rules short.
   *
   * @throws BadFileException if a register is refused, or two disagree; it lists every fault
   */
  JsonLines.Reading<Assessment> assessments(GearRules rules, CommandSpec spec) throws IOException {
    JsonLines.Reading<Assessment> reading =
        areNamed(spec)
            ? AssessmentJson.naming(register(), unknown(), rules)
            : AssessmentJson.under(rules);
    return noting(reading, Assessment::element, Assessment::history);
  }

  /**
   * Returns how files of elements are read; they may name the criteria of the rules short.
   *
   * @throws BadFileException if a register is refused, or two disagree; it lists every fault
   */
  JsonLines.Reading<RecordFile> recordFiles(GearRules rules, CommandSpec spec) throws IOException {
    JsonLines.Reading<RecordFile> reading =
        areNamed(spec)
            ? RecordFileJson.naming(register(), unknown(), rules)
            : RecordFileJson.under(rules);
    return noting(reading, RecordFile::element, RecordFile::history);
  }

  /** Tells of each name that no register has, once for all lines that were read. */
  void tellUnknown(CommandSpec spec) {
    unknown.lines().forEach(spec.commandLine().getErr()::println);
  }

  /**
   * Refuses to write over a register.
   *
   * @throws ParameterException if a file to write is one of them
   */
  void refuseToOverwrite(CommandSpec spec, String option, Path written) throws IOException {
    for (String name : files) {
      if (Input.isAlso(name, written)) {
        throw new ParameterException(
            spec.commandLine(),
            option + ": found the register " + name + ", allowed: another file");
      }
    }
  }

  private boolean areNamed(CommandSpec spec) {
    if (files.isEmpty() && knownOnly) {
      throw new ParameterException(
          spec.commandLine(), "--known-doers-only: found no --doers, allowed: with --doers FILE");
    }
    return !files.isEmpty();
  }

  private UnknownDoer unknown() {
    return knownOnly ? UnknownDoer.REFUSED : UnknownDoer.COUNTS_FOR_NOTHING;
  }

  private DoerRegister register() throws IOException {
    Map<String, String> texts = new LinkedHashMap<>();
    for (String file : files) {
      texts.put(file, Input.text(file, MOST_BYTES));
    }
    Checked<DoerRegister, JsonFault> read = DoerRegisterJson.readAll(texts);
    if (read instanceof Checked.Refused<DoerRegister, JsonFault> refused) {
      throw new BadFileException(refused.faults().stream().map(JsonFault::toString).toList());
    }
    return read.orElseThrow();
  }

  private <T> JsonLines.Reading<T> noting(
      JsonLines.Reading<T> reading, Function<T, Element> element, Function<T, History> history) {
    return (line, json) -> {
      Checked<T, JsonFault> read = reading.read(line, json);
      if (read instanceof Checked.Sound<T, JsonFault> ok) {
        for (Doer doer : history.apply(ok.value()).doers()) {
          if (!doer.registered()) {
            unknown.add(doer.name(), line, element.apply(ok.value()).id().value());
          }
        }
      }
      return read;
    };
  }
}
