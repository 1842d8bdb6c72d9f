package org.ensemblerules.example.department;

import java.io.IOException;
import java.io.InputStream;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.ensemblerules.example.department.demo.DemoPolicies;
import org.ensemblerules.example.department.demo.DemoRoster;
import org.ensemblerules.example.department.report.ReadyText;
import org.ensemblerules.fleet.Readiness;
import org.ensemblerules.fleet.ReadyMember;
import org.ensemblerules.issue.SetCheck;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Who is ready, and what is missing to whom. */
@Command(
    name = "ready",
    description = {
      "Tells who is ready: by station and kind, the members without a usable set, the spares that"
          + " fit.",
      "With --member: that member's set. The members, sizes and sets are those of the invented"
          + " department."
    })
final class ReadyCommand implements Callable<Integer> {
  private final InputStream in;
  private final Clock clock;

  @Mixin private final GearOptions gear = new GearOptions();
  @Spec private CommandSpec spec = CommandSpec.create();

  @Option(
      names = "--member",
      paramLabel = "NAME",
      description = "Shows the set of this member, as in \"A. Sample\".")
  private Optional<String> member = Optional.empty();

  @Option(
      names = "--top",
      paramLabel = "N",
      defaultValue = "12",
      description = "How many members to show. Default: ${DEFAULT-VALUE}.")
  private int top;

  ReadyCommand(InputStream in, Clock clock) {
    this.in = in;
    this.clock = clock;
  }

  @Override
  public Integer call() throws IOException {
    LocalDate day = gear.day(clock);
    SetCheck check =
        new SetCheck(DemoPolicies.sets(), DemoPolicies.sizes(), DemoRoster.fittings(), day);
    Answer<Readiness> answer =
        Answer.of(Readiness.collector(DemoRoster.members(), check, DemoPolicies.sizes()));
    int code = gear.each(in, spec, day, List.of(), answer);
    Readiness ready = answer.get();
    if (member.isEmpty()) {
      spec.commandLine().getOut().print(ReadyText.of(gear.name() + ", " + day, ready, top));
      return code;
    }
    List<ReadyMember> sets =
        ready.members().stream()
            .filter(each -> each.set().member().name().equals(member.get()))
            .toList();
    if (sets.isEmpty()) {
      throw new ParameterException(
          spec.commandLine(),
          "--member: found " + member.get() + ", allowed: a member, as in \"A. Sample\"");
    }
    sets.forEach(set -> spec.commandLine().getOut().print(ReadyText.of(set)));
    return code;
  }
}
