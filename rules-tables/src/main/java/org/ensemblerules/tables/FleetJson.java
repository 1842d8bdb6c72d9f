package org.ensemblerules.tables;

import java.time.LocalDate;
import java.util.Objects;
import org.ensemblerules.fleet.Figures;
import org.ensemblerules.fleet.Readiness;
import org.ensemblerules.issue.Delivery;
import org.ensemblerules.issue.IssueAnswer;
import org.ensemblerules.tables.codec.FiguresTree;
import org.ensemblerules.tables.codec.IssueTree;
import org.ensemblerules.tables.codec.MorningTree;
import org.ensemblerules.tables.codec.PlanTree;
import org.ensemblerules.tables.codec.ReadyTree;
import org.ensemblerules.tables.json.JsonLine;
import org.ensemblerules.tables.message.CareSpent;
import org.ensemblerules.tables.message.ClearingList;
import org.ensemblerules.tables.message.Morning;
import org.ensemblerules.tables.message.NoticeEffect;
import org.ensemblerules.tables.message.PlannedYears;
import org.ensemblerules.words.Words;

/**
 * Writes what is answered about the gear of a whole department, each answer in the form of a schema
 * of this package's {@code schema} folder. Codes stand beside the words for them. Safe for use by
 * many threads.
 *
 * @since 0.1
 */
public final class FleetJson {
  private FleetJson() {}

  /**
   * Writes what is to be done today, in the form of {@code morning-answer.schema.json}.
   *
   * @param morning the answer; not null
   * @param words the words for codes; not null
   * @return one line of JSON without a line end, its fields in a fixed order; never null
   */
  public static String write(Morning morning, Words words) {
    return JsonLine.of(
        MorningTree.write(
            Objects.requireNonNull(morning, "morning"), Objects.requireNonNull(words, "words")));
  }

  /**
   * Writes what a person may do today, in the form of {@code clearing-answer.schema.json}.
   *
   * @param list the answer; not null
   * @param words the words for codes; not null
   * @return one line of JSON without a line end, its fields in a fixed order; never null
   */
  public static String write(ClearingList list, Words words) {
    return JsonLine.of(
        MorningTree.write(
            Objects.requireNonNull(list, "list"), Objects.requireNonNull(words, "words")));
  }

  /**
   * Writes who is ready, in the form of {@code ready-answer.schema.json}.
   *
   * @param ready the answer; not null
   * @param words the words for codes; not null
   * @return one line of JSON without a line end, its fields in a fixed order; never null
   */
  public static String write(Readiness ready, Words words) {
    return JsonLine.of(
        ReadyTree.write(
            Objects.requireNonNull(ready, "ready"), Objects.requireNonNull(words, "words")));
  }

  /**
   * Writes whether an element may be issued, in the form of {@code issue-answer.schema.json}.
   *
   * @param answer the answer; not null
   * @param words the words for codes; not null
   * @return one line of JSON without a line end, its fields in a fixed order; never null
   */
  public static String write(IssueAnswer answer, Words words) {
    return JsonLine.of(
        IssueTree.write(
            Objects.requireNonNull(answer, "answer"), Objects.requireNonNull(words, "words")));
  }

  /**
   * Writes what of a delivery can be accepted, in the form of {@code delivery-answer.schema.json}.
   *
   * @param delivery the answer; not null
   * @param words the words for codes; not null
   * @return one line of JSON without a line end, its fields in a fixed order; never null
   */
  public static String write(Delivery delivery, Words words) {
    return JsonLine.of(
        IssueTree.write(
            Objects.requireNonNull(delivery, "delivery"), Objects.requireNonNull(words, "words")));
  }

  /**
   * Writes what safety notices do, in the form of {@code notice-answer.schema.json}.
   *
   * @param effect the answer; not null
   * @param words the words for codes; not null
   * @return one line of JSON without a line end, its fields in a fixed order; never null
   */
  public static String write(NoticeEffect effect, Words words) {
    return JsonLine.of(
        IssueTree.write(
            Objects.requireNonNull(effect, "effect"), Objects.requireNonNull(words, "words")));
  }

  /**
   * Writes what leaves service and what replacing it costs, in the form of {@code
   * plan-answer.schema.json}.
   *
   * @param years the answer; not null
   * @return one line of JSON without a line end, its fields in a fixed order; never null
   */
  public static String write(PlannedYears years) {
    return JsonLine.of(PlanTree.write(Objects.requireNonNull(years, "years")));
  }

  /**
   * Writes the numbers of a department, in the form of {@code figures-answer.schema.json}.
   *
   * @param asOf the day they are counted for; not null
   * @param figures the numbers; not null
   * @param care what care cost so far; not null
   * @return one line of JSON without a line end, its fields in a fixed order; never null
   */
  public static String write(LocalDate asOf, Figures figures, CareSpent care) {
    Objects.requireNonNull(asOf, "asOf");
    Objects.requireNonNull(figures, "figures");
    Objects.requireNonNull(care, "care");
    return JsonLine.of(FiguresTree.write(asOf, figures, care));
  }
}
