package org.ensemblerules.assess;

import com.google.common.hash.Hashing;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.ensemblerules.defect.DefectKind;
import org.ensemblerules.defect.Extent;
import org.ensemblerules.defect.Finding;
import org.ensemblerules.defect.FindingId;
import org.ensemblerules.defect.Grade;
import org.ensemblerules.gear.Element;
import org.ensemblerules.gear.Label;
import org.ensemblerules.gear.LayerKind;
import org.ensemblerules.gear.Legibility;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.gear.Part;
import org.ensemblerules.gear.Site;
import org.ensemblerules.gear.YesNoUnknown;
import org.ensemblerules.history.Evidence;
import org.ensemblerules.history.History;

/** The labels an element must carry, those it carries, and what is wrong with them. */
final class ElementLabels {
  /** How much of the SHA-256 of what labels say is enough to tell that they said something else. */
  private static final int DIGITS = 12;

  private final Element element;
  private final History history;
  private final LocalDate asOf;
  private final List<Optional<LayerKind>> layers;

  ElementLabels(Evidence evidence) {
    this.element = evidence.element();
    this.history = evidence.history();
    this.asOf = evidence.asOf();
    this.layers = evidence.labeledLayers();
  }

  /** Where labels are expected or given; a layer empty stands for the element's own label. */
  List<Optional<LayerKind>> layers() {
    return layers;
  }

  Optional<Label> label(Optional<LayerKind> layer) {
    return element.label(layer);
  }

  /** What the labels themselves show to be wrong. Each is found anew at every assessment. */
  List<Finding> findings() {
    List<Finding> findings = new ArrayList<>();
    for (Optional<LayerKind> layer : layers()) {
      Site site = new Site(Part.LABEL, layer);
      label(layer).ifPresent(label -> onLabel(site, label, findings::add));
    }
    if (mismatched()) {
      findings.add(
          finding(
              Site.of(Part.WHOLE_ELEMENT),
              DefectKind.MISMATCH_OF_ASSEMBLY,
              new Extent.NotMeasured(),
              said(element)));
    }
    return findings;
  }

  private void onLabel(Site site, Label label, Consumer<Finding> findings) {
    if (label.legibility() == Legibility.PARTLY_READABLE) {
      findings.accept(
          finding(site, DefectKind.ILLEGIBLE, new Extent.Graded(Grade.PARTLY), says(label)));
    }
    if (label.legibility() == Legibility.UNREADABLE) {
      findings.accept(
          finding(site, DefectKind.ILLEGIBLE, new Extent.Graded(Grade.NOT_AT_ALL), says(label)));
    }
    if (label.legibility() == Legibility.MISSING) {
      findings.accept(finding(site, DefectKind.MISSING, new Extent.NotMeasured(), says(label)));
    }
    if (label.certificationMark() == YesNoUnknown.NO) {
      findings.accept(
          finding(
              site, DefectKind.CERTIFICATION_MARK_MISSING, new Extent.NotMeasured(), says(label)));
    }
  }

  private Finding finding(Site site, DefectKind defect, Extent extent, String says) {
    FindingId id = new FindingId(FindingId.OF_LABELS + site + ":" + defect + ":" + token(says));
    return new Finding(id, site, "", defect, extent, MarkedDate.of(firstKnown(id)));
  }

  private static String said(Element element) {
    return element.layerLabels().entrySet().stream()
        .map(each -> each.getKey() + " " + says(each.getValue()))
        .collect(Collectors.joining("; "));
  }

  /** All that a label says, in an order of its own: names that were given rest on it. */
  static String says(Optional<Label> label) {
    return label.isPresent() ? says(label.get()) : "no label";
  }

  private static String says(Label label) {
    return Stream.of(
                label.manufacturer(),
                label.model(),
                label.identification(),
                label.size(),
                label.claimedEdition())
            .map(text -> text.map(said -> '"' + said + '"').orElse("UNKNOWN"))
            .collect(Collectors.joining(", "))
        + ", "
        + label.manufactured()
        + ", "
        + label.certificationMark()
        + ", "
        + label.legibility();
  }

  /** What names something that labels show: an answer to it answers no other labels. */
  static String token(String says) {
    return Hashing.sha256()
        .hashString(says, StandardCharsets.UTF_8)
        .toString()
        .substring(0, DIGITS);
  }

  /** A label's state has no day of its own: it was known to whoever answered it, else it is now. */
  private LocalDate firstKnown(FindingId id) {
    return history.answering(id).stream()
        .flatMap(event -> event.when().date().earliest().stream())
        .filter(day -> day.isBefore(asOf))
        .min(Comparator.naturalOrder())
        .orElseGet(this::nearestDay);
  }

  /** The day judged for may lie in years that no date on a record has. */
  private LocalDate nearestDay() {
    LocalDate first = LocalDate.of(MarkedDate.FIRST_YEAR, 1, 1);
    LocalDate last = LocalDate.of(MarkedDate.LAST_YEAR, 12, 31);
    if (asOf.isBefore(first)) {
      return first;
    }
    return asOf.isAfter(last) ? last : asOf;
  }

  /** Whether shell and liners say that they do not belong together. */
  private boolean mismatched() {
    return differ(Label::manufacturer) || differ(Label::model) || differ(Label::size);
  }

  private boolean differ(Function<Label, Optional<String>> field) {
    Optional<String> first = Optional.empty();
    for (Label label : element.layerLabels().values()) {
      Optional<String> text = field.apply(label);
      if (first.isPresent() && text.isPresent() && !first.equals(text)) {
        return true;
      }
      first = first.isPresent() ? first : text;
    }
    return false;
  }

  /** The fields that a label leaves open and that an element may not be in service without. */
  List<String> unknownFields(Optional<LayerKind> layer) {
    Optional<Label> label = label(layer);
    if (label.isEmpty()) {
      return List.of("label");
    }
    List<String> unknown = new ArrayList<>();
    if (label.get().legibility() == Legibility.UNKNOWN) {
      unknown.add("legibility");
    }
    if (label.get().certificationMark() == YesNoUnknown.UNKNOWN) {
      unknown.add("certificationMark");
    }
    // Of layers, what tells whether they belong together.
    if (layer.isPresent() && label.get().manufacturer().isEmpty()) {
      unknown.add("manufacturer");
    }
    if (layer.isPresent() && label.get().model().isEmpty()) {
      unknown.add("model");
    }
    if (layer.isPresent() && label.get().size().isEmpty()) {
      unknown.add("size");
    }
    return unknown;
  }

  /** The labels' dates of manufacture that are known. */
  List<MarkedDate> manufactured() {
    List<MarkedDate> known = new ArrayList<>();
    for (Optional<LayerKind> layer : layers()) {
      label(layer)
          .map(Label::manufactured)
          .filter(date -> date.earliest().isPresent())
          .ifPresent(known::add);
    }
    return known;
  }
}
