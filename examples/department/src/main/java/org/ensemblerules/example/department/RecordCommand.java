package org.ensemblerules.example.department;

import java.io.IOException;
import java.io.InputStream;
import java.time.Clock;
import java.time.LocalDate;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.ensemblerules.GearRules;
import org.ensemblerules.example.department.report.RecordText;
import org.ensemblerules.record.RecordFile;
import org.ensemblerules.record.RetentionPolicy;
import org.ensemblerules.record.RetentionStart;
import org.ensemblerules.source.InvalidValueException;
import org.ensemblerules.tables.FileAnswerJson;
import org.ensemblerules.tables.message.RecordFileAnswer;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Whether the files of elements are complete. */
@Command(
    name = "record",
    description = {
      "Tells what is missing from the files of elements, who held them, and how long each record"
          + " must be kept.",
      "A bad line is named on the standard error; the others are answered."
    })
final class RecordCommand implements Callable<Integer> {
  static final String SAMPLE = "element-files.jsonl";

  private final InputStream in;
  private final Clock clock;

  @Mixin private final RulesOption rulesOption = new RulesOption();
  @Mixin private final RequestFile file = new RequestFile();
  @Mixin private final DoersOption doersOption = new DoersOption();
  @Spec private CommandSpec spec = CommandSpec.create();

  @Option(
      names = "--as-of",
      paramLabel = "DATE",
      description = "Day to check for, as in 2026-11-25. Default: today.")
  private Optional<LocalDate> asOf = Optional.empty();

  @Option(
      names = "--keep-years",
      paramLabel = "YEARS",
      description = "For how long the owner keeps files after disposal; no edition says it.")
  private Optional<Integer> keepYears = Optional.empty();

  RecordCommand(InputStream in, Clock clock) {
    this.in = in;
    this.clock = clock;
  }

  @Override
  public Integer call() throws IOException {
    GearRules rules = rulesOption.rules(spec);
    LocalDate day = asOf.orElseGet(() -> LocalDate.now(clock));
    Optional<RetentionPolicy> policy = policy();
    RecordText text = new RecordText();
    int code =
        file.answer(
            new RequestFile.Question<>(
                SAMPLE,
                doersOption.recordFiles(rules, spec),
                RecordFile::element,
                true,
                one ->
                    text.of(one, rules.file(one, day), rules.tables().records().pfasLaws(), policy),
                one -> FileAnswerJson.write(RecordFileAnswer.of(rules, one, day, policy)),
                text::notes),
            in,
            spec,
            rules);
    doersOption.tellUnknown(spec);
    return code;
  }

  private Optional<RetentionPolicy> policy() {
    try {
      return keepYears.map(years -> new RetentionPolicy(years, RetentionStart.DISPOSAL));
    } catch (InvalidValueException e) {
      throw new ParameterException(spec.commandLine(), "--keep-years: " + e.getMessage(), e);
    }
  }
}
