package org.ensemblerules.assess;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.ensemblerules.defect.Band;
import org.ensemblerules.defect.DefectRow;
import org.ensemblerules.defect.Demand;
import org.ensemblerules.defect.ExtentKind;
import org.ensemblerules.defect.Finding;
import org.ensemblerules.defect.Grade;
import org.ensemblerules.effect.Check;
import org.ensemblerules.effect.CleaningKind;
import org.ensemblerules.effect.Effect;
import org.ensemblerules.effect.HandlingDuty;
import org.ensemblerules.effect.Scope;
import org.ensemblerules.gear.Part;
import org.ensemblerules.gear.Site;
import org.ensemblerules.history.Event;
import org.ensemblerules.history.OpenFinding;
import org.ensemblerules.history.WorkEvent;
import org.ensemblerules.verdict.Reason;
import org.ensemblerules.verdict.ReasonKind;

/** What do the findings call for that are still open? */
final class FindingQuestion {
  private FindingQuestion() {}

  static void ask(CaseFile file, Consumer<Reason> reasons) {
    for (Finding found : file.findings()) {
      Finding finding = file.evidence().findings().asTried(found);
      for (Demand demand :
          Demand.of(finding, file.element(), file.tables().anatomy(), file.tables().defects())) {
        if (!demand.effect().keepsOut()) {
          reasons.accept(reason(file, finding, demand, List.of()));
        }
      }
      for (OpenFinding open : open(file, finding)) {
        if (open.missing().isEmpty()) {
          reasons.accept(reason(file, finding, open.demand(), open.attempts()));
        } else {
          reasons.accept(followUp(open));
          cleanedFirst(file, open).ifPresent(reasons);
        }
      }
    }
  }

  /** Only the checks are left to do, of which the first stands for all. */
  private static Reason followUp(OpenFinding open) {
    return new Reason(
        ReasonKind.FOLLOW_UP_MISSING,
        open.demand().row().map(DefectRow::cited),
        open.demand().site(),
        Optional.of(open.finding().id()),
        open.finding().text() + "; done, and still to be passed: " + joined(open.missing()),
        open.effect(),
        Set.of(),
        Set.copyOf(open.missing().subList(1, open.missing().size())),
        open.attempts());
  }

  /**
   * What was kept as it was found is as dirty as it was: it is cleaned before it is inspected, by
   * an ordinary wash unless what it met is cleaned off in its own way.
   */
  private static Optional<Reason> cleanedFirst(CaseFile file, OpenFinding open) {
    Optional<DefectRow> kept =
        open.demand().row().filter(row -> row.handling().contains(HandlingDuty.PRESERVE_AS_FOUND));
    return kept.flatMap(row -> open.done())
        .filter(done -> file.evidence().done().firstCleanedAfter(done).isEmpty())
        .filter(done -> RouteOrder.of(file).hasWash())
        .map(
            done ->
                new Reason(
                    ReasonKind.FOLLOW_UP_MISSING,
                    kept.map(DefectRow::cited),
                    Site.of(Part.WHOLE_ELEMENT),
                    Optional.empty(),
                    "kept as it was found, released "
                        + done
                        + " and not certainly cleaned since: "
                        + open.finding().text()
                        + file.evidence().order().howToTell(done, FindingQuestion::isWash),
                    new Effect.Clean(CleaningKind.ADVANCED, Scope.ELEMENT),
                    Set.of(),
                    Set.of(),
                    List.of()));
  }

  private static boolean isWash(Event event) {
    return event instanceof WorkEvent.Cleaned done && done.kind() == CleaningKind.ADVANCED;
  }

  private static String joined(List<Check> checks) {
    return checks.stream().map(Check::name).collect(Collectors.joining(", "));
  }

  static List<OpenFinding> open(CaseFile file, Finding finding) {
    return file.evidence().findings().of(finding);
  }

  private static Reason reason(
      CaseFile file, Finding finding, Demand demand, List<String> attempts) {
    ReasonKind kind =
        switch (demand.kind()) {
          case RULE -> ReasonKind.RULE;
          case MUST_MEASURE -> ReasonKind.MUST_MEASURE;
          case NO_RULE -> ReasonKind.NO_RULE;
          case NO_SUCH_PART -> ReasonKind.NO_SUCH_PART;
        };
    String seen =
        finding.text() + demand.mustMeasure().map(by -> told(file, finding, demand, by)).orElse("");
    return Reasons.of(
        kind,
        demand.row().map(row -> row),
        demand.site(),
        Optional.of(finding.id()),
        seen,
        demand.effect(),
        attempts);
  }

  /** By what an extent must be told, and what the grades mean that tell it. */
  private static String told(CaseFile file, Finding finding, Demand demand, ExtentKind by) {
    String must =
        demand.kind() == Demand.Kind.MUST_MEASURE
            ? "; its extent must be told by " + by
            : "; no row says what this size calls for, so the strictest short of retirement is"
                + " asked for until it is told by "
                + by;
    return must + grades(file, finding, demand.site());
  }

  private static String grades(CaseFile file, Finding finding, Site site) {
    return file
        .tables()
        .defects()
        .bands(file.element().kind(), file.element().use(), site, finding.defect())
        .stream()
        .flatMap(
            row ->
                row.band() instanceof Band.Grades graded
                    ? graded.grades().stream()
                    : Stream.<Grade>empty())
        .distinct()
        .sorted()
        .map(grade -> grade + " (" + grade.meaning() + ")")
        .collect(
            Collectors.collectingAndThen(
                Collectors.joining(", "), text -> text.isEmpty() ? "" : ": " + text));
  }
}
