package org.ensemblerules.example.department;

import java.io.IOException;
import java.io.InputStream;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import org.ensemblerules.example.department.demo.DemoPolicies;
import org.ensemblerules.example.department.demo.DemoRoster;
import org.ensemblerules.example.department.report.NoticeText;
import org.ensemblerules.fleet.Readiness;
import org.ensemblerules.issue.JudgedElement;
import org.ensemblerules.issue.SafetyNotice;
import org.ensemblerules.issue.SetCheck;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** What a safety notice touches, and who is ready before and after it. */
@Command(
    name = "notice",
    description = {
      "Tells what a safety notice of the invented mail touches, certainly or possibly, and who is",
      "ready before and after it."
    })
final class NoticeCommand implements Callable<Integer> {
  private final InputStream in;
  private final Clock clock;

  @Mixin private final GearOptions gear = new GearOptions();
  @Spec private CommandSpec spec = CommandSpec.create();

  NoticeCommand(InputStream in, Clock clock) {
    this.in = in;
    this.clock = clock;
  }

  @Override
  public Integer call() throws IOException {
    LocalDate day = gear.day(clock);
    SafetyNotice notice = DemoPolicies.notice();
    List<JudgedElement> touched = new ArrayList<>();
    Answer<Readiness> before = ready(day);
    Answer<Readiness> after = ready(day);
    int code =
        gear.each(
            in,
            spec,
            day,
            List.of(notice),
            judged -> {
              after.accept(judged);
              before.accept(new JudgedElement(judged.kept(), judged.verdict(), List.of()));
              if (!judged.notices().isEmpty() && !judged.isGone()) {
                touched.add(judged);
              }
            });
    spec.commandLine().getOut().print(NoticeText.of(notice, touched, before.get(), after.get()));
    return code;
  }

  private static Answer<Readiness> ready(LocalDate day) {
    return Answer.of(
        Readiness.collector(
            DemoRoster.members(),
            new SetCheck(DemoPolicies.sets(), DemoPolicies.sizes(), DemoRoster.fittings(), day),
            DemoPolicies.sizes()));
  }
}
