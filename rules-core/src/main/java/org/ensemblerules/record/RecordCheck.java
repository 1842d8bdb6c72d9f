package org.ensemblerules.record;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import org.ensemblerules.gear.Element;
import org.ensemblerules.gear.Label;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.history.Contradiction;
import org.ensemblerules.history.EvidenceTables;
import org.ensemblerules.history.History;

/**
 * Is an element's file complete? Nothing unknown counts as present: a date is there only to the
 * day, a maker only by name. Adding an entry to a file never turns Present to Missing, but for an
 * event of the very item, which makes a duty of its own; then what is missing is of that event.
 */
final class RecordCheck {
  private RecordCheck() {}

  static FileReport check(
      RecordFile file, RecordItemTable table, EvidenceTables evidence, LocalDate asOf) {
    Objects.requireNonNull(asOf, "asOf");
    Element element = file.element();
    History history = until(file.history(), asOf);
    LabelEntries labels = LabelEntries.of(file);
    EventEntries events = new EventEntries(file, history);
    List<Contradiction> contradictions = history.contradictions(manufactured(file));
    Map<RecordItem, FileAnswer> answers = new EnumMap<>(RecordItem.class);
    for (RecordItem item : RecordItem.values()) {
      Optional<RecordItemRow> row = table.row(element.kind(), element.use(), item);
      if (row.isEmpty()) {
        answers.put(item, new FileAnswer.NoRule(item));
        continue;
      }
      List<String> missing =
          item.isOnLabel() ? labels.missing(row.get()) : events.missing(row.get());
      List<String> faults =
          new ArrayList<>(item.isOnLabel() ? labels.differences(item) : events.faults(item));
      contradictions.stream()
          .filter(each -> concerns(each, item))
          .map(Contradiction::text)
          .distinct()
          .forEach(faults::add);
      answers.put(item, answer(row.get(), missing, faults, events.notYet(item)));
    }
    return new FileReport(
        answers,
        evidence.of(element, file.history(), asOf).inspections().onRecord(),
        contradictions);
  }

  private static FileAnswer answer(
      RecordItemRow row, List<String> missing, List<String> faults, Optional<String> notYet) {
    if (!faults.isEmpty()) {
      return new FileAnswer.Inconsistent(row, faults, missing);
    }
    if (notYet.isPresent()) {
      return new FileAnswer.NotYet(row, notYet.get());
    }
    return missing.isEmpty() ? new FileAnswer.Present(row) : new FileAnswer.Missing(row, missing);
  }

  private static History until(History history, LocalDate asOf) {
    return History.of(
        history.events().stream().filter(event -> event.when().date().possiblyBy(asOf)).toList());
  }

  /** Both what the labels and what the file say: the earliest speaks against what came before. */
  private static Collection<MarkedDate> manufactured(RecordFile file) {
    Element element = file.element();
    return Stream.of(
            element.label().stream(),
            element.layerLabels().values().stream(),
            file.label().stream(),
            file.layerLabels().values().stream())
        .flatMap(labels -> labels)
        .map(Label::manufactured)
        .toList();
  }

  private static boolean concerns(Contradiction contradiction, RecordItem item) {
    return switch (contradiction.kind()) {
      case BEFORE_MADE ->
          item == RecordItem.MANUFACTURE_DATE || item.records(contradiction.event());
      case AFTER_DISPOSAL -> item == RecordItem.DISPOSAL || item.records(contradiction.event());
      case AFTER_RETIREMENT ->
          item == RecordItem.RETIREMENT_DATE || item.records(contradiction.event());
      case SECOND_HOLDER -> item == RecordItem.ISSUED_TO;
      case BACK_WITHOUT_TAKEN_OUT -> false;
      case STATED_ORDER -> item.records(contradiction.event());
    };
  }
}
