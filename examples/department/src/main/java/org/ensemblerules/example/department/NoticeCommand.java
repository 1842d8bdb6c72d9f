package org.ensemblerules.example.department;

import java.io.IOException;
import java.io.InputStream;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import org.ensemblerules.DepartmentRules;
import org.ensemblerules.example.department.report.NoticeText;
import org.ensemblerules.fleet.Readiness;
import org.ensemblerules.issue.JudgedElement;
import org.ensemblerules.issue.NoticedElement;
import org.ensemblerules.issue.SafetyNotice;
import org.ensemblerules.tables.FleetJson;
import org.ensemblerules.tables.ShippedWords;
import org.ensemblerules.tables.message.NoticeEffect;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** What safety notices touch, and who is ready before and after them. */
@Command(
    name = "notice",
    description =
        "Tells what safety notices touch, certainly or possibly, and who is ready before and after"
            + " them.")
final class NoticeCommand implements Callable<Integer> {
  private final InputStream in;
  private final Clock clock;

  @Mixin private final GearOptions gear = new GearOptions();
  @Mixin private final MembersOption membersOption = new MembersOption();
  @Mixin private final NoticesOption noticesOption = new NoticesOption();
  @Spec private CommandSpec spec = CommandSpec.create();

  NoticeCommand(InputStream in, Clock clock) {
    this.in = in;
    this.clock = clock;
  }

  @Override
  public Integer call() throws IOException {
    LocalDate day = gear.day(clock);
    KeptLists lists = gear.lists(in, spec);
    MembersOption.Wearers wearers = membersOption.read(lists, gear.isDemo());
    List<SafetyNotice> notices = noticesOption.read(lists, gear.isDemo());
    DepartmentRules department = gear.department(spec, notices, day);
    List<NoticedElement> touched = new ArrayList<>();
    Answer<Readiness> before = lists.made(() -> Answer.of(wearers.readiness(department)));
    Answer<Readiness> after = lists.made(() -> Answer.of(wearers.readiness(department)));
    int code =
        gear.each(
            in,
            spec,
            lists,
            day,
            notices,
            judged -> {
              after.accept(judged);
              before.accept(new JudgedElement(judged.kept(), judged.verdict(), List.of()));
              department.touched(judged).ifPresent(touched::add);
            });
    NoticeEffect effect = new NoticeEffect(notices, touched, before.get(), after.get());
    spec.commandLine()
        .getOut()
        .print(
            gear.isJson()
                ? FleetJson.write(effect, ShippedWords.english()) + "\n"
                : NoticeText.of(effect));
    return code;
  }
}
