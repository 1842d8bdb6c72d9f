package org.ensemblerules.tables;

import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.ensemblerules.record.FileReport;
import org.ensemblerules.record.KeepAnswer;
import org.ensemblerules.record.PfasNotice;
import org.ensemblerules.record.RecordFile;
import org.ensemblerules.record.RetentionPolicy;
import org.ensemblerules.record.SaleParty;
import org.ensemblerules.ruleset.RuleSet;
import org.ensemblerules.tables.codec.FileAnswerTree;
import org.ensemblerules.tables.json.JsonLine;

/**
 * Writes whether the file of an element is complete, in the form of {@code file-answer.schema.json}
 * of this package's {@code schema} folder. Safe for use by many threads.
 */
public final class FileAnswerJson {
  private FileAnswerJson() {}

  /**
   * How long a notice must be kept.
   *
   * @param notice the notice; not null
   * @param keep how long; not null
   */
  public record Kept(PfasNotice notice, KeepAnswer keep) {
    /** Checks for nulls. */
    public Kept {
      Objects.requireNonNull(notice, "notice");
      Objects.requireNonNull(keep, "keep");
    }
  }

  /**
   * What is known of a file.
   *
   * @param file the file; not null
   * @param asOf the day it is checked for; not null
   * @param report what it has and what it lacks; not null
   * @param notices how long each of its notices must be kept; not null
   * @param keptThrough through which day its owner keeps it after its end; empty if nobody says
   */
  public record Answer(
      RecordFile file,
      LocalDate asOf,
      FileReport report,
      List<Kept> notices,
      Optional<LocalDate> keptThrough) {
    /** Copies the list. */
    public Answer {
      Objects.requireNonNull(file, "file");
      Objects.requireNonNull(asOf, "asOf");
      Objects.requireNonNull(report, "report");
      notices = List.copyOf(notices);
      Objects.requireNonNull(keptThrough, "keptThrough");
    }

    /**
     * Asks the rules.
     *
     * @param rules the rules; not null
     * @param file the file; not null
     * @param asOf the day to check for; not null
     * @param policy how long the owner keeps files; empty if the owner has not said; not null
     * @return the answer; never null
     */
    public static Answer of(
        RuleSet rules, RecordFile file, LocalDate asOf, Optional<RetentionPolicy> policy) {
      return new Answer(
          file,
          asOf,
          rules.check(file, asOf),
          file.pfasNotices().stream()
              .map(
                  notice ->
                      new Kept(
                          notice,
                          rules.tables().records().pfasLaws().keepThrough(notice, SaleParty.BUYER)))
              .toList(),
          policy.flatMap(own -> own.keepThrough(file)));
    }
  }

  /**
   * Writes the answer with all its text, so that it can be read when the tables have moved on.
   *
   * @param answer the answer; not null
   * @return one line of JSON without a line end, its fields in a fixed order; never null
   */
  public static String write(Answer answer) {
    return JsonLine.of(FileAnswerTree.write(Objects.requireNonNull(answer, "answer")));
  }
}
