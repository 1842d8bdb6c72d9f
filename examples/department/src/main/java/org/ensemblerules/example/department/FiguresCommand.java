package org.ensemblerules.example.department;

import java.io.IOException;
import java.io.InputStream;
import java.math.BigDecimal;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.concurrent.Callable;
import org.ensemblerules.DepartmentRules;
import org.ensemblerules.example.department.report.FiguresText;
import org.ensemblerules.fleet.Figures;
import org.ensemblerules.tables.FleetJson;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** The numbers of a department. */
@Command(
    name = "figures",
    description = {
      "Counts: inspected in time, overdue, ages, findings by part and age, why gear is out; what"
          + " washes and repairs cost beside new gear, as advice.",
      "A bad line is named on the standard error; the others are answered."
    })
final class FiguresCommand implements Callable<Integer> {
  private final InputStream in;
  private final Clock clock;

  @Mixin private final GearOptions gear = new GearOptions();
  @Mixin private final CostsOption costsOption = new CostsOption();
  @Spec private CommandSpec spec = CommandSpec.create();

  FiguresCommand(InputStream in, Clock clock) {
    this.in = in;
    this.clock = clock;
  }

  @Override
  public Integer call() throws IOException {
    LocalDate day = gear.day(clock);
    DepartmentRules department = gear.department(spec, List.of(), day);
    Answer<Figures> figures = Answer.of(department.figures());
    KeptLists lists = gear.lists(in, spec);
    CareSum care = new CareSum(department, costsOption.read(lists, gear.isDemo(), BigDecimal.ZERO));
    int code =
        gear.each(
            in,
            spec,
            lists,
            day,
            List.of(),
            judged -> {
              figures.accept(judged);
              care.add(judged);
            });
    spec.commandLine()
        .getOut()
        .print(
            gear.isJson()
                ? FleetJson.write(day, figures.get(), care.sum()) + "\n"
                : FiguresText.of(gear.name() + ", " + day, figures.get(), care.sum()));
    return code;
  }
}
