package org.ensemblerules.example.department;

import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.ensemblerules.DepartmentRules;
import org.ensemblerules.example.department.report.ReadyText;
import org.ensemblerules.fleet.Readiness;
import org.ensemblerules.fleet.ReadyMember;
import org.ensemblerules.issue.SafetyNotice;
import org.ensemblerules.tables.FleetJson;
import org.ensemblerules.tables.ShippedWords;
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
      "With --member: that member's set."
    })
final class ReadyCommand implements Callable<Integer> {
  private final InputStream in;
  private final Clock clock;

  @Mixin private final GearOptions gear = new GearOptions();
  @Mixin private final MembersOption membersOption = new MembersOption();
  @Mixin private final NoticesOption noticesOption = new NoticesOption();
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
    KeptLists lists = gear.lists(in, spec);
    MembersOption.Wearers wearers = membersOption.read(lists, gear.isDemo());
    List<SafetyNotice> notices = noticesOption.read(lists, false);
    DepartmentRules department = gear.department(spec, notices, day);
    Answer<Readiness> answer = lists.made(() -> Answer.of(wearers.readiness(department)));
    int code = gear.each(in, spec, lists, day, notices, answer);
    Readiness ready = answer.get();
    PrintWriter out = spec.commandLine().getOut();
    if (member.isEmpty()) {
      out.print(
          gear.isJson()
              ? FleetJson.write(ready, ShippedWords.english()) + "\n"
              : ReadyText.of(gear.name() + ", " + day, ready, top));
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
    if (gear.isJson()) {
      Readiness its = new Readiness(ready.counts(), sets, ready.strangers(), ready.repeated());
      out.print(FleetJson.write(its, ShippedWords.english()) + "\n");
    } else {
      sets.forEach(set -> out.print(ReadyText.of(set)));
    }
    return code;
  }
}
