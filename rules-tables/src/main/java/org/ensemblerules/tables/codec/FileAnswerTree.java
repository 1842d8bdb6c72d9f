package org.ensemblerules.tables.codec;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Map;
import org.ensemblerules.history.Contradiction;
import org.ensemblerules.history.HolderSpan;
import org.ensemblerules.record.FileAnswer;
import org.ensemblerules.record.KeepAnswer;
import org.ensemblerules.record.RecordItem;
import org.ensemblerules.tables.message.KeptNotice;
import org.ensemblerules.tables.message.RecordFileAnswer;

/** The JSON form of what the file of an element has and what it lacks. */
public final class FileAnswerTree {
  private FileAnswerTree() {}

  /** Writes the answer. */
  public static JsonNode write(RecordFileAnswer answer) {
    return new Fields()
        .put("element", ElementJson.named(answer.file().element()).node())
        .put("asOf", answer.asOf())
        .put("complete", answer.report().complete())
        .list("items", answer.report().answers().entrySet(), FileAnswerTree::write)
        .list("inspections", answer.report().inspections(), VerdictTree::write)
        .list("contradictions", answer.report().contradictions(), FileAnswerTree::write)
        .list("holders", answer.file().history().holders(), FileAnswerTree::write)
        .list("pfasNotices", answer.notices(), FileAnswerTree::write)
        .known("keptThrough", answer.keptThrough())
        .node();
  }

  private static JsonNode write(Map.Entry<RecordItem, FileAnswer> item) {
    Fields fields = new Fields().put("item", item.getKey());
    FileAnswer answer = item.getValue();
    if (answer instanceof FileAnswer.Present present) {
      return fields.put("answer", "PRESENT").put("row", RowJson.write(present.row())).node();
    } else if (answer instanceof FileAnswer.Missing missing) {
      return fields
          .put("answer", "MISSING")
          .list("missing", missing.what())
          .put("row", RowJson.write(missing.row()))
          .node();
    } else if (answer instanceof FileAnswer.Inconsistent wrong) {
      return fields
          .put("answer", "INCONSISTENT")
          .list("contradictions", wrong.contradictions())
          .some("missing", wrong.missing())
          .put("row", RowJson.write(wrong.row()))
          .node();
    } else if (answer instanceof FileAnswer.NotYet notYet) {
      return fields
          .put("answer", "NOT_YET")
          .put("why", notYet.why())
          .put("row", RowJson.write(notYet.row()))
          .node();
    }
    return fields.put("answer", "NO_RULE").node();
  }

  private static JsonNode write(Contradiction each) {
    return new Fields()
        .put("kind", each.kind())
        .put("found", each.found())
        .put("allowed", each.allowed())
        .node();
  }

  private static JsonNode write(HolderSpan span) {
    return new Fields()
        .put("holder", span.holder())
        .put("from", span.from().date())
        .known("until", span.until().map(until -> until.date()))
        .node();
  }

  private static JsonNode write(KeptNotice kept) {
    Fields fields = new Fields().put("notice", PfasNoticeJson.write(kept.notice()));
    if (kept.keep() instanceof KeepAnswer.Through through) {
      return fields
          .put("keepThrough", through.through())
          .list("rows", through.rows(), RowJson::write)
          .node();
    }
    return fields.put("keepForNow", ((KeepAnswer.ForNow) kept.keep()).why()).node();
  }
}
