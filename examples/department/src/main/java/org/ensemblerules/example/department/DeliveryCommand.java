package org.ensemblerules.example.department;

import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.time.Clock;
import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.function.Function;
import org.ensemblerules.DepartmentRules;
import org.ensemblerules.example.department.demo.DemoDepartment;
import org.ensemblerules.example.department.demo.DemoPolicies;
import org.ensemblerules.example.department.report.DeliveryText;
import org.ensemblerules.gear.ElementId;
import org.ensemblerules.issue.Delivery;
import org.ensemblerules.issue.SafetyNotice;
import org.ensemblerules.tables.FleetJson;
import org.ensemblerules.tables.ListsJson;
import org.ensemblerules.tables.ShippedWords;
import org.ensemblerules.tables.message.DeliveredOrder;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Whether a delivery is what was ordered. */
@Command(
    name = "delivery",
    description = {
      "Holds deliveries against their orders: what can be accepted, and what is still to come.",
      "A bad line is named on the standard error; the others are answered."
    })
final class DeliveryCommand implements Callable<Integer> {
  private final InputStream in;
  private final Clock clock;

  @Mixin private final GearOptions gear = new GearOptions();
  @Mixin private final NoticesOption noticesOption = new NoticesOption();
  @Spec private CommandSpec spec = CommandSpec.create();

  @Option(
      names = "--orders",
      paramLabel = "FILE",
      description =
          "JSON Lines file of orders with what came for each. Default: that of the invented"
              + " department.")
  private Optional<String> orders = Optional.empty();

  DeliveryCommand(InputStream in, Clock clock) {
    this.in = in;
    this.clock = clock;
  }

  @Override
  public Integer call() throws IOException {
    LocalDate day = gear.day(clock);
    KeptLists lists = gear.lists(in, spec);
    List<SafetyNotice> notices = noticesOption.read(lists, gear.isDemo());
    Set<ElementId> known = new HashSet<>();
    int code =
        gear.each(in, spec, lists, day, List.of(), judged -> known.add(judged.element().id()));
    DepartmentRules department = gear.department(spec, notices, day);
    Function<DeliveredOrder, Answers.Answer> answer =
        given -> {
          Delivery delivery = department.delivery(given.order(), given.delivered(), known);
          // What came for one order cannot come for another.
          given.delivered().forEach(element -> known.add(element.id()));
          return Answers.Answer.of(
              given.order().id(),
              gear.isJson()
                  ? FleetJson.write(delivery, ShippedWords.english())
                  : DeliveryText.of(delivery));
        };
    PrintWriter out = spec.commandLine().getOut();
    Answers answers = gear.answers(spec);
    Answers.Writing writing = text -> out.print(gear.isJson() ? text + "\n" : text);
    if (orders.isPresent()) {
      answers.each(List.of(orders.get()), in, ListsJson.ORDERS, answer, writing);
    } else if (gear.isDemo()) {
      Answers.Answer told = answer.apply(DemoPolicies.delivery());
      writing.write(answers.written(DemoDepartment.NAME, 1, told));
    } else {
      throw new ParameterException(
          spec.commandLine(), "--orders: found none, allowed: a file of orders and what came");
    }
    return Math.max(code, answers.exitCode());
  }
}
