package org.ensemblerules.tables.codec;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import java.util.Optional;
import org.ensemblerules.history.InspectionOnRecord;
import org.ensemblerules.source.Row;
import org.ensemblerules.verdict.Action;
import org.ensemblerules.verdict.AuthorityDecision;
import org.ensemblerules.verdict.Caution;
import org.ensemblerules.verdict.Reason;
import org.ensemblerules.verdict.Step;
import org.ensemblerules.verdict.StillOpen;
import org.ensemblerules.verdict.TaskDue;
import org.ensemblerules.verdict.Verdict;
import org.ensemblerules.verdict.WayBack;
import org.ensemblerules.words.Words;

/** Writes verdicts, with all the text they need to be read without the tables. */
public final class VerdictTree {
  private VerdictTree() {}

  /** Writes a verdict. */
  public static JsonNode write(Verdict verdict) {
    return fields(verdict).node();
  }

  /** Writes a verdict with each row that was read to reach it. */
  public static JsonNode write(Verdict verdict, List<Row> trace) {
    return fields(verdict).list("trace", trace, RowJson::name).node();
  }

  /** Writes a verdict and, once more, what it says in words. */
  public static JsonNode write(Verdict verdict, Words words) {
    return fields(verdict).put("words", SentencesTree.write(verdict, words)).node();
  }

  private static Fields fields(Verdict verdict) {
    return new Fields()
        .put("element", ElementJson.named(verdict.element()).node())
        .put("asOf", verdict.asOf())
        .put("service", verdict.service())
        .put("headline", verdict.headline())
        .known("goesTo", verdict.goesTo(), EffectJson::write)
        .list("outBecause", verdict.outBecause())
        .list("actions", verdict.actions(), VerdictTree::write)
        .list("handling", verdict.handling())
        .list("reasons", verdict.reasons(), VerdictTree::write)
        .list("checksNotDone", verdict.checksNotDone())
        .list("openFindings", verdict.openFindings(), VerdictTree::write)
        .put("wayBack", write(verdict.wayBack()))
        .list("ages", verdict.ages(), AgeJson::write)
        .some("inspections", verdict.inspections(), VerdictTree::write)
        .list("due", verdict.due(), VerdictTree::write)
        .some("authority", verdict.authority(), VerdictTree::write)
        .list("cautions", verdict.cautions(), VerdictTree::write)
        .put("rules", IdentityJson.write(verdict.identity()));
  }

  public static JsonNode write(Action action) {
    Fields fields =
        new Fields()
            .put("effect", EffectJson.write(action.effect()))
            .put("target", action.target());
    return EffectJson.by(fields, action.by())
        .put("goesTo", EffectJson.write(action.goesTo()))
        .list("afterward", action.afterward())
        .node();
  }

  private static JsonNode write(Reason reason) {
    return new Fields()
        .put("kind", reason.kind())
        .put("site", reason.site())
        .known("finding", reason.finding())
        .put("seen", reason.seen())
        .put("effect", EffectJson.write(reason.effect()))
        .known("row", reason.row(), RowJson::write)
        .known("caution", reason.caution())
        .some("handling", reason.handling())
        .some("afterward", reason.afterward())
        .some("attempts", reason.attempts())
        .node();
  }

  private static JsonNode write(StillOpen open) {
    return new Fields()
        .put("finding", FindingJson.write(open.finding()))
        .put("site", open.site())
        .put("effect", EffectJson.write(open.effect()))
        .list("closedBy", open.closedBy())
        .list("attempts", open.attempts())
        .node();
  }

  private static JsonNode write(WayBack wayBack) {
    if (wayBack instanceof WayBack.Steps way) {
      return new Fields()
          .put("kind", "STEPS")
          .list("steps", way.steps(), VerdictTree::write)
          .node();
    } else if (wayBack instanceof WayBack.None none) {
      return new Fields().put("kind", "NONE").put("why", none.why()).node();
    }
    return new Fields().put("kind", "NOT_NEEDED").node();
  }

  private static JsonNode write(Step step) {
    Fields fields =
        new Fields().put("effect", EffectJson.write(step.effect())).put("target", step.target());
    return EffectJson.by(fields, step.by())
        .put("goesTo", EffectJson.write(step.goesTo()))
        .list("shown", step.shown())
        .node();
  }

  public static JsonNode write(TaskDue due) {
    Optional<JsonNode> row = due.row().map(RowJson::write);
    return new Fields()
        .put("task", due.task())
        .known("layer", due.layer())
        .known("by", due.by())
        .put("why", due.why())
        .known("grade", due.grade())
        .known("byDateOnly", due.byDateOnly())
        .known("row", row, node -> node)
        .node();
  }

  static JsonNode write(InspectionOnRecord made) {
    return new Fields()
        .put("kind", made.kind())
        .put("on", made.on())
        .known("by", made.by())
        .put("grade", made.grade())
        .put("counts", made.counts())
        .some("left", made.left())
        .some("toBring", made.toBring())
        .node();
  }

  private static JsonNode write(AuthorityDecision decided) {
    return new Fields()
        .put("on", decided.on())
        .put("authority", decided.authority())
        .put("decision", decided.decision())
        .put("why", decided.why())
        .node();
  }

  private static JsonNode write(Caution caution) {
    return new Fields().put("row", caution.row()).put("text", caution.text()).node();
  }
}
