package org.ensemblerules.record;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Stream;
import org.ensemblerules.gear.Element;
import org.ensemblerules.gear.Label;
import org.ensemblerules.gear.LayerKind;
import org.ensemblerules.gear.MarkedDate;

/** What labels and file say of where an element and its layers come from. */
final class LabelEntries {
  /** What one label and the file say of the same thing. */
  private record Pair(Optional<Label> label, Optional<Label> filed) {
    <T> Optional<T> known(Function<Label, Optional<T>> field) {
      return label.flatMap(field).or(() -> filed.flatMap(field));
    }

    List<MarkedDate> dates() {
      return Stream.concat(label.stream(), filed.stream()).map(Label::manufactured).toList();
    }
  }

  private final Map<String, Pair> labels = new TreeMap<>();

  private LabelEntries() {}

  static LabelEntries of(RecordFile file) {
    LabelEntries entries = new LabelEntries();
    Element element = file.element();
    for (LayerKind layer : LayerKind.values()) {
      entries.add(
          layer.toString(),
          Optional.ofNullable(element.layerLabels().get(layer)),
          Optional.ofNullable(file.layerLabels().get(layer)));
    }
    entries.add("its own label", element.label(), file.label());
    return entries;
  }

  private void add(String name, Optional<Label> label, Optional<Label> filed) {
    if (label.isPresent() || filed.isPresent()) {
      labels.put(name, new Pair(label, filed));
    }
  }

  List<String> missing(RecordItemRow row) {
    List<String> missing = new ArrayList<>();
    for (RecordDetail detail : row.details()) {
      if (labels.isEmpty()) {
        missing.add(detail.text() + ": no label is known");
      }
      labels.forEach(
          (name, pair) -> {
            if (!has(pair, detail)) {
              missing.add(detail.text() + " of " + name);
            }
          });
    }
    return missing;
  }

  private static boolean has(Pair pair, RecordDetail detail) {
    return switch (detail) {
      case MAKER -> pair.known(Label::manufacturer).isPresent();
      case MODEL -> pair.known(Label::model).isPresent();
      case IDENTIFICATION -> pair.known(Label::identification).isPresent();
      case MONTH_AND_YEAR ->
          pair.dates().stream()
              .anyMatch(date -> date instanceof MarkedDate.Day || date instanceof MarkedDate.Month);
      default -> throw new IllegalStateException("no detail of a label: " + detail);
    };
  }

  List<String> differences(RecordItem item) {
    List<String> differences = new ArrayList<>();
    labels.forEach(
        (name, pair) -> {
          switch (item) {
            case MAKER_AND_MODEL -> {
              texts(name, "maker", pair, Label::manufacturer, differences);
              texts(name, "model", pair, Label::model, differences);
            }
            case IDENTIFICATION ->
                texts(name, "identification", pair, Label::identification, differences);
            case MANUFACTURE_DATE -> dates(name, pair, differences);
            default -> throw new IllegalStateException("no item of a label: " + item);
          }
        });
    return differences;
  }

  private static void texts(
      String name,
      String what,
      Pair pair,
      Function<Label, Optional<String>> field,
      List<String> differences) {
    Optional<String> label = pair.label().flatMap(field);
    Optional<String> filed = pair.filed().flatMap(field);
    if (label.isPresent() && filed.isPresent() && !label.equals(filed)) {
      differences.add(what + " of " + name + ": label " + label.get() + ", file " + filed.get());
    }
  }

  /** A date to the month and one to the day in it say the same; only what no day fits differs. */
  private static void dates(String name, Pair pair, List<String> differences) {
    List<MarkedDate> dates = pair.dates();
    if (dates.size() == 2
        && (dates.get(0).certainlyAfter(dates.get(1))
            || dates.get(1).certainlyAfter(dates.get(0)))) {
      differences.add(
          "manufacture of " + name + ": label " + dates.get(0) + ", file " + dates.get(1));
    }
  }
}
