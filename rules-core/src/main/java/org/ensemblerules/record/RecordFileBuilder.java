package org.ensemblerules.record;

import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.ensemblerules.gear.Element;
import org.ensemblerules.gear.Label;
import org.ensemblerules.gear.LayerKind;
import org.ensemblerules.gear.YesNoUnknown;
import org.ensemblerules.history.History;

/**
 * Collects what a file says.
 *
 * @since 0.1
 */
public final class RecordFileBuilder {
  final Element element;
  final History history;
  Optional<Label> label = Optional.empty();
  final EnumMap<LayerKind, Label> layerLabels = new EnumMap<>(LayerKind.class);
  YesNoUnknown inStock = YesNoUnknown.UNKNOWN;
  final Set<RecordNote> notes = new LinkedHashSet<>();
  Optional<DisposalNote> disposal = Optional.empty();
  final Set<PfasNotice> pfasNotices = new LinkedHashSet<>();

  RecordFileBuilder(Element element, History history) {
    this.element = Objects.requireNonNull(element, "element");
    this.history = Objects.requireNonNull(history, "history");
  }

  /**
   * Sets what the file says of the element's own label.
   *
   * @param asFiled what it says; not null
   * @return this builder
   */
  public RecordFileBuilder label(Label asFiled) {
    label = Optional.of(asFiled);
    return this;
  }

  /**
   * Sets what the file says of the label of a layer, replacing what was set before.
   *
   * @param layer the layer; not null
   * @param asFiled what it says; not null
   * @return this builder
   */
  public RecordFileBuilder layer(LayerKind layer, Label asFiled) {
    layerLabels.put(
        Objects.requireNonNull(layer, "layer"), Objects.requireNonNull(asFiled, "asFiled"));
    return this;
  }

  /**
   * Sets whether the file says that it was never issued.
   *
   * @param known yes, no or unknown; not null
   * @return this builder
   */
  public RecordFileBuilder inStock(YesNoUnknown known) {
    inStock = Objects.requireNonNull(known, "inStock");
    return this;
  }

  /**
   * Adds what the file says of an event.
   *
   * @param note what it says; not null
   * @return this builder
   */
  public RecordFileBuilder note(RecordNote note) {
    notes.add(Objects.requireNonNull(note, "note"));
    return this;
  }

  /**
   * Sets by which route the file says that it went.
   *
   * @param note the route; not null
   * @return this builder
   */
  public RecordFileBuilder disposal(DisposalNote note) {
    disposal = Optional.of(note);
    return this;
  }

  /**
   * Adds a notice about added PFAS.
   *
   * @param notice the notice; not null
   * @return this builder
   */
  public RecordFileBuilder pfasNotice(PfasNotice notice) {
    pfasNotices.add(Objects.requireNonNull(notice, "notice"));
    return this;
  }

  /**
   * Makes the file.
   *
   * @return the file; never null
   */
  public RecordFile build() {
    return new RecordFile(this);
  }
}
