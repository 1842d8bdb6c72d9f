package org.ensemblerules.assess;

import com.google.common.collect.ImmutableList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.ensemblerules.effect.Check;
import org.ensemblerules.effect.Effect;
import org.ensemblerules.effect.Scope;
import org.ensemblerules.gear.Element;
import org.ensemblerules.gear.Label;
import org.ensemblerules.gear.LayerKind;
import org.ensemblerules.gear.Legibility;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.gear.Part;
import org.ensemblerules.gear.Site;
import org.ensemblerules.retirement.AgeAnswer;
import org.ensemblerules.source.Row;
import org.ensemblerules.verdict.LayerAge;
import org.ensemblerules.verdict.Reason;
import org.ensemblerules.verdict.ReasonKind;

/** Is the element, or one of its layers, too old, or not shown to be young enough? */
final class AgeQuestion {
  private AgeQuestion() {}

  static List<LayerAge> ages(CaseFile file) {
    Element element = file.element();
    ImmutableList.Builder<LayerAge> ages = ImmutableList.builder();
    for (Optional<LayerKind> layer : file.labeled().layers()) {
      MarkedDate made =
          file.labeled().label(layer).map(Label::manufactured).orElse(MarkedDate.unknown());
      for (AgeAnswer answer :
          file.tables().ageLimits().answers(element.kind(), element.use(), layer, made)) {
        ages.add(new LayerAge(layer, made, answer));
      }
    }
    return ages.build();
  }

  static void ask(CaseFile file, Consumer<Reason> reasons) {
    for (LayerAge age : file.ages()) {
      if (age.answer().keepsOut(file.asOf())) {
        reasons.accept(reason(file, age));
      }
    }
  }

  /** Who can say when it was made: whoever reads the label, unless it is known to be no help. */
  static Check dated(CaseFile file, Optional<LayerKind> layer) {
    Legibility legibility =
        file.labeled().label(layer).map(Label::legibility).orElse(Legibility.UNKNOWN);
    return switch (legibility) {
      case READABLE, UNKNOWN -> Check.READ_LABEL;
      case PARTLY_READABLE, UNREADABLE, MISSING -> Check.IDENTIFICATION;
    };
  }

  private static Reason reason(CaseFile file, LayerAge age) {
    Scope scope = age.layer().isPresent() ? Scope.LAYER : Scope.ELEMENT;
    AgeAnswer answer = age.answer();
    boolean reached = answer instanceof AgeAnswer.LeavesOn;
    boolean dateMissing = answer instanceof AgeAnswer.DateUnknown;
    Effect effect =
        reached
            ? new Effect.Retire(scope)
            : new Effect.Evaluate(
                dateMissing ? dated(file, age.layer()) : Check.EXPERT_EVALUATION, scope);
    return Reasons.of(
        reached ? ReasonKind.AGE_REACHED : ReasonKind.AGE_UNKNOWN,
        row(answer),
        new Site(Part.WHOLE_ELEMENT, age.layer()),
        Optional.empty(),
        age.layer().map(kind -> kind + ": ").orElse("")
            + "made "
            + age.manufactured()
            + "; "
            + answer.text(),
        effect,
        List.of());
  }

  static Optional<Row> row(AgeAnswer answer) {
    if (answer instanceof AgeAnswer.LeavesOn leaves) {
      return Optional.of(leaves.row());
    }
    if (answer instanceof AgeAnswer.DateUnknown unknown) {
      return Optional.of(unknown.row());
    }
    if (answer instanceof AgeAnswer.LimitNotSeen notSeen) {
      return Optional.of(notSeen.row());
    }
    return answer instanceof AgeAnswer.NoLimitSet none ? Optional.of(none.row()) : Optional.empty();
  }
}
