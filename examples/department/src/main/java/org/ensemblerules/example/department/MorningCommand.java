package org.ensemblerules.example.department;

import java.io.IOException;
import java.io.InputStream;
import java.time.Clock;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeMap;
import java.util.concurrent.Callable;
import org.ensemblerules.effect.Destination;
import org.ensemblerules.effect.Doer;
import org.ensemblerules.example.department.report.ClearingText;
import org.ensemblerules.example.department.report.MorningText;
import org.ensemblerules.fleet.AwayEntry;
import org.ensemblerules.fleet.Capacity;
import org.ensemblerules.fleet.Clearing;
import org.ensemblerules.fleet.Figures;
import org.ensemblerules.fleet.Levelling;
import org.ensemblerules.fleet.Today;
import org.ensemblerules.fleet.Work;
import org.ensemblerules.issue.JudgedElement;
import org.ensemblerules.ruleset.RuleSet;
import org.ensemblerules.source.InvalidValueException;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** What goes where today, what is away, and what the next months bring. */
@Command(
    name = "morning",
    description = {
      "Tells on one screen what goes where today, what is away, and what the next months bring.",
      "With --list: all that goes to one place. With --by: what one person may clear today.",
      "A bad line is named on the standard error; the others are answered."
    })
final class MorningCommand implements Callable<Integer> {
  private final InputStream in;
  private final Clock clock;

  @Mixin private final GearOptions gear = new GearOptions();
  @Spec private CommandSpec spec = CommandSpec.create();

  @Option(
      names = "--top",
      paramLabel = "N",
      defaultValue = "1",
      description = "How many elements of each list to show. Default: ${DEFAULT-VALUE}.")
  private int top;

  @Option(
      names = "--list",
      paramLabel = "PLACE",
      description = "Shows all that goes there, as in WASH, and nothing else.")
  private Optional<Destination> list = Optional.empty();

  @Option(
      names = "--by",
      paramLabel = "NAME",
      description = "Shows what this person may clear today: somebody whom a record names.")
  private Optional<String> by = Optional.empty();

  @Option(
      names = "--per-day",
      paramLabel = "N",
      defaultValue = "8",
      description = "How many tasks can be done on a working day. Default: ${DEFAULT-VALUE}.")
  private int perDay;

  @Option(
      names = "--months",
      paramLabel = "N",
      defaultValue = "12",
      description = "How many months to look ahead. Default: ${DEFAULT-VALUE}.")
  private int months;

  MorningCommand(InputStream in, Clock clock) {
    this.in = in;
    this.clock = clock;
  }

  @Override
  public Integer call() throws IOException {
    LocalDate day = gear.day(clock);
    RuleSet rules = gear.rules(spec, day);
    LocalDate through = day.plusMonths(months).minusDays(1);
    Levelling levelling;
    try {
      levelling =
          new Levelling(
              new Capacity(
                  perDay,
                  OptionalInt.empty(),
                  Set.of(DayOfWeek.SATURDAY, DayOfWeek.SUNDAY),
                  Set.of()),
              day,
              through);
    } catch (InvalidValueException e) {
      throw new ParameterException(spec.commandLine(), e.getMessage(), e);
    }
    Answer<Today> today = Answer.of(Today.collector(rules));
    Answer<Figures> figures = Answer.of(Figures.collector(rules));
    List<AwayEntry> away = new ArrayList<>();
    List<Work> work = new ArrayList<>();
    List<JudgedElement> out = new ArrayList<>();
    Map<String, Doer> doers = new TreeMap<>();
    int code =
        gear.each(
            in,
            spec,
            day,
            List.of(),
            judged -> {
              today.accept(judged);
              figures.accept(judged);
              away.addAll(AwayEntry.of(rules, judged));
              work.addAll(Work.of(judged, through));
              if (by.isPresent()) {
                judged
                    .kept()
                    .assessment()
                    .history()
                    .doers()
                    .forEach(who -> doers.put(who.name(), who));
                judged.goesTo().ifPresent(goesTo -> out.add(judged));
              }
            });
    if (by.isPresent()) {
      spec.commandLine().getOut().print(clearing(rules, doers, out));
    } else if (list.isPresent()) {
      spec.commandLine().getOut().print(MorningText.list(today.get(), list.get()));
    } else {
      spec.commandLine()
          .getOut()
          .print(
              MorningText.of(
                  gear.name() + ", " + day,
                  figures.get(),
                  today.get(),
                  away.stream().sorted().toList(),
                  levelling.spread(work),
                  top));
    }
    return code;
  }

  private String clearing(RuleSet rules, Map<String, Doer> doers, List<JudgedElement> out) {
    Doer doer =
        Optional.ofNullable(doers.get(by.orElseThrow()))
            .orElseThrow(
                () ->
                    new ParameterException(
                        spec.commandLine(),
                        "--by: found "
                            + by.get()
                            + ", allowed: whom a record names, as "
                            + String.join("; ", doers.keySet().stream().limit(5).toList())));
    return ClearingText.of(
        doer, out, out.stream().map(judged -> Clearing.of(rules, doer, judged)).toList());
  }
}
