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
import java.util.stream.Collectors;
import org.ensemblerules.DepartmentRules;
import org.ensemblerules.effect.Destination;
import org.ensemblerules.effect.Doer;
import org.ensemblerules.example.department.report.ClearingText;
import org.ensemblerules.example.department.report.MorningText;
import org.ensemblerules.fleet.AwayEntry;
import org.ensemblerules.fleet.Capacity;
import org.ensemblerules.fleet.Figures;
import org.ensemblerules.fleet.ToClear;
import org.ensemblerules.fleet.Today;
import org.ensemblerules.fleet.Work;
import org.ensemblerules.issue.SafetyNotice;
import org.ensemblerules.tables.FleetJson;
import org.ensemblerules.tables.ShippedWords;
import org.ensemblerules.tables.message.ClearedElement;
import org.ensemblerules.tables.message.ClearingList;
import org.ensemblerules.tables.message.Morning;
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
  @Mixin private final NoticesOption noticesOption = new NoticesOption();
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
    LocalDate through = day.plusMonths(months).minusDays(1);
    KeptLists lists = gear.lists(in, spec);
    Capacity capacity =
        lists.made(
            () ->
                new Capacity(
                    perDay,
                    OptionalInt.empty(),
                    Set.of(DayOfWeek.SATURDAY, DayOfWeek.SUNDAY),
                    Set.of()));
    List<SafetyNotice> notices = noticesOption.read(lists, false);
    DepartmentRules department = gear.department(spec, notices, day);
    lists.made(() -> department.spread(List.of(), capacity, through));
    Answer<Today> today = Answer.of(department.today());
    Answer<Figures> figures = Answer.of(department.figures());
    List<AwayEntry> away = new ArrayList<>();
    List<Work> work = new ArrayList<>();
    List<ToClear> out = new ArrayList<>();
    Map<String, Doer> doers = new TreeMap<>();
    int code =
        gear.each(
            in,
            spec,
            lists,
            day,
            notices,
            judged -> {
              today.accept(judged);
              figures.accept(judged);
              away.addAll(department.away(judged));
              work.addAll(department.work(judged, through));
              if (by.isPresent()) {
                judged
                    .kept()
                    .assessment()
                    .history()
                    .doers()
                    .forEach(who -> doers.put(who.name(), who));
                judged.goesTo().ifPresent(goesTo -> out.add(ToClear.of(judged)));
              }
            });
    spec.commandLine()
        .getOut()
        .print(
            by.isPresent()
                ? clearing(department, day, doers, out)
                : told(
                    figures.get(),
                    new Morning(
                        day,
                        listed(today.get()),
                        away.stream().sorted().toList(),
                        department.spread(work, capacity, through))));
    return code;
  }

  /** Only the one list, if one is asked for. */
  private Today listed(Today today) {
    return list.map(
            place ->
                new Today(
                    today.lists().entrySet().stream()
                        .filter(each -> each.getKey().destination() == place)
                        .collect(Collectors.toMap(Map.Entry::getKey, Map.Entry::getValue))))
        .orElse(today);
  }

  private String told(Figures figures, Morning morning) {
    if (gear.isJson()) {
      return FleetJson.write(morning, ShippedWords.english()) + "\n";
    }
    return list.isPresent()
        ? MorningText.list(morning.today())
        : MorningText.of(gear.name() + ", " + morning.asOf(), figures, morning, top);
  }

  private String clearing(
      DepartmentRules department, LocalDate day, Map<String, Doer> doers, List<ToClear> out) {
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
    ClearingList answer =
        new ClearingList(
            doer,
            day,
            out.stream()
                .map(
                    each ->
                        new ClearedElement(
                            each.element().named(),
                            each.whereabouts(),
                            department.clearing(doer, each)))
                .toList());
    return gear.isJson()
        ? FleetJson.write(answer, ShippedWords.english()) + "\n"
        : ClearingText.of(answer);
  }
}
