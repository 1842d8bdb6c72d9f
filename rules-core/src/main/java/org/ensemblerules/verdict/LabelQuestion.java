package org.ensemblerules.verdict;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.ensemblerules.effect.Check;
import org.ensemblerules.effect.Effect;
import org.ensemblerules.effect.Scope;
import org.ensemblerules.gear.LayerKind;
import org.ensemblerules.gear.Part;
import org.ensemblerules.gear.Site;

/** Is it known what the labels say? What they show to be wrong stands among the findings. */
final class LabelQuestion {
  private LabelQuestion() {}

  static void ask(CaseFile file, Consumer<Reason> reasons) {
    for (Optional<LayerKind> layer : file.labeled().layers()) {
      for (String field : file.labeled().unknownFields(layer)) {
        reasons.accept(
            new Reason(
                ReasonKind.LABEL_UNKNOWN,
                Optional.empty(),
                new Site(Part.LABEL, layer),
                Optional.empty(),
                layer.map(kind -> kind + ": ").orElse("") + field + " is not known",
                new Effect.Evaluate(
                    Check.IDENTIFICATION, layer.isPresent() ? Scope.LAYER : Scope.ELEMENT),
                List.of()));
      }
    }
  }
}
