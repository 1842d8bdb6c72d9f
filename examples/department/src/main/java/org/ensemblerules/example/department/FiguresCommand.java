package org.ensemblerules.example.department;

import java.io.IOException;
import java.io.InputStream;
import java.math.BigDecimal;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.concurrent.Callable;
import org.ensemblerules.example.department.demo.DemoPolicies;
import org.ensemblerules.example.department.report.CareSum;
import org.ensemblerules.example.department.report.FiguresText;
import org.ensemblerules.fleet.CareSoFar;
import org.ensemblerules.fleet.Figures;
import org.ensemblerules.fleet.Prices;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** The numbers of a department. */
@Command(
    name = "figures",
    description = {
      "Counts: inspected in time, overdue, ages, findings by part and age, why gear is out; what",
      "washes and repairs cost beside new gear, as advice, at the invented department's prices.",
      "A bad line is named on the standard error; the others are answered."
    })
final class FiguresCommand implements Callable<Integer> {
  private final InputStream in;
  private final Clock clock;

  @Mixin private final GearOptions gear = new GearOptions();
  @Spec private CommandSpec spec = CommandSpec.create();

  FiguresCommand(InputStream in, Clock clock) {
    this.in = in;
    this.clock = clock;
  }

  @Override
  public Integer call() throws IOException {
    LocalDate day = gear.day(clock);
    Answer<Figures> figures = Answer.of(Figures.collector(gear.rules(spec, day)));
    CareSum care = new CareSum();
    Prices prices = DemoPolicies.prices(BigDecimal.ZERO);
    int code =
        gear.each(
            in,
            spec,
            day,
            List.of(),
            judged -> {
              figures.accept(judged);
              care.add(
                  CareSoFar.of(
                      judged, DemoPolicies.careCosts(), prices, DemoPolicies.costPolicy()));
            });
    spec.commandLine()
        .getOut()
        .print(FiguresText.of(gear.name() + ", " + day, figures.get(), care));
    return code;
  }
}
