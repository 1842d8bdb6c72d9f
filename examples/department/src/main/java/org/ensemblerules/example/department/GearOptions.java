package org.ensemblerules.example.department;

import java.io.IOException;
import java.io.InputStream;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.ensemblerules.example.department.demo.DemoDepartment;
import org.ensemblerules.example.department.demo.DemoElement;
import org.ensemblerules.example.department.demo.DemoRoster;
import org.ensemblerules.issue.JudgedElement;
import org.ensemblerules.issue.KeptElement;
import org.ensemblerules.issue.SafetyNotice;
import org.ensemblerules.issue.Whereabouts;
import org.ensemblerules.record.HolderSpan;
import org.ensemblerules.record.Holders;
import org.ensemblerules.ruleset.RuleSet;
import org.ensemblerules.tables.JsonLines;
import org.ensemblerules.verdict.Assessment;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** The gear that a question about a department is asked of, judged one by one. */
final class GearOptions {
  @Mixin private final RulesOption rulesOption = new RulesOption();
  @Mixin private final OverlayOption overlayOption = new OverlayOption();
  @Mixin private final DoersOption doersOption = new DoersOption();

  @Parameters(
      arity = "0..1",
      paramLabel = "FILE",
      description = {
        "JSON Lines file of assessments, or - for the standard input; who has what is taken from",
        "the records. Default: the invented department."
      })
  private Optional<String> file = Optional.empty();

  @Option(
      names = "--as-of",
      paramLabel = "DATE",
      description = "Day asked about. Default: today for a file, 2026-11-25 otherwise.")
  private Optional<LocalDate> asOf = Optional.empty();

  /** The day asked about. */
  LocalDate day(Clock clock) {
    return asOf.orElseGet(() -> file.isPresent() ? LocalDate.now(clock) : DemoDepartment.AS_OF);
  }

  /** The rules to judge by. */
  RuleSet rules(CommandSpec spec, LocalDate day) throws IOException {
    return overlayOption.over(rulesOption.rules(spec), day);
  }

  /** What the answer is headed with. */
  String name() {
    return file.map(Input::name).orElse(DemoDepartment.NAME);
  }

  /**
   * Judges each element as it is read and hands it on.
   *
   * @return the exit code
   */
  int each(
      InputStream in,
      CommandSpec spec,
      LocalDate day,
      List<SafetyNotice> notices,
      Consumer<JudgedElement> answer)
      throws IOException {
    RuleSet rules = rules(spec, day);
    if (file.isEmpty()) {
      for (DemoElement element : DemoDepartment.elements(rulesOption.rules(spec))) {
        Assessment piece = element.assessment();
        KeptElement kept = new KeptElement(piece, DemoRoster.of(piece.element().id()));
        answer.accept(JudgedElement.of(rules, kept, notices, day));
      }
      return ExitCodes.ALL_READ;
    }
    try (JsonLines<Assessment> lines =
        Input.open(file.get(), in, doersOption.assessments(rules, spec))) {
      GoodLines<Assessment> good =
          new GoodLines<>(
              file.get(), lines, record -> record.element().id().value(), spec, new JsonOption());
      good.forEachRemaining(
          record ->
              answer.accept(
                  JudgedElement.of(
                      rules, new KeptElement(record, recorded(record)), notices, day)));
      doersOption.tellUnknown(spec);
      return good.bad() == 0 ? ExitCodes.ALL_READ : ExitCodes.BAD_LINES;
    }
  }

  /** Whom the record has as its holder, if it has one and no more. */
  private static Whereabouts recorded(Assessment record) {
    List<String> holders =
        Holders.of(record.history()).stream()
            .filter(span -> span.until().isEmpty())
            .map(HolderSpan::holder)
            .distinct()
            .toList();
    return new Whereabouts(
        holders.size() == 1 ? Optional.of(holders.get(0)) : Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty());
  }
}
