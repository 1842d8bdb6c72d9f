package org.ensemblerules.issue;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.ensemblerules.gear.Element;
import org.ensemblerules.gear.ElementId;
import org.ensemblerules.gear.Label;
import org.ensemblerules.gear.LayerKind;
import org.ensemblerules.gear.Legibility;
import org.ensemblerules.gear.YesNoUnknown;
import org.ensemblerules.retirement.AgeAnswer;
import org.ensemblerules.ruleset.RuleSet;

/** Holds elements against an order, one by one. What a label does not say is a discrepancy. */
final class DeliveryCheck {
  private final RuleSet rules;
  private final Order order;
  private final Set<ElementId> taken;
  private final List<SafetyNotice> notices;
  private final LocalDate asOf;

  DeliveryCheck(
      RuleSet rules,
      Order order,
      Set<ElementId> taken,
      List<SafetyNotice> notices,
      LocalDate asOf) {
    this.rules = rules;
    this.order = order;
    this.taken = taken;
    this.notices = notices;
    this.asOf = asOf;
  }

  /** Holds one against it, and takes it off what is still open if it can be accepted. */
  DeliveryLine of(Element element, Map<String, Integer> open) {
    List<Objection> against = new ArrayList<>();
    if (element.kind() != order.kind() || element.use() != order.use()) {
      against.add(
          new Objection(
              ObjectionKind.OTHER_GEAR,
              element.kind()
                  + " for "
                  + element.use()
                  + "; ordered "
                  + order.kind()
                  + " for "
                  + order.use()));
    }
    if (taken.contains(element.id())) {
      against.add(
          new Objection(ObjectionKind.ID_TAKEN, "another element has the id " + element.id()));
    }
    List<Optional<LayerKind>> layers = rules.tables().anatomy().labels(element);
    if (layers.isEmpty()) {
      against.add(new Objection(ObjectionKind.NO_LABEL, "no label"));
    }
    for (Optional<LayerKind> layer : layers) {
      label(element, layer, against);
    }
    notices.forEach(
        notice -> {
          YesNoUnknown touched = notice.touches(element, rules.tables().anatomy().labels(element));
          if (touched != YesNoUnknown.NO) {
            against.add(new NoticeAnswer(notice, touched).objection());
          }
        });
    size(SizeTable.sizes(element), open, against);
    return new DeliveryLine(element.named(), against);
  }

  private void label(Element element, Optional<LayerKind> layer, List<Objection> against) {
    String of = layer.map(kind -> " of the " + kind).orElse("");
    Optional<Label> label =
        layer.isPresent() ? layer.map(element.layerLabels()::get) : element.label();
    if (label.isEmpty()) {
      against.add(new Objection(ObjectionKind.NO_LABEL, "no label" + of));
      return;
    }
    Label printed = label.get();
    if (printed.legibility() != Legibility.READABLE) {
      against.add(
          new Objection(
              ObjectionKind.LABEL_NOT_READABLE,
              "label" + of + " not shown to be readable in full"));
    }
    if (printed.certificationMark() != YesNoUnknown.YES) {
      against.add(
          new Objection(
              ObjectionKind.NOT_CERTIFIED,
              (printed.certificationMark() == YesNoUnknown.NO
                      ? "no certification mark"
                      : "certification mark not seen")
                  + of));
    }
    if (printed.identification().isEmpty()) {
      against.add(new Objection(ObjectionKind.NO_IDENTIFICATION, "no lot or serial number" + of));
    }
    order
        .claimedEdition()
        .filter(edition -> !printed.claimedEdition().equals(Optional.of(edition)))
        .ifPresent(
            edition ->
                against.add(
                    new Objection(
                        ObjectionKind.OTHER_EDITION,
                        "label"
                            + of
                            + " claims "
                            + printed.claimedEdition().orElse("no edition")
                            + "; ordered "
                            + edition)));
    order
        .model()
        .filter(model -> model.isOn(printed) != YesNoUnknown.YES)
        .ifPresent(
            model ->
                against.add(
                    new Objection(
                        ObjectionKind.OTHER_MODEL,
                        printed.manufacturer().orElse("manufacturer unknown")
                            + ", "
                            + printed.model().orElse("model unknown")
                            + of
                            + "; ordered "
                            + model)));
    age(element, layer, printed, of, against);
  }

  private void age(
      Element element,
      Optional<LayerKind> layer,
      Label printed,
      String of,
      List<Objection> against) {
    LocalDate until = asOf.plusMonths(order.leastMonths());
    if (!printed.manufactured().possiblyBy(asOf)) {
      against.add(
          new Objection(
              ObjectionKind.MADE_LATER,
              "made " + printed.manufactured() + of + ", after the day of delivery"));
    }
    for (AgeAnswer answer :
        rules
            .tables()
            .ageLimits()
            .answers(element.kind(), element.use(), layer, printed.manufactured())) {
      if (answer.keepsOut(until)) {
        against.add(
            new Objection(
                ObjectionKind.TOO_OLD,
                answer.text()
                    + of
                    + "; ordered to last "
                    + order.leastMonths()
                    + " months, to "
                    + until));
      }
    }
  }

  private void size(Set<String> sizes, Map<String, Integer> open, List<Objection> against) {
    if (sizes.size() != 1) {
      against.add(
          sizes.isEmpty()
              ? new Objection(ObjectionKind.SIZE_NOT_KNOWN, "size not known")
              : new Objection(
                  ObjectionKind.OTHER_SIZE, "layers of sizes " + String.join(", ", sizes)));
      return;
    }
    String size = sizes.iterator().next();
    if (!order.sizes().containsKey(size)) {
      against.add(
          new Objection(
              ObjectionKind.OTHER_SIZE,
              "size " + size + "; ordered " + String.join(", ", order.sizes().keySet())));
    } else if (against.isEmpty() && open.merge(size, -1, Integer::sum) < 0) {
      open.put(size, 0);
      against.add(
          new Objection(ObjectionKind.MORE_THAN_ORDERED, "more of size " + size + " than ordered"));
    }
  }
}
