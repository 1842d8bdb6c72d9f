package org.ensemblerules.record;

import com.google.common.collect.Maps;
import java.util.List;
import java.util.Map;
import org.ensemblerules.history.Contradiction;
import org.ensemblerules.history.InspectionOnRecord;

/**
 * What a file holds, item by item.
 *
 * @param answers an answer for each item, in the order of the items; not null
 * @param inspections its inspections, each with how much the record has of it: of each kind the
 *     last that counts, and the newest after that which does not; not null
 * @param contradictions what the history contradicts itself in, by kind; not null
 * @since 0.1
 */
public record FileReport(
    Map<RecordItem, FileAnswer> answers,
    List<InspectionOnRecord> inspections,
    List<Contradiction> contradictions) {
  /** Copies the answers. */
  public FileReport {
    answers = Maps.immutableEnumMap(answers);
    inspections = List.copyOf(inspections);
    contradictions = List.copyOf(contradictions);
  }

  /**
   * Tells whether the file is complete: some rule asks for something, nothing that is asked is
   * missing, and nothing contradicts. A file that no rule covers is never complete.
   *
   * @return true only if it is
   */
  public boolean complete() {
    return contradictions.isEmpty()
        && answers.values().stream().anyMatch(FileAnswer.Present.class::isInstance)
        && answers.values().stream()
            .noneMatch(
                answer ->
                    answer instanceof FileAnswer.Missing
                        || answer instanceof FileAnswer.Inconsistent);
  }
}
