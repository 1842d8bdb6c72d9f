package org.ensemblerules.assess;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import org.ensemblerules.defect.FindingId;
import org.ensemblerules.effect.Check;
import org.ensemblerules.effect.Effect;
import org.ensemblerules.effect.Scope;
import org.ensemblerules.gear.Element;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.Label;
import org.ensemblerules.gear.LayerKind;
import org.ensemblerules.gear.Legibility;
import org.ensemblerules.gear.Part;
import org.ensemblerules.gear.Site;
import org.ensemblerules.gear.Use;
import org.ensemblerules.history.EndEvent;
import org.ensemblerules.verdict.Reason;
import org.ensemblerules.verdict.ReasonKind;

/**
 * Is a layer that was retired still in the element? It never returns, so what is in its place now
 * must be shown to be another: by identifications of both, where the label in it can be read in
 * full, or by somebody who may identify it. That it was made after the other left shows nothing by
 * itself, since an identification that was left out may be that of the other.
 */
final class RetiredLayerQuestion {
  private enum Same {
    YES,
    NO,
    NOT_SHOWN
  }

  private RetiredLayerQuestion() {}

  static void ask(CaseFile file, Consumer<Reason> reasons) {
    for (EndEvent.LayerRetired gone : file.history().events(EndEvent.LayerRetired.class)) {
      boolean later = !gone.when().date().possiblyBy(file.asOf());
      if (!exists(file, gone.layer())) {
        reasons.accept(
            reason(
                ReasonKind.CONTRADICTION,
                Site.of(Part.WHOLE_ELEMENT),
                "history "
                    + gone.name()
                    + ": found "
                    + gone.layer()
                    + ", allowed: a layer that such an element has",
                new Effect.Evaluate(Check.RECORD_CORRECTION, Scope.ELEMENT)));
      } else if (!later) {
        inItsPlace(file, gone, reasons);
      }
    }
  }

  private static boolean exists(CaseFile file, LayerKind layer) {
    ElementKind kind = file.element().kind();
    Use use = file.element().use();
    return file.tables().anatomy().of(kind, use).stream()
        .anyMatch(row -> row.site().layer().equals(Optional.of(layer)));
  }

  private static void inItsPlace(
      CaseFile file, EndEvent.LayerRetired gone, Consumer<Reason> reasons) {
    boolean placed = false;
    for (Map.Entry<LayerKind, Label> each : file.element().layerLabels().entrySet()) {
      LayerKind place = each.getKey();
      if (!mayBe(file.element(), gone.layer(), place)) {
        continue;
      }
      placed = true;
      Same same = same(gone, each.getValue());
      if (same == Same.YES) {
        reasons.accept(
            reason(
                ReasonKind.LEFT_SERVICE,
                Site.of(Part.WHOLE_ELEMENT, place),
                text(gone) + "; its identification is that of the one in it now",
                new Effect.Retire(Scope.LAYER)));
      } else if (same == Same.NOT_SHOWN) {
        notShown(file, gone, place, Optional.of(each.getValue()), reasons);
      }
    }
    // A garment is one without its winter liner as well.
    if (!placed && gone.layer() != LayerKind.WINTER_LINER) {
      notShown(file, gone, gone.layer(), Optional.empty(), reasons);
    }
  }

  /** Whether what was retired as one layer can be what is labeled as another now. */
  private static boolean mayBe(Element element, LayerKind layer, LayerKind labeled) {
    return element.labeledLayer(layer).equals(Optional.of(labeled))
        || labeled.joinedIn().equals(Optional.of(layer));
  }

  private static Same same(EndEvent.LayerRetired gone, Label inItsPlace) {
    Optional<String> one = gone.identification().flatMap(RetiredLayerQuestion::bare);
    Optional<String> two = inItsPlace.identification().flatMap(RetiredLayerQuestion::bare);
    Optional<LocalDate> made = inItsPlace.manufactured().earliest();
    Optional<LocalDate> left = gone.when().date().latest();
    boolean told = one.isPresent() && two.isPresent();
    boolean alike = told && one.equals(two);
    boolean madeSince = made.isPresent() && left.isPresent() && made.get().isAfter(left.get());
    if (alike && !madeSince) {
      return Same.YES;
    }
    // A label that cannot be read in full may say something else than it seems to.
    boolean readable = inItsPlace.legibility() == Legibility.READABLE;
    return readable && told && !alike ? Same.NO : Same.NOT_SHOWN;
  }

  /** Hyphens, spaces and case make no other layer; without letters and digits nothing is said. */
  private static Optional<String> bare(String identification) {
    StringBuilder bare = new StringBuilder();
    identification
        .codePoints()
        .filter(Character::isLetterOrDigit)
        .map(Character::toUpperCase)
        .forEach(bare::appendCodePoint);
    return Optional.of(bare.toString()).filter(text -> !text.isEmpty());
  }

  /** Whoever identifies it names what was said of both, so that he identified no other. */
  private static void notShown(
      CaseFile file,
      EndEvent.LayerRetired gone,
      LayerKind place,
      Optional<Label> inItsPlace,
      Consumer<Reason> reasons) {
    FindingId id =
        new FindingId(
            FindingId.OF_LABELS
                + Site.of(Part.LABEL, place)
                + ":RETIRED:"
                + ElementLabels.token(text(gone) + "; " + ElementLabels.says(inItsPlace)));
    if (!file.evidence().done().passedAfter(Check.IDENTIFICATION, id, gone.when())) {
      reasons.accept(
          reason(
              ReasonKind.LABEL_UNKNOWN,
              Site.of(Part.LABEL, place),
              text(gone)
                  + "; it is not shown that the one in it now is another: read the identification"
                  + " of both, or pass "
                  + Check.IDENTIFICATION
                  + " for "
                  + id,
              new Effect.Evaluate(Check.IDENTIFICATION, Scope.LAYER)));
    }
  }

  private static String text(EndEvent.LayerRetired gone) {
    return gone.layer()
        + gone.identification().map(id -> " " + id).orElse("")
        + " retired: "
        + gone.why()
        + ", "
        + gone.when();
  }

  private static Reason reason(ReasonKind kind, Site site, String seen, Effect effect) {
    return Reasons.of(kind, Optional.empty(), site, Optional.empty(), seen, effect, List.of());
  }
}
