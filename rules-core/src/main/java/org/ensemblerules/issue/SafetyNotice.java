package org.ensemblerules.issue;

import com.google.common.collect.ImmutableSortedSet;
import com.google.common.collect.Sets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.ensemblerules.effect.Destination;
import org.ensemblerules.gear.Element;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.Label;
import org.ensemblerules.gear.LayerKind;
import org.ensemblerules.gear.Legibility;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.gear.YesNoUnknown;
import org.ensemblerules.source.InvalidValueException;

/**
 * A safety notice, a recall or an order to stop use, and what it touches. Whatever it does not
 * narrow down it touches: without lots all lots, without dates every day of manufacture.
 *
 * @param id what it is called, 1 to 100 characters; not null
 * @param asks what it asks for; not null
 * @param kinds which kinds of element; empty for all; not null
 * @param manufacturer whose, as labels name them, 1 to 200 characters; not null
 * @param models which models, as labels name them; empty for all; not null
 * @param lots which lots or serial numbers, as labels name them; empty for all; not null
 * @param madeFrom the first date of manufacture; unknown if it sets none; not null
 * @param madeThrough the last date of manufacture; unknown if it sets none; not null
 * @since 0.1
 */
public record SafetyNotice(
    String id,
    Asks asks,
    Set<ElementKind> kinds,
    String manufacturer,
    Set<String> models,
    Set<String> lots,
    MarkedDate madeFrom,
    MarkedDate madeThrough) {

  /** What a notice asks for. */
  public enum Asks {
    /** To use it no more until the notice is settled. */
    STOP_USE(Destination.GEAR_ROOM),
    /** To inspect it before it is used again. */
    INSPECT_FIRST(Destination.GEAR_ROOM),
    /** To send it back to its manufacturer. */
    SEND_BACK(Destination.MANUFACTURER);

    private final Destination destination;

    Asks(Destination destination) {
      this.destination = destination;
    }

    /**
     * Returns where what it certainly touches goes, if nothing else sends it elsewhere.
     *
     * @return the destination; never null
     */
    public Destination destination() {
      return destination;
    }
  }

  /**
   * Copies the sets and checks the texts and dates.
   *
   * @throws InvalidValueException if a text is blank or too long, or the dates are in no order
   */
  public SafetyNotice {
    InvalidValueException.requireText("SafetyNotice.id", id, 100);
    Objects.requireNonNull(asks, "asks");
    kinds = Sets.immutableEnumSet(kinds);
    InvalidValueException.requireText("SafetyNotice.manufacturer", manufacturer, 200);
    models = ImmutableSortedSet.copyOf(models);
    lots = ImmutableSortedSet.copyOf(lots);
    models.forEach(text -> InvalidValueException.requireText("SafetyNotice.models", text, 200));
    lots.forEach(text -> InvalidValueException.requireText("SafetyNotice.lots", text, 200));
    InvalidValueException.require(
        !madeFrom.certainlyAfter(madeThrough),
        "SafetyNotice.madeFrom",
        madeFrom,
        "a date not after " + madeThrough);
  }

  /**
   * Tells whether it touches an element.
   *
   * @param element the element; not null
   * @param labeled where it must carry labels; an empty place stands for its own label; not null
   * @return yes if a label says so, no if every label that it must carry says otherwise, else
   *     unknown: it possibly does; never null
   */
  public YesNoUnknown touches(Element element, List<Optional<LayerKind>> labeled) {
    if (!kinds.isEmpty() && !kinds.contains(element.kind())) {
      return YesNoUnknown.NO;
    }
    List<YesNoUnknown> told = new ArrayList<>();
    for (Optional<LayerKind> layer : labeled) {
      Optional<Label> label =
          layer.isPresent() ? layer.map(element.layerLabels()::get) : element.label();
      told.add(label.map(this::isOn).orElse(YesNoUnknown.UNKNOWN));
    }
    if (told.contains(YesNoUnknown.YES)) {
      return YesNoUnknown.YES;
    }
    return told.isEmpty() || told.contains(YesNoUnknown.UNKNOWN)
        ? YesNoUnknown.UNKNOWN
        : YesNoUnknown.NO;
  }

  /** Only a label that can be read in full tells that it is another. */
  private YesNoUnknown isOn(Label label) {
    List<YesNoUnknown> told =
        List.of(
            among(Set.of(manufacturer), label.manufacturer()),
            among(models, label.model()),
            among(lots, label.identification()),
            madeThen(label.manufactured()));
    if (told.contains(YesNoUnknown.NO)) {
      return label.legibility() == Legibility.READABLE ? YesNoUnknown.NO : YesNoUnknown.UNKNOWN;
    }
    return told.contains(YesNoUnknown.UNKNOWN) ? YesNoUnknown.UNKNOWN : YesNoUnknown.YES;
  }

  /** A name that differs only in capital letters, spaces and signs may be the same. */
  private static YesNoUnknown among(Set<String> named, Optional<String> printed) {
    if (named.isEmpty()) {
      return YesNoUnknown.YES;
    }
    if (printed.isEmpty()) {
      return YesNoUnknown.UNKNOWN;
    }
    if (named.contains(printed.get())) {
      return YesNoUnknown.YES;
    }
    return named.stream().map(SafetyNotice::loosely).anyMatch(loosely(printed.get())::equals)
        ? YesNoUnknown.UNKNOWN
        : YesNoUnknown.NO;
  }

  private static String loosely(String text) {
    return text.replaceAll("[^\\p{L}\\p{N}]", "").toLowerCase(Locale.ROOT);
  }

  private YesNoUnknown madeThen(MarkedDate made) {
    if (madeFrom.certainlyAfter(made) || made.certainlyAfter(madeThrough)) {
      return YesNoUnknown.NO;
    }
    return (isUnset(madeFrom) || made.certainlyNotBefore(madeFrom))
            && (isUnset(madeThrough) || madeThrough.certainlyNotBefore(made))
        ? YesNoUnknown.YES
        : YesNoUnknown.UNKNOWN;
  }

  private static boolean isUnset(MarkedDate date) {
    return date instanceof MarkedDate.Unknown;
  }
}
