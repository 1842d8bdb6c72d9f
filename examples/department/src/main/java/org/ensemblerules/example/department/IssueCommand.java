package org.ensemblerules.example.department;

import java.io.IOException;
import java.io.InputStream;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import org.ensemblerules.DepartmentRules;
import org.ensemblerules.example.department.report.IssueText;
import org.ensemblerules.issue.IssueAnswer;
import org.ensemblerules.issue.Member;
import org.ensemblerules.issue.SafetyNotice;
import org.ensemblerules.tables.FleetJson;
import org.ensemblerules.tables.ShippedWords;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Whether an element may be issued to a member. */
@Command(
    name = "issue",
    description = "Tells whether an element may be issued to a member, and what speaks against it.")
final class IssueCommand implements Callable<Integer> {
  private final InputStream in;
  private final Clock clock;

  @Mixin private final GearOptions gear = new GearOptions();
  @Mixin private final MembersOption membersOption = new MembersOption();
  @Mixin private final NoticesOption noticesOption = new NoticesOption();
  @Spec private CommandSpec spec = CommandSpec.create();

  @Option(
      names = "--element",
      required = true,
      paramLabel = "ID",
      description = "The element, as in 10-01-COAT.")
  private String element = "";

  @Option(
      names = "--to",
      required = true,
      paramLabel = "NAME",
      description = "The member, as in \"A. Sample\".")
  private String to = "";

  IssueCommand(InputStream in, Clock clock) {
    this.in = in;
    this.clock = clock;
  }

  @Override
  public Integer call() throws IOException {
    LocalDate day = gear.day(clock);
    KeptLists lists = gear.lists(in, spec);
    MembersOption.Wearers wearers = membersOption.read(lists, gear.isDemo());
    Member member =
        wearers.members().stream()
            .filter(each -> each.name().equals(to))
            .findFirst()
            .orElseThrow(() -> misused("--to", to, "a member, as in \"A. Sample\""));
    List<SafetyNotice> notices = noticesOption.read(lists, false);
    DepartmentRules department = gear.department(spec, notices, day);
    List<IssueAnswer> answers = new ArrayList<>();
    int code =
        gear.each(
            in,
            spec,
            lists,
            day,
            notices,
            judged -> {
              if (judged.element().id().value().equals(element)) {
                answers.add(department.issue(judged, member, wearers.sizes()));
              }
            });
    if (answers.isEmpty()) {
      throw misused("--element", element, "the name of an element, as in 10-01-COAT");
    }
    answers.forEach(
        answer ->
            spec.commandLine()
                .getOut()
                .print(
                    gear.isJson()
                        ? FleetJson.write(answer, ShippedWords.english()) + "\n"
                        : IssueText.of(answer)));
    return code;
  }

  private ParameterException misused(String option, String found, String allowed) {
    return new ParameterException(
        spec.commandLine(), option + ": found " + found + ", allowed: " + allowed);
  }
}
