package org.ensemblerules.example.department;

import java.io.IOException;
import java.io.InputStream;
import java.time.Clock;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import org.ensemblerules.DepartmentRules;
import org.ensemblerules.GearRules;
import org.ensemblerules.example.department.demo.DemoDepartment;
import org.ensemblerules.example.department.demo.DemoElement;
import org.ensemblerules.example.department.demo.DemoRoster;
import org.ensemblerules.gear.ElementId;
import org.ensemblerules.history.HolderSpan;
import org.ensemblerules.issue.JudgedElement;
import org.ensemblerules.issue.KeptElement;
import org.ensemblerules.issue.SafetyNotice;
import org.ensemblerules.issue.Whereabouts;
import org.ensemblerules.tables.JsonLines;
import org.ensemblerules.tables.ListsJson;
import org.ensemblerules.tables.message.KeptGear;
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
  @Mixin private final JsonOption json = new JsonOption();

  @Parameters(
      arity = "0..1",
      paramLabel = "FILE",
      description =
          "JSON Lines file of assessments, or - for the standard input; who has what is taken from"
              + " the records. Default: the invented department.")
  private Optional<String> file = Optional.empty();

  @Option(
      names = "--where",
      paramLabel = "FILE",
      description =
          "JSON Lines file of who has which element and where it is. What it does not have is taken"
              + " from the records.")
  private Optional<String> where = Optional.empty();

  @Option(
      names = "--as-of",
      paramLabel = "DATE",
      description = "Day asked about. Default: today for a file, 2026-11-25 otherwise.")
  private Optional<LocalDate> asOf = Optional.empty();

  /** The day asked about. */
  LocalDate day(Clock clock) {
    return asOf.orElseGet(() -> file.isPresent() ? LocalDate.now(clock) : DemoDepartment.AS_OF);
  }

  /** Whether the gear is that of the invented department. */
  boolean isDemo() {
    return file.isEmpty();
  }

  /** Whether the answer is for programs. */
  boolean isJson() {
    return json.isAsked();
  }

  /** How lines beside the gear are answered. */
  Answers answers(CommandSpec spec) {
    return new Answers(json, spec);
  }

  /** How the lists beside the gear are read. */
  KeptLists lists(InputStream in, CommandSpec spec) {
    return new KeptLists(in, spec, json);
  }

  /** The rules to judge by. */
  GearRules rules(CommandSpec spec, LocalDate day) throws IOException {
    return overlayOption.over(rulesOption.rules(spec), day);
  }

  /** What is asked of all the gear. */
  DepartmentRules department(CommandSpec spec, List<SafetyNotice> notices, LocalDate day)
      throws IOException {
    return rules(spec, day).department(notices, day);
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
      KeptLists lists,
      LocalDate day,
      List<SafetyNotice> notices,
      Consumer<JudgedElement> answer)
      throws IOException {
    DepartmentRules department = department(spec, notices, day);
    Map<ElementId, Whereabouts> kept = kept(lists);
    if (file.isEmpty()) {
      for (DemoElement element : DemoDepartment.elements(rulesOption.rules(spec))) {
        Assessment piece = element.assessment();
        ElementId id = piece.element().id();
        Whereabouts is = kept.getOrDefault(id, DemoRoster.of(id));
        answer.accept(department.judged(new KeptElement(piece, is)));
      }
      return lists.exitCode(ExitCodes.ALL_READ);
    }
    try (JsonLines<Assessment> lines =
        Input.open(file.get(), in, doersOption.assessments(rules(spec, day), spec))) {
      GoodLines<Assessment> good =
          new GoodLines<>(file.get(), lines, record -> record.element().id().value(), spec, json);
      good.forEachRemaining(
          record ->
              answer.accept(
                  department.judged(
                      new KeptElement(
                          record,
                          Optional.ofNullable(kept.get(record.element().id()))
                              .orElseGet(() -> recorded(record))))));
      doersOption.tellUnknown(spec);
      return lists.exitCode(good.bad() == 0 ? ExitCodes.ALL_READ : ExitCodes.BAD_LINES);
    }
  }

  /** Of what a list has in two places nobody knows where it is. */
  private Map<ElementId, Whereabouts> kept(KeptLists lists) throws IOException {
    Map<ElementId, Whereabouts> kept = new HashMap<>();
    if (where.isPresent()) {
      for (KeptGear entry : lists.good(where.get(), ListsJson.WHEREABOUTS)) {
        kept.merge(
            entry.element(),
            entry.where(),
            (one, other) -> one.equals(other) ? one : Whereabouts.unknown());
      }
    }
    return kept;
  }

  /** Whom the record has as its holder, if it has one and no more. */
  private static Whereabouts recorded(Assessment record) {
    List<String> holders =
        record.history().holders().stream()
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
