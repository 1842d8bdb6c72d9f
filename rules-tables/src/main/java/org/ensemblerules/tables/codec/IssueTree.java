package org.ensemblerules.tables.codec;

import com.fasterxml.jackson.databind.JsonNode;
import org.ensemblerules.fleet.Readiness;
import org.ensemblerules.fleet.ReadyCount;
import org.ensemblerules.issue.Delivery;
import org.ensemblerules.issue.DeliveryLine;
import org.ensemblerules.issue.IssueAnswer;
import org.ensemblerules.issue.NoticeAnswer;
import org.ensemblerules.issue.NoticedElement;
import org.ensemblerules.issue.Objection;
import org.ensemblerules.tables.message.NoticeEffect;
import org.ensemblerules.words.Sentences;
import org.ensemblerules.words.Words;

/** The JSON form of what may be issued, what a delivery lacks, and what notices do. */
public final class IssueTree {
  private IssueTree() {}

  /** Writes whether an element may be issued. */
  public static JsonNode write(IssueAnswer answer, Words words) {
    Sentences sentences = new Sentences(words);
    return new Fields()
        .put("element", ElementJson.named(answer.element()).node())
        .put("member", answer.member().name())
        .put("mayBeIssued", answer.mayBeIssued())
        .list("against", answer.against(), each -> write(each, sentences))
        .node();
  }

  private static JsonNode write(Objection against, Sentences sentences) {
    return new Fields().put("code", against.kind()).put("text", sentences.of(against)).node();
  }

  /** Writes what of a delivery can be accepted. */
  public static JsonNode write(Delivery delivery, Words words) {
    Sentences sentences = new Sentences(words);
    return new Fields()
        .put("order", OrderTree.write(delivery.order()))
        .put("asOrdered", delivery.isAsOrdered())
        .list("elements", delivery.lines(), line -> write(line, sentences))
        .put("missing", OrderTree.counts(delivery.missing()))
        .node();
  }

  private static JsonNode write(DeliveryLine line, Sentences sentences) {
    return new Fields()
        .put("element", ElementJson.named(line.element()).node())
        .put("accepted", line.isAccepted())
        .list("against", line.discrepancies(), each -> write(each, sentences))
        .node();
  }

  /** Writes what notices do. */
  public static JsonNode write(NoticeEffect effect, Words words) {
    Sentences sentences = new Sentences(words);
    return new Fields()
        .list("notices", effect.notices(), NoticeTree::write)
        .list("touched", effect.touched(), each -> write(each, sentences))
        .put("before", write(effect.before()))
        .put("after", write(effect.after()))
        .node();
  }

  private static JsonNode write(NoticedElement noticed, Sentences sentences) {
    Fields fields = new Fields().put("element", ElementJson.named(noticed.element()).node());
    return WhereaboutsTree.where(fields, noticed.whereabouts())
        .put("without", noticed.without())
        .put("goesTo", EffectJson.write(noticed.goesTo()))
        .list("notices", noticed.notices(), each -> write(each, sentences))
        .node();
  }

  private static JsonNode write(NoticeAnswer answer, Sentences sentences) {
    return new Fields()
        .put("notice", answer.notice().id())
        .put("touched", answer.touched())
        .put("text", sentences.of(answer.objection()))
        .node();
  }

  private static JsonNode write(Readiness ready) {
    return new Fields()
        .put("in", ready.counts().values().stream().mapToLong(ReadyCount::in).sum())
        .put("out", ready.counts().values().stream().mapToLong(ReadyCount::out).sum())
        .put("sets", ready.members().size())
        .put("usable", ready.members().size() - ready.notReady().size())
        .node();
  }
}
