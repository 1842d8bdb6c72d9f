package org.ensemblerules.example.department.demo;

import java.time.YearMonth;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.ensemblerules.gear.ElementBuilder;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.Label;
import org.ensemblerules.gear.LabelBuilder;
import org.ensemblerules.gear.LayerKind;
import org.ensemblerules.gear.Legibility;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.gear.YesNoUnknown;

/** The labels of a piece of gear: one, or one on each of its layers. */
final class Labels {
  private final Map<Optional<LayerKind>, LabelBuilder> labels = new LinkedHashMap<>();
  private YearMonth made;

  Labels(ElementKind kind, Member holder) {
    if (Stock.layered(kind)) {
      labels.put(Optional.of(LayerKind.OUTER_SHELL), printed(kind, holder));
      labels.put(Optional.of(LayerKind.LINER_SYSTEM), printed(kind, holder));
    } else {
      labels.put(Optional.empty(), printed(kind, holder));
    }
    made(usualMonth(holder));
  }

  private static LabelBuilder printed(ElementKind kind, Member holder) {
    return Label.builder()
        .manufacturer(holder.number() % 4 == 0 ? "Maker Two" : "Maker One")
        .model("Pattern " + kind.name().charAt(0) + holder.use().name().charAt(0))
        .identification("LOT-" + holder.tag(kind.name()))
        .size(holder.size())
        .claimedEdition(holder.number() % 3 == 0 ? "NFPA 1971, 2013" : "NFPA 1971, 2018")
        .certificationMark(YesNoUnknown.YES)
        .legibility(Legibility.READABLE);
  }

  /** Spread over some years; proximity gear is younger, since its reflective shell ages faster. */
  private static YearMonth usualMonth(Member holder) {
    int month = 1 + holder.number() * 5 % 12;
    return switch (holder.use()) {
      case STRUCTURAL -> YearMonth.of(2019 + holder.number() * 3 % 5, month);
      case PROXIMITY -> YearMonth.of(2022 + holder.number() % 3, month);
    };
  }

  YearMonth made() {
    return made;
  }

  void made(YearMonth month) {
    made = month;
    change(label -> label.manufactured(new MarkedDate.Month(month)));
  }

  void change(UnaryOperator<LabelBuilder> change) {
    labels.replaceAll((layer, label) -> change.apply(label));
  }

  void change(LayerKind layer, UnaryOperator<LabelBuilder> change) {
    labels.computeIfPresent(Optional.of(layer), (key, label) -> change.apply(label));
  }

  void putOn(ElementBuilder element) {
    labels.forEach(
        (layer, label) ->
            layer.ifPresentOrElse(
                own -> element.layer(own, label.build()), () -> element.label(label.build())));
  }
}
