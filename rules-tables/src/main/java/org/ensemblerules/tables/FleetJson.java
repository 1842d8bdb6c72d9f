package org.ensemblerules.tables;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import org.ensemblerules.effect.Doer;
import org.ensemblerules.fleet.AwayEntry;
import org.ensemblerules.fleet.Budget;
import org.ensemblerules.fleet.CareSoFar;
import org.ensemblerules.fleet.Clearing;
import org.ensemblerules.fleet.Figures;
import org.ensemblerules.fleet.Forecast;
import org.ensemblerules.fleet.Levelled;
import org.ensemblerules.fleet.Readiness;
import org.ensemblerules.fleet.ReplacementPlan;
import org.ensemblerules.fleet.Today;
import org.ensemblerules.gear.NamedElement;
import org.ensemblerules.issue.Delivery;
import org.ensemblerules.issue.IssueAnswer;
import org.ensemblerules.issue.NoticedElement;
import org.ensemblerules.issue.SafetyNotice;
import org.ensemblerules.issue.Whereabouts;
import org.ensemblerules.tables.codec.FiguresTree;
import org.ensemblerules.tables.codec.IssueTree;
import org.ensemblerules.tables.codec.MorningTree;
import org.ensemblerules.tables.codec.PlanTree;
import org.ensemblerules.tables.codec.ReadyTree;
import org.ensemblerules.tables.json.JsonLine;
import org.ensemblerules.words.Words;

/**
 * Writes what is answered about the gear of a whole department, each answer in the form of a schema
 * of this package's {@code schema} folder. Codes stand beside the words for them. Safe for use by
 * many threads.
 */
public final class FleetJson {
  private FleetJson() {}

  /**
   * What is to be done today and in the months to come.
   *
   * @param asOf the day; not null
   * @param today what goes where; not null
   * @param away what is in others' hands, in order; not null
   * @param work what falls due, spread over days; not null
   */
  public record Morning(LocalDate asOf, Today today, List<AwayEntry> away, Levelled work) {
    /** Copies the list. */
    public Morning {
      Objects.requireNonNull(asOf, "asOf");
      Objects.requireNonNull(today, "today");
      away = List.copyOf(away);
      Objects.requireNonNull(work, "work");
    }
  }

  /**
   * What a person may do today about an element that is out.
   *
   * @param element the element; not null
   * @param whereabouts who has it and where it is; not null
   * @param clearing what they may do; not null
   */
  public record Cleared(NamedElement element, Whereabouts whereabouts, Clearing clearing) {
    /** Checks for nulls. */
    public Cleared {
      Objects.requireNonNull(element, "element");
      Objects.requireNonNull(whereabouts, "whereabouts");
      Objects.requireNonNull(clearing, "clearing");
    }
  }

  /**
   * What a person may do today.
   *
   * @param doer who; not null
   * @param asOf the day; not null
   * @param elements each element that is out, and what they may do about it; not null
   */
  public record ClearingList(Doer doer, LocalDate asOf, List<Cleared> elements) {
    /** Copies the list. */
    public ClearingList {
      Objects.requireNonNull(doer, "doer");
      Objects.requireNonNull(asOf, "asOf");
      elements = List.copyOf(elements);
    }
  }

  /**
   * What safety notices do.
   *
   * @param notices the notices; not null
   * @param touched the elements that they touch, or may; not null
   * @param before who is ready without them; not null
   * @param after who is ready with them; not null
   */
  public record NoticeEffect(
      List<SafetyNotice> notices, List<NoticedElement> touched, Readiness before, Readiness after) {
    /** Copies the lists. */
    public NoticeEffect {
      notices = List.copyOf(notices);
      touched = List.copyOf(touched);
      Objects.requireNonNull(before, "before");
      Objects.requireNonNull(after, "after");
    }
  }

  /**
   * What leaves service, and what replacing it costs.
   *
   * @param forecast what leaves when; not null
   * @param budget what may be spent; not null
   * @param plan what is bought when; not null
   */
  public record Years(Forecast forecast, Budget budget, ReplacementPlan plan) {
    /** Checks for nulls. */
    public Years {
      Objects.requireNonNull(forecast, "forecast");
      Objects.requireNonNull(budget, "budget");
      Objects.requireNonNull(plan, "plan");
    }
  }

  /**
   * What care cost so far, of all elements together. Advice only.
   *
   * @param cleanings how many cleanings are on record, 0 or more
   * @param repairs how many repairs are on record, 0 or more
   * @param withoutPrice how many of both have no price, 0 or more
   * @param spent what the others cost; not null
   * @param above the elements that cost more than the owner thinks care worth; not null
   */
  public record CareSpent(
      long cleanings, long repairs, long withoutPrice, BigDecimal spent, List<CareSoFar> above) {
    /** Copies the list. */
    public CareSpent {
      Objects.requireNonNull(spent, "spent");
      above = List.copyOf(above);
    }
  }

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
  public static String write(Years years) {
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
