package org.ensemblerules.record;

import com.google.common.collect.ImmutableSet;
import com.google.common.collect.Maps;
import java.util.Comparator;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.ensemblerules.gear.Element;
import org.ensemblerules.gear.Label;
import org.ensemblerules.gear.LayerKind;
import org.ensemblerules.gear.YesNoUnknown;
import org.ensemblerules.history.History;
import org.ensemblerules.history.Moment;

/**
 * An element's file: the element as its labels have it, what happened to it, and what the file says
 * beyond that. What the file does not say is unknown. Entries given in any order make the same
 * file; an entry given twice stands once.
 *
 * @since 0.1
 */
public final class RecordFile {
  // Whatever order they are given in, the same file is told in the same words.
  private static final Comparator<RecordNote> NOTES =
      Comparator.comparing(RecordNote::item)
          .thenComparing(RecordNote::of, Moment.LAST_CERTAIN)
          .thenComparing(RecordNote::toString);

  private static final Comparator<PfasNotice> NOTICES =
      Comparator.comparing(PfasNotice::place).thenComparing(PfasNotice::toString);

  private final Element element;
  private final History history;
  private final Optional<Label> label;
  private final Map<LayerKind, Label> layerLabels;
  private final YesNoUnknown inStock;
  private final Set<RecordNote> notes;
  private final Optional<DisposalNote> disposal;
  private final Set<PfasNotice> pfasNotices;

  RecordFile(RecordFileBuilder builder) {
    this.element = builder.element;
    this.history = builder.history;
    this.label = builder.label;
    this.layerLabels = Maps.immutableEnumMap(builder.layerLabels);
    this.inStock = builder.inStock;
    this.notes = ImmutableSet.copyOf(builder.notes.stream().sorted(NOTES).toList());
    this.disposal = builder.disposal;
    this.pfasNotices = ImmutableSet.copyOf(builder.pfasNotices.stream().sorted(NOTICES).toList());
  }

  /**
   * Starts a file that says nothing beyond the history.
   *
   * @param element the element as its labels have it; not null
   * @param history what happened to it; not null
   * @return the builder; never null
   */
  public static RecordFileBuilder builder(Element element, History history) {
    return new RecordFileBuilder(element, history);
  }

  /**
   * Returns the element as its labels have it.
   *
   * @return the element; never null
   */
  public Element element() {
    return element;
  }

  /**
   * Returns what happened to it.
   *
   * @return the history; never null
   */
  public History history() {
    return history;
  }

  /**
   * Returns what the file says of the element's own label, readable or not.
   *
   * @return what it says; empty if nothing
   */
  public Optional<Label> label() {
    return label;
  }

  /**
   * Returns what the file says of the labels of layers.
   *
   * @return an unmodifiable map in layer order; never null
   */
  public Map<LayerKind, Label> layerLabels() {
    return layerLabels;
  }

  /**
   * Tells whether the file says that it was never issued.
   *
   * @return yes, no or unknown; never null
   */
  public YesNoUnknown inStock() {
    return inStock;
  }

  /**
   * Returns what the file says of single events.
   *
   * @return an unmodifiable set, by item and moment; never null
   */
  public Set<RecordNote> notes() {
    return notes;
  }

  /**
   * Returns by which route the file says that it went.
   *
   * @return the route; empty if the file does not say
   */
  public Optional<DisposalNote> disposal() {
    return disposal;
  }

  /**
   * Returns the notices on file that say whether it contains added PFAS.
   *
   * @return an unmodifiable set, by place; never null
   */
  public Set<PfasNotice> pfasNotices() {
    return pfasNotices;
  }

  @Override
  public boolean equals(Object object) {
    return object instanceof RecordFile other
        && element.equals(other.element)
        && history.equals(other.history)
        && label.equals(other.label)
        && layerLabels.equals(other.layerLabels)
        && inStock == other.inStock
        && notes.equals(other.notes)
        && disposal.equals(other.disposal)
        && pfasNotices.equals(other.pfasNotices);
  }

  @Override
  public int hashCode() {
    return Objects.hash(
        element, history, label, layerLabels, inStock, notes, disposal, pfasNotices);
  }

  @Override
  public String toString() {
    return "RecordFile[" + element.id() + ", " + history.events().size() + " events]";
  }
}
