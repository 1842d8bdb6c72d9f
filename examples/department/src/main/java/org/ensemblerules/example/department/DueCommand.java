package org.ensemblerules.example.department;

import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Function;
import org.ensemblerules.GearRules;
import org.ensemblerules.example.department.Answers.Answer;
import org.ensemblerules.example.department.demo.DemoDepartment;
import org.ensemblerules.example.department.demo.DemoElement;
import org.ensemblerules.example.department.report.CalendarText;
import org.ensemblerules.example.department.report.MorningList;
import org.ensemblerules.schedule.ServiceRecord;
import org.ensemblerules.source.InvalidValueException;
import org.ensemblerules.tables.DueJson;
import org.ensemblerules.tables.JsonLines;
import org.ensemblerules.tables.message.DueAnswer;
import org.ensemblerules.verdict.Assessment;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** What falls due, for all gear or for one element. */
@Command(
    name = "due",
    description = {
      "Lists what is overdue, due and out of service, the longest overdue first.",
      "With --element: what comes for that element in a span of days, and what was missed.",
      "A bad line is named on the standard error; the others are answered."
    })
final class DueCommand implements Callable<Integer> {
  private static final int USUAL_YEARS = 2;

  private final InputStream in;
  private final Clock clock;

  @Mixin private final RulesOption rulesOption = new RulesOption();
  @Mixin private final OverlayOption overlayOption = new OverlayOption();
  @Mixin private final DoersOption doersOption = new DoersOption();
  @Mixin private final JsonOption json = new JsonOption();
  @Spec private CommandSpec spec = CommandSpec.create();

  @Parameters(
      arity = "0..1",
      paramLabel = "FILE",
      description =
          "JSON Lines file of assessments, or - for the standard input. Default: the invented"
              + " department.")
  private Optional<String> file = Optional.empty();

  @Option(
      names = "--as-of",
      paramLabel = "DATE",
      description = "Day asked about. Default: today for a file, 2026-11-25 otherwise.")
  private Optional<LocalDate> asOf = Optional.empty();

  @Option(
      names = "--within",
      paramLabel = "DAYS",
      defaultValue = "60",
      description = "How many days to look ahead. Default: ${DEFAULT-VALUE}.")
  private int within;

  @Option(
      names = "--element",
      paramLabel = "ID",
      description = "The calendar of this element instead, as in 1-03-COAT.")
  private Optional<String> element = Optional.empty();

  @Option(
      names = "--from",
      paramLabel = "DATE",
      description = "The first day of the calendar. Default: the day asked about.")
  private Optional<LocalDate> from = Optional.empty();

  @Option(
      names = "--to",
      paramLabel = "DATE",
      description = "The last day of the calendar. Default: two years after the first.")
  private Optional<LocalDate> to = Optional.empty();

  DueCommand(InputStream in, Clock clock) {
    this.in = in;
    this.clock = clock;
  }

  @Override
  public Integer call() throws IOException {
    GearRules edition = rulesOption.rules(spec);
    LocalDate day =
        asOf.orElseGet(() -> file.isPresent() ? LocalDate.now(clock) : DemoDepartment.AS_OF);
    GearRules rules = overlayOption.over(edition, day);
    if (json.isAsked()) {
      return json(edition, rules, day);
    }
    List<ServiceRecord> records = new ArrayList<>();
    int bad = file.isEmpty() ? readDemo(edition, records) : read(rules, file.get(), records);
    PrintWriter out = spec.commandLine().getOut();
    if (element.isPresent()) {
      for (ServiceRecord record : chosen(records, element.get())) {
        out.print(calendar(rules, record, day));
      }
    } else {
      if (within < 0) {
        throw new ParameterException(
            spec.commandLine(), "--within: found " + within + ", allowed: 0 or more days");
      }
      out.print(MorningList.of(rules, records, day, within));
    }
    return bad == 0 ? ExitCodes.ALL_READ : ExitCodes.BAD_LINES;
  }

  /** Each element is answered as it is read. */
  private int json(GearRules edition, GearRules rules, LocalDate day) throws IOException {
    LocalDate first = from.orElse(day);
    LocalDate last = to.orElse(first.plusYears(USUAL_YEARS));
    if (last.isBefore(first)) {
      throw new ParameterException(
          spec.commandLine(), "--to: found " + last + ", allowed: a day from " + first + " on");
    }
    List<String> told = new ArrayList<>();
    Function<Assessment, Answer> answer =
        given -> {
          String id = given.element().id().value();
          if (element.map(wanted -> !wanted.equals(id)).orElse(false)) {
            return Answer.of("", "");
          }
          told.add(id);
          return Answer.of(
              id, DueJson.write(DueAnswer.of(rules, given.serviceRecord(), day, first, last)));
        };
    PrintWriter out = spec.commandLine().getOut();
    Answers answers = new Answers(json, spec);
    Answers.Writing writing = text -> out.print(text + "\n");
    if (file.isPresent()) {
      answers.each(List.of(file.get()), in, doersOption.assessments(rules, spec), answer, writing);
      doersOption.tellUnknown(spec);
    } else {
      List<Assessment> gear = DemoDepartment.assessments(edition);
      for (int i = 0; i < gear.size(); i++) {
        Answer each = answer.apply(gear.get(i));
        if (!each.text().isEmpty()) {
          writing.write(answers.written(DemoDepartment.NAME, i + 1L, each));
        }
      }
    }
    if (element.isPresent() && told.isEmpty()) {
      throw noSuchElement(element.get());
    }
    return answers.exitCode();
  }

  private String calendar(GearRules rules, ServiceRecord record, LocalDate day) {
    LocalDate first = from.orElse(day);
    try {
      return CalendarText.of(rules, record, day, first, to.orElse(first.plusYears(USUAL_YEARS)));
    } catch (InvalidValueException e) {
      throw new ParameterException(spec.commandLine(), e.getMessage(), e);
    }
  }

  /** Of two elements of one id each has its calendar: nobody knows which is meant. */
  private List<ServiceRecord> chosen(List<ServiceRecord> records, String id) {
    List<ServiceRecord> chosen =
        records.stream().filter(record -> record.element().id().value().equals(id)).toList();
    if (chosen.isEmpty()) {
      throw noSuchElement(id);
    }
    return chosen;
  }

  private ParameterException noSuchElement(String id) {
    return new ParameterException(
        spec.commandLine(),
        "--element: found "
            + id
            + ", allowed: the name of an element in "
            + file.orElse("the invented department, as in 1-03-COAT"));
  }

  private static int readDemo(GearRules edition, List<ServiceRecord> records) {
    DemoDepartment.elements(edition).stream()
        .map(DemoElement::assessment)
        .map(Assessment::serviceRecord)
        .forEach(records::add);
    return 0;
  }

  private int read(GearRules rules, String given, List<ServiceRecord> records) throws IOException {
    try (JsonLines<ServiceRecord> lines =
        Input.open(given, in, doersOption.assessments(rules, spec))
            .map(Assessment::serviceRecord)) {
      GoodLines<ServiceRecord> good =
          new GoodLines<>(given, lines, record -> record.element().id().value(), spec, json);
      good.forEachRemaining(records::add);
      doersOption.tellUnknown(spec);
      return good.bad();
    }
  }
}
