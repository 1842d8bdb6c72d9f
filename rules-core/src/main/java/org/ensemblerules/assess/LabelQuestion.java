package org.ensemblerules.assess;

import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.ensemblerules.effect.Check;
import org.ensemblerules.effect.Effect;
import org.ensemblerules.effect.Scope;
import org.ensemblerules.gear.LayerKind;
import org.ensemblerules.gear.Part;
import org.ensemblerules.gear.Site;
import org.ensemblerules.history.EndEvent;
import org.ensemblerules.history.LookEvent;
import org.ensemblerules.verdict.Reason;
import org.ensemblerules.verdict.ReasonKind;

/** Is it known what the labels say? What they show to be wrong stands among the findings. */
final class LabelQuestion {
  private static final List<String> SEEN_BY_READING = List.of("legibility", "certificationMark");

  private LabelQuestion() {}

  static void ask(CaseFile file, Consumer<Reason> reasons) {
    for (Optional<LayerKind> layer : file.labeled().layers()) {
      List<String> unknown = file.labeled().unknownFields(layer);
      if (unknown.isEmpty()) {
        continue;
      }
      if (!Collections.disjoint(unknown, SEEN_BY_READING) && isRead(file, layer)) {
        unknown = unknown.stream().filter(field -> !SEEN_BY_READING.contains(field)).toList();
      }
      for (String field : unknown) {
        reasons.accept(
            Reasons.of(
                ReasonKind.LABEL_UNKNOWN,
                Optional.empty(),
                new Site(Part.LABEL, layer),
                Optional.empty(),
                layer.map(kind -> kind + ": ").orElse("") + field + " is not known",
                new Effect.Evaluate(
                    Check.READ_LABEL, layer.isPresent() ? Scope.LAYER : Scope.ELEMENT),
                List.of()));
      }
    }
  }

  /**
   * Whether an inspection that counts read a label: then it says itself whether it can be read and
   * bears the mark. What else stands on it is known once it is written down.
   */
  private static boolean isRead(CaseFile file, Optional<LayerKind> layer) {
    Site site = new Site(Part.LABEL, layer);
    return file.evidence().counting(LookEvent.Inspected.class).stream()
        .filter(done -> isOfTheLayerInIt(file, done, layer))
        .flatMap(done -> file.evidence().judgment(done).stream())
        .flatMap(judged -> judged.standing().stream())
        .flatMap(standing -> standing.coverage().clear().stream())
        .anyMatch(row -> row.sites().contains(site));
  }

  /** What came into the place of a retired layer has another label than what was inspected. */
  private static boolean isOfTheLayerInIt(
      CaseFile file, LookEvent.Inspected done, Optional<LayerKind> layer) {
    return file.history().events(EndEvent.LayerRetired.class).stream()
        .filter(gone -> layer.equals(Optional.of(gone.layer())))
        .allMatch(gone -> done.when().certainlyAfter(gone.when()));
  }
}
