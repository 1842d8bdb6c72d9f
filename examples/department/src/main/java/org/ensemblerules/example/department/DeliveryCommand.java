package org.ensemblerules.example.department;

import java.io.IOException;
import java.io.InputStream;
import java.time.Clock;
import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.concurrent.Callable;
import org.ensemblerules.example.department.demo.DemoPolicies;
import org.ensemblerules.example.department.report.DeliveryText;
import org.ensemblerules.gear.ElementId;
import org.ensemblerules.issue.Delivery;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** Whether a delivery is what was ordered. */
@Command(
    name = "delivery",
    description = "Holds a delivery of the invented department against its order.")
final class DeliveryCommand implements Callable<Integer> {
  private final InputStream in;
  private final Clock clock;

  @Mixin private final GearOptions gear = new GearOptions();
  @Spec private CommandSpec spec = CommandSpec.create();

  DeliveryCommand(InputStream in, Clock clock) {
    this.in = in;
    this.clock = clock;
  }

  @Override
  public Integer call() throws IOException {
    LocalDate day = gear.day(clock);
    Set<ElementId> known = new HashSet<>();
    int code = gear.each(in, spec, day, List.of(), judged -> known.add(judged.element().id()));
    spec.commandLine()
        .getOut()
        .print(
            DeliveryText.of(
                Delivery.of(
                    gear.rules(spec, day),
                    DemoPolicies.order(),
                    DemoPolicies.delivered(),
                    known,
                    List.of(DemoPolicies.notice()),
                    day)));
    return code;
  }
}
