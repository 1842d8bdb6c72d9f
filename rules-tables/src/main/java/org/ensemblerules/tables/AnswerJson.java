package org.ensemblerules.tables;

import java.util.Objects;
import org.ensemblerules.source.Checked;
import org.ensemblerules.tables.codec.AnswerTree;
import org.ensemblerules.tables.message.AnswerKind;
import org.ensemblerules.tables.message.JsonFault;
import org.ensemblerules.tables.message.ToldAnswer;

/**
 * Reads answers back that this package's other classes wrote and somebody kept: what they said, by
 * codes, texts, days and the rows they rest on. What an answer says beside these is passed over.
 * What can be written again to the same text is read by the class that writes it: verdicts by
 * {@link VerdictJson}, what an inspection looks at by {@link CriteriaJson}, and the rules of a
 * place by {@link AdoptionJson}. Safe for use by many threads.
 *
 * @since 0.1
 */
public final class AnswerJson {
  private AnswerJson() {}

  /**
   * Reads an answer.
   *
   * @param question what was asked; not null
   * @param sourceName the name of the text, for faults; not null
   * @param json the text, at most 67,108,864 characters; not null
   * @return what was answered, or every fault with its place; never null
   */
  public static Checked<ToldAnswer, JsonFault> read(
      AnswerKind question, String sourceName, String json) {
    Objects.requireNonNull(question, "question");
    Objects.requireNonNull(sourceName, "sourceName");
    Objects.requireNonNull(json, "json");
    return AnswerTree.read(question, sourceName, json);
  }
}
