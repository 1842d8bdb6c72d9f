package org.ensemblerules.verdict;

import com.google.common.collect.ImmutableList;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.ensemblerules.defect.DefectKind;
import org.ensemblerules.defect.Extent;
import org.ensemblerules.defect.Finding;
import org.ensemblerules.defect.FindingId;
import org.ensemblerules.defect.Grade;
import org.ensemblerules.gear.AnatomyTable;
import org.ensemblerules.gear.Element;
import org.ensemblerules.gear.Known;
import org.ensemblerules.gear.Label;
import org.ensemblerules.gear.LayerKind;
import org.ensemblerules.gear.Legibility;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.gear.Part;
import org.ensemblerules.gear.Site;

/** The labels an element must carry, those it carries, and what is wrong with them. */
final class Labeled {
  private final Element element;
  private final AnatomyTable anatomy;

  Labeled(Element element, AnatomyTable anatomy) {
    this.element = element;
    this.anatomy = anatomy;
  }

  /** Where labels are expected or given; a layer empty stands for the element's own label. */
  List<Optional<LayerKind>> layers() {
    return anatomy.labels(element);
  }

  Optional<Label> label(Optional<LayerKind> layer) {
    return layer.isPresent() ? layer.map(element.layerLabels()::get) : element.label();
  }

  /** What the labels themselves show to be wrong. Each is found anew at every assessment. */
  List<Finding> findings() {
    List<Finding> findings = new ArrayList<>();
    for (Optional<LayerKind> layer : layers()) {
      label(layer).ifPresent(label -> findings.addAll(onLabel(new Site(Part.LABEL, layer), label)));
    }
    if (mismatched()) {
      findings.add(
          finding(
              Site.of(Part.WHOLE_ELEMENT),
              DefectKind.MISMATCH_OF_ASSEMBLY,
              new Extent.NotMeasured()));
    }
    return findings;
  }

  private static List<Finding> onLabel(Site site, Label label) {
    List<Finding> findings = new ArrayList<>();
    if (label.legibility() == Legibility.PARTLY_READABLE) {
      findings.add(finding(site, DefectKind.ILLEGIBLE, new Extent.Graded(Grade.PARTLY)));
    }
    if (label.legibility() == Legibility.UNREADABLE) {
      findings.add(finding(site, DefectKind.ILLEGIBLE, new Extent.Graded(Grade.NOT_AT_ALL)));
    }
    if (label.legibility() == Legibility.MISSING) {
      findings.add(finding(site, DefectKind.MISSING, new Extent.NotMeasured()));
    }
    if (label.certificationMark() == Known.NO) {
      findings.add(finding(site, DefectKind.CERTIFICATION_MARK_MISSING, new Extent.NotMeasured()));
    }
    return findings;
  }

  // A label's state has no day of its own; whatever answers it came later than the first day there
  // can be, so that an answer of any day counts.
  private static Finding finding(Site site, DefectKind defect, Extent extent) {
    return new Finding(
        new FindingId("label:" + site + ":" + defect),
        site,
        "",
        defect,
        extent,
        MarkedDate.of(LocalDate.of(MarkedDate.FIRST_YEAR, 1, 1)));
  }

  /** Whether shell and liners say that they do not belong together. */
  private boolean mismatched() {
    List<Label> labels = ImmutableList.copyOf(element.layerLabels().values());
    return differ(labels.stream().map(Label::manufacturer).toList())
        || differ(labels.stream().map(Label::model).toList())
        || differ(labels.stream().map(Label::size).toList());
  }

  private static boolean differ(List<Optional<String>> texts) {
    return texts.stream().flatMap(Optional::stream).distinct().count() > 1;
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
    if (label.get().certificationMark() == Known.UNKNOWN) {
      unknown.add("certificationMark");
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
    return layers().stream()
        .map(this::label)
        .flatMap(Optional::stream)
        .map(Label::manufactured)
        .filter(date -> date.earliest().isPresent())
        .toList();
  }
}
