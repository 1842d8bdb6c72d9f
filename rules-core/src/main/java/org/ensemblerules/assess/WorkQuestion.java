package org.ensemblerules.assess;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import org.ensemblerules.defect.Demand;
import org.ensemblerules.defect.Finding;
import org.ensemblerules.effect.Check;
import org.ensemblerules.effect.Effect;
import org.ensemblerules.effect.Scope;
import org.ensemblerules.gear.Part;
import org.ensemblerules.gear.Site;
import org.ensemblerules.verdict.Reason;
import org.ensemblerules.verdict.ReasonKind;

/** Was it inspected since what was found was settled by work on it? */
final class WorkQuestion {
  /** What is done with paper and measure leaves the element as it was. */
  private static final Set<Check> ON_PAPER =
      EnumSet.of(
          Check.READ_LABEL,
          Check.IDENTIFICATION,
          Check.RECORD_CORRECTION,
          Check.INCIDENT_RELEASE,
          Check.MEASURE_EXTENT);

  private static final Set<Check> INSPECTIONS =
      EnumSet.of(Check.ROUTINE_INSPECTION, Check.ADVANCED_INSPECTION, Check.LINER_INSPECTION);

  private WorkQuestion() {}

  static void ask(CaseFile file, Consumer<Reason> reasons) {
    for (Finding found : file.findings()) {
      Finding finding = file.evidence().findings().asTried(found);
      if (Demand.of(finding, file.element(), file.tables().anatomy(), file.tables().defects())
          .stream()
          .anyMatch(WorkQuestion::isWork)) {
        file.evidence()
            .findings()
            .settledUnseen(finding)
            .forEach(done -> reasons.accept(reason(finding, done)));
      }
    }
  }

  private static Reason reason(Finding finding, String done) {
    return Reasons.of(
        ReasonKind.WORKED_ON_SINCE_INSPECTION,
        Optional.empty(),
        Site.of(Part.WHOLE_ELEMENT),
        Optional.of(finding.id()),
        finding.text()
            + "; "
            + done
            + ", and no inspection that counts is recorded after it; one on the same day counts if"
            + " its occasion is AFTER_WORK",
        new Effect.Evaluate(Check.ROUTINE_INSPECTION, Scope.ELEMENT),
        List.of());
  }

  /** Whether what these reasons call for has an inspection follow, once it is done. */
  static boolean willFollow(List<Reason> reasons) {
    return reasons.stream()
        .anyMatch(
            reason ->
                isWork(reason.effect())
                    && reason.afterward().stream().noneMatch(INSPECTIONS::contains)
                    && (reason.finding().isPresent()
                        || !(reason.effect() instanceof Effect.Clean
                            || reason.effect() instanceof Effect.Evaluate)));
  }

  /** Damage that nobody measured was judged like the gravest that it may be. */
  private static boolean isWork(Demand demand) {
    return isWork(demand.effect()) || demand.kind() == Demand.Kind.MUST_MEASURE;
  }

  private static boolean isWork(Effect effect) {
    return effect.keepsOut()
        && !(effect instanceof Effect.Evaluate evaluate && ON_PAPER.contains(evaluate.check()));
  }
}
