package org.ensemblerules.tables.codec;

import com.fasterxml.jackson.databind.JsonNode;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import org.ensemblerules.effect.GoesTo;
import org.ensemblerules.fleet.AwayEntry;
import org.ensemblerules.fleet.Clearing;
import org.ensemblerules.fleet.Levelled;
import org.ensemblerules.fleet.TodayEntry;
import org.ensemblerules.fleet.Work;
import org.ensemblerules.tables.message.ClearedElement;
import org.ensemblerules.tables.message.ClearingList;
import org.ensemblerules.tables.message.Morning;
import org.ensemblerules.verdict.Step;
import org.ensemblerules.words.Sentences;
import org.ensemblerules.words.Words;

/** The JSON form of what is to be done today, and of what a person may do about it. */
public final class MorningTree {
  private MorningTree() {}

  /** Writes what is to be done. */
  public static JsonNode write(Morning morning, Words words) {
    Sentences sentences = new Sentences(words);
    return new Fields()
        .put("asOf", morning.asOf())
        .list("lists", morning.today().lists().entrySet(), list -> write(list, sentences))
        .list("away", morning.away(), MorningTree::write)
        .put("work", write(morning.work()))
        .node();
  }

  private static JsonNode write(Map.Entry<GoesTo, List<TodayEntry>> list, Sentences sentences) {
    return new Fields()
        .put("goesTo", EffectJson.write(list.getKey()))
        .put("text", sentences.of(list.getKey()))
        .list("elements", list.getValue(), entry -> write(entry, sentences))
        .node();
  }

  private static JsonNode write(TodayEntry entry, Sentences sentences) {
    Fields fields = new Fields().put("element", ElementJson.named(entry.element()).node());
    return WhereaboutsTree.where(fields, entry.whereabouts())
        .list("sizes", entry.sizes())
        .put("headline", entry.headline())
        .known("since", entry.since())
        .put("overdueDays", entry.overdue().days())
        .put("dueSinceUnknown", entry.overdue().sinceUnknown())
        .known("next", entry.next(), step -> write(step, sentences))
        .node();
  }

  private static JsonNode write(Step step, Sentences sentences) {
    return EffectJson.by(
            new Fields()
                .put("effect", EffectJson.write(step.effect()))
                .put("target", step.target())
                .put("text", sentences.of(step)),
            step.by())
        .node();
  }

  private static JsonNode write(AwayEntry away) {
    Fields fields = new Fields().put("element", ElementJson.named(away.element()).node());
    WhereaboutsTree.where(fields, away.whereabouts())
        .put("transfer", away.gone().transfer())
        .put("on", away.gone().when().date())
        .put("to", away.gone().to());
    OptionalLong late = away.daysLate();
    if (late.isPresent()) {
      fields.put("daysLate", late.getAsLong());
    }
    return fields.node();
  }

  private static JsonNode write(Levelled work) {
    return new Fields()
        .put("perDay", work.perDay())
        .list("planned", work.planned().entrySet(), MorningTree::day)
        .list("late", work.late(), MorningTree::write)
        .node();
  }

  private static JsonNode day(Map.Entry<LocalDate, List<Work>> day) {
    return new Fields()
        .put("on", day.getKey())
        .list("tasks", day.getValue(), work -> task(work).node())
        .node();
  }

  private static JsonNode write(Levelled.Late late) {
    return task(late.work()).put("why", late.why()).known("soonest", late.soonest()).node();
  }

  private static Fields task(Work work) {
    return new Fields()
        .put("element", work.element())
        .put("task", work.task())
        .known("layer", work.layer())
        .known("by", work.by());
  }

  /** Writes what a person may do. */
  public static JsonNode write(ClearingList list, Words words) {
    Sentences sentences = new Sentences(words);
    return new Fields()
        .put("doer", list.doer().name())
        .put("asOf", list.asOf())
        .list("elements", list.elements(), each -> write(each, words, sentences))
        .node();
  }

  private static JsonNode write(ClearedElement cleared, Words words, Sentences sentences) {
    Fields fields = new Fields().put("element", ElementJson.named(cleared.element()).node());
    WhereaboutsTree.where(fields, cleared.whereabouts());
    Clearing clearing = cleared.clearing();
    if (clearing instanceof Clearing.May may) {
      return fields
          .put("answer", "MAY")
          .put("first", write(may.first(), sentences))
          .put("may", may.may())
          .put("steps", may.all())
          .node();
    } else if (clearing instanceof Clearing.MayNot not) {
      return fields
          .put("answer", "MAY_NOT")
          .put("first", write(not.first(), sentences))
          .put("text", words.spelledOut(not.why().text()))
          .node();
    }
    return fields.put("answer", "NOTHING").node();
  }
}
