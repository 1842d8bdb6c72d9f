package org.ensemblerules.tables.codec;

import com.fasterxml.jackson.databind.JsonNode;
import org.ensemblerules.history.OpenFinding;
import org.ensemblerules.ruleset.Identity;
import org.ensemblerules.schedule.Due;
import org.ensemblerules.verdict.Action;
import org.ensemblerules.verdict.Caution;
import org.ensemblerules.verdict.Reason;
import org.ensemblerules.verdict.Step;
import org.ensemblerules.verdict.Verdict;
import org.ensemblerules.verdict.WayBack;

/** Writes verdicts, with all the text they need to be read without the tables. */
public final class VerdictTree {
  private VerdictTree() {}

  /** Writes a verdict. */
  public static JsonNode write(Verdict verdict) {
    return fields(verdict).node();
  }

  /** Writes a verdict with each row that was read to reach it. */
  public static JsonNode writeWithTrace(Verdict verdict) {
    return fields(verdict).list("trace", verdict.trace(), RowJson::name).node();
  }

  private static Fields fields(Verdict verdict) {
    return new Fields()
        .put("element", ElementJson.named(verdict.element()).node())
        .put("asOf", verdict.asOf())
        .put("service", verdict.service())
        .put("headline", verdict.headline())
        .list("actions", verdict.actions(), VerdictTree::write)
        .list("handling", verdict.handling())
        .list("reasons", verdict.reasons(), VerdictTree::write)
        .list("checksNotDone", verdict.checksNotDone())
        .list("openFindings", verdict.openFindings(), VerdictTree::write)
        .put("wayBack", write(verdict.wayBack()))
        .list("ages", verdict.ages(), AgeJson::write)
        .list("due", verdict.due(), VerdictTree::write)
        .list("cautions", verdict.cautions(), VerdictTree::write)
        .put("rules", write(verdict.identity()));
  }

  private static JsonNode write(Action action) {
    Fields fields =
        new Fields()
            .put("effect", EffectJson.write(action.effect()))
            .put("target", action.target());
    return EffectJson.doers(fields, action.by()).list("afterwards", action.afterwards()).node();
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
        .some("afterwards", reason.afterwards())
        .some("attempts", reason.attempts())
        .node();
  }

  private static JsonNode write(OpenFinding open) {
    return new Fields()
        .put("finding", FindingJson.write(open.finding()))
        .put("site", open.demand().site())
        .put("effect", EffectJson.write(open.demand().effect()))
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
    return EffectJson.doers(fields, step.by()).list("shown", step.shown()).node();
  }

  private static JsonNode write(Due due) {
    return new Fields()
        .put("task", due.task())
        .known("layer", due.layer())
        .known("by", due.by())
        .put("why", due.reason())
        .known("row", due.row(), RowJson::write)
        .node();
  }

  private static JsonNode write(Caution caution) {
    return new Fields().put("row", caution.row()).put("text", caution.text()).node();
  }

  private static JsonNode write(Identity identity) {
    Fields editions = new Fields();
    identity.editions().forEach((subject, edition) -> editions.put(subject.name(), edition));
    Fields revisions = new Fields();
    identity.revisions().forEach((file, revision) -> revisions.put(file, (int) revision));
    return new Fields()
        .put("editions", editions.node())
        .list("overlays", identity.overlays())
        .put("revisions", revisions.node())
        .put("form", identity.form())
        .put("fingerprint", identity.fingerprint())
        .node();
  }
}
