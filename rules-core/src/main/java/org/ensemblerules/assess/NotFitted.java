package org.ensemblerules.assess;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.ensemblerules.defect.DefectKind;
import org.ensemblerules.defect.Extent;
import org.ensemblerules.defect.Finding;
import org.ensemblerules.defect.FindingId;
import org.ensemblerules.effect.Check;
import org.ensemblerules.effect.Effect;
import org.ensemblerules.effect.Scope;
import org.ensemblerules.gear.AnatomyRow;
import org.ensemblerules.gear.Element;
import org.ensemblerules.gear.Label;
import org.ensemblerules.gear.LayerKind;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.gear.Part;
import org.ensemblerules.gear.Presence;
import org.ensemblerules.gear.RequiredSince;
import org.ensemblerules.gear.Site;
import org.ensemblerules.history.History;
import org.ensemblerules.history.LookEvent;
import org.ensemblerules.history.Moment;
import org.ensemblerules.inspection.Inspection;
import org.ensemblerules.inspection.Outcome;
import org.ensemblerules.ruleset.Tables;
import org.ensemblerules.verdict.Reason;
import org.ensemblerules.verdict.ReasonKind;

/**
 * Parts that an inspection, or what describes the element, says are not fitted, though every such
 * element made to the edition that the label claims has them. What the label does not show to be
 * older is held to have them.
 */
final class NotFitted {
  private NotFitted() {}

  /** Such a part is found missing; the last inspection that says so stands for those before it. */
  static List<Finding> findings(Element element, History history, Tables tables) {
    if (element.notFitted().isEmpty() && !isAnyNotFitted(history)) {
      return List.of();
    }
    List<Finding> findings = new ArrayList<>();
    for (AnatomyRow part : tables.anatomy().of(element.kind(), element.use())) {
      if (lacking(part, element)) {
        lastWithout(part.site(), element, history, tables).ifPresent(findings::add);
        if (element.isNotFitted(part.site())) {
          findings.add(missing(part.site(), MarkedDate.unknown()));
        }
      }
    }
    return findings;
  }

  private static boolean isAnyNotFitted(History history) {
    for (LookEvent.Inspected event : history.events(LookEvent.Inspected.class)) {
      if (event.inspection().saysOf(Outcome.NOT_FITTED)) {
        return true;
      }
    }
    return false;
  }

  private static Finding missing(Site site, MarkedDate seen) {
    return new Finding(
        new FindingId("not-fitted:" + seen + ":" + site),
        site,
        "",
        DefectKind.MISSING,
        new Extent.NotMeasured(),
        seen);
  }

  private static boolean lacking(AnatomyRow part, Element element) {
    return part.requiredSince().isPresent()
        && !part.requiredSince().get().isAfter(claimed(element, part.site()));
  }

  private static Optional<Finding> lastWithout(
      Site site, Element element, History history, Tables tables) {
    return history.events(LookEvent.Inspected.class).stream()
        .filter(event -> saysNotFitted(event.inspection(), site, element, tables))
        .map(LookEvent.Inspected::when)
        .max(Moment.LAST_CERTAIN)
        .map(when -> missing(site, when.date()));
  }

  private static boolean saysNotFitted(
      Inspection inspection, Site site, Element element, Tables tables) {
    return inspection.saysOf(Outcome.NOT_FITTED)
        && tables.criteria().required(inspection.kind(), element.kind(), element.use()).stream()
            .filter(row -> row.sites().contains(site))
            .anyMatch(row -> inspection.outcomes(row.key()).contains(Outcome.NOT_FITTED));
  }

  /** Of what the label does not say for certain, the smallest step is to read the label. */
  static void ask(CaseFile file, Consumer<Reason> reasons) {
    for (Site site : file.element().notFitted()) {
      cannotLack(file, site).ifPresent(why -> reasons.accept(contradiction(site, why)));
    }
    for (Finding finding : file.notFitted()) {
      Optional<RequiredSince> since =
          file.tables()
              .anatomy()
              .at(file.element().kind(), file.element().use(), finding.site())
              .flatMap(AnatomyRow::requiredSince)
              .filter(each -> !each.isMetBy(claimed(file.element(), finding.site())))
              .filter(each -> !FindingQuestion.open(file, finding).isEmpty());
      since.ifPresent(each -> reasons.accept(unclear(file.element(), finding.site(), each)));
    }
  }

  /** Why an element cannot be said to lack a part. */
  private static Optional<String> cannotLack(CaseFile file, Site site) {
    Element element = file.element();
    Element alone =
        Element.builder(element.id(), element.kind(), element.use()).notFitted(site).build();
    List<AnatomyRow> parts =
        file.tables().anatomy().of(element.kind(), element.use()).stream()
            .filter(part -> alone.isNotFitted(part.site()))
            .toList();
    if (parts.isEmpty()) {
      return Optional.of("which no " + element.kind() + " has");
    }
    return parts.stream().anyMatch(part -> part.presence() == Presence.REQUIRED)
        ? Optional.of("which every " + element.kind() + " has")
        : Optional.empty();
  }

  private static Reason contradiction(Site site, String why) {
    return Reasons.of(
        ReasonKind.CONTRADICTION,
        Optional.empty(),
        site,
        Optional.empty(),
        "said to be not fitted: " + site + ", " + why,
        new Effect.Evaluate(Check.RECORD_CORRECTION, Scope.ELEMENT),
        List.of());
  }

  private static Reason unclear(Element element, Site site, RequiredSince since) {
    Optional<LayerKind> layer = labeled(element, site);
    return Reasons.of(
        ReasonKind.LABEL_UNKNOWN,
        Optional.empty(),
        new Site(Part.LABEL, layer),
        Optional.empty(),
        layer.map(kind -> kind + ": ").orElse("")
            + "claimedEdition does not say whether it is older than "
            + since
            + ", which has every "
            + element.kind()
            + " carry a "
            + site,
        new Effect.Evaluate(Check.READ_LABEL, layer.isPresent() ? Scope.LAYER : Scope.ELEMENT),
        List.of());
  }

  private static Optional<String> claimed(Element element, Site site) {
    Optional<LayerKind> layer = labeled(element, site);
    Optional<Label> label =
        layer.isPresent() ? layer.map(element.layerLabels()::get) : element.label();
    return label.flatMap(Label::claimedEdition);
  }

  /** The layer whose label speaks for a part: its own, else the shell of what has layers. */
  private static Optional<LayerKind> labeled(Element element, Site site) {
    return site.layer()
        .flatMap(element::labeledLayer)
        .or(
            () ->
                element.layerLabels().containsKey(LayerKind.OUTER_SHELL)
                    ? Optional.of(LayerKind.OUTER_SHELL)
                    : Optional.empty());
  }
}
