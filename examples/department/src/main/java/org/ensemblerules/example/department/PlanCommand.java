package org.ensemblerules.example.department;

import java.io.IOException;
import java.io.InputStream;
import java.math.BigDecimal;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.concurrent.Callable;
import org.ensemblerules.DepartmentRules;
import org.ensemblerules.example.department.report.PlanText;
import org.ensemblerules.fleet.Budget;
import org.ensemblerules.fleet.Forecast;
import org.ensemblerules.fleet.Need;
import org.ensemblerules.fleet.Prices;
import org.ensemblerules.fleet.ReplacementPlan;
import org.ensemblerules.tables.FleetJson;
import org.ensemblerules.tables.message.PlannedYears;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** What leaves service over the years, and what replacing it costs. */
@Command(
    name = "plan",
    description = {
      "Forecasts what leaves service and plans its replacement under a yearly budget, the earliest"
          + " needed first.",
      "A bad line is named on the standard error; the others are answered."
    })
final class PlanCommand implements Callable<Integer> {
  private final InputStream in;
  private final Clock clock;

  @Mixin private final GearOptions gear = new GearOptions();
  @Mixin private final CostsOption costsOption = new CostsOption();
  @Spec private CommandSpec spec = CommandSpec.create();

  @Option(
      names = "--budget",
      paramLabel = "AMOUNT",
      defaultValue = "30000",
      description = "What may be spent in each year. Default: ${DEFAULT-VALUE}.")
  private BigDecimal perYear = BigDecimal.ZERO;

  @Option(
      names = "--growth",
      paramLabel = "PERCENT",
      defaultValue = "3",
      description = "By how much prices grow each year. Default: ${DEFAULT-VALUE}.")
  private BigDecimal growth = BigDecimal.ZERO;

  @Option(
      names = "--years",
      paramLabel = "N",
      defaultValue = "10",
      description = "How many years to plan. Default: ${DEFAULT-VALUE}.")
  private int years;

  @Option(names = "--smooth", description = "Buys ahead where that makes the dearest year cheaper.")
  private boolean smooth;

  PlanCommand(InputStream in, Clock clock) {
    this.in = in;
    this.clock = clock;
  }

  @Override
  public Integer call() throws IOException {
    LocalDate day = gear.day(clock);
    KeptLists lists = gear.lists(in, spec);
    Budget budget = lists.made(() -> new Budget(perYear, day.getYear() + 1, years));
    Prices prices = costsOption.read(lists, gear.isDemo(), growth).prices();
    DepartmentRules department = gear.department(spec, List.of(), day);
    Answer<Forecast> forecast = Answer.of(department.forecast(years));
    LocalDate last = LocalDate.of(budget.firstYear() + years - 1, 12, 31);
    Answer<List<Need>> needs = Answer.of(department.needs(prices, last));
    int code = gear.each(in, spec, lists, day, List.of(), forecast.andThen(needs));
    ReplacementPlan plan =
        department.plan(
            needs.get(),
            prices,
            budget,
            smooth ? ReplacementPlan.Pace.SMOOTHED : ReplacementPlan.Pace.WHEN_NEEDED);
    PlannedYears answer = new PlannedYears(forecast.get(), budget, plan);
    spec.commandLine()
        .getOut()
        .print(
            gear.isJson()
                ? FleetJson.write(answer) + "\n"
                : PlanText.of(gear.name() + ", " + day, forecast.get(), budget, plan));
    return code;
  }
}
