package org.ensemblerules.audit.json;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.ensemblerules.audit.soundness.AuditReport;
import org.ensemblerules.source.Checked;
import org.ensemblerules.source.OriginId;
import org.ensemblerules.tables.codec.VerdictReader;
import org.ensemblerules.tables.json.JsonLine;
import org.ensemblerules.tables.json.JsonReader;
import org.ensemblerules.tables.message.JsonFault;

/**
 * Writes and reads whether rules are sound, in the form of {@code audit-answer.schema.json} among
 * the schemas of the tables. Safe for use by many threads.
 *
 * @since 0.1
 */
public final class AuditJson {
  private static final int LONGEST = 64 * 1024 * 1024;
  private static final JsonReader READER = VerdictReader.reader(LONGEST);

  private AuditJson() {}

  /**
   * What an audit of a set came to.
   *
   * @param edition the edition of the set; empty for a set that cannot be loaded; not null
   * @param overlays the names of the overlays laid over it; not null
   * @param report the report; not null
   */
  public record Answer(Optional<OriginId> edition, List<String> overlays, AuditReport report) {
    /** Copies the list. */
    public Answer {
      Objects.requireNonNull(edition, "edition");
      overlays = List.copyOf(overlays);
      Objects.requireNonNull(report, "report");
    }
  }

  /**
   * Writes the report of a set.
   *
   * @param answer the report, and of what; not null
   * @return one line of JSON without a line end, its fields in a fixed order; never null
   */
  public static String write(Answer answer) {
    return JsonLine.of(AuditTree.write(Objects.requireNonNull(answer, "answer")));
  }

  /**
   * Reads a report that was written. It lists the faults before the notes; writing it again gives
   * the same text. A text that contradicts itself, such as sound above a fault, is refused.
   *
   * @param sourceName the name of the text, for faults; not null
   * @param json the text, at most 67,108,864 characters; not null
   * @return the report, or every fault with its place; never null
   */
  public static Checked<Answer, JsonFault> read(String sourceName, String json) {
    Objects.requireNonNull(sourceName, "sourceName");
    Objects.requireNonNull(json, "json");
    return READER.read(sourceName, json, AuditTree::read);
  }
}
