package org.ensemblerules.tables.message;

import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.ensemblerules.GearRules;
import org.ensemblerules.record.FileReport;
import org.ensemblerules.record.RecordFile;
import org.ensemblerules.record.RetentionPolicy;
import org.ensemblerules.record.SaleParty;

/**
 * What is known of a file.
 *
 * @param file the file; not null
 * @param asOf the day it is checked for; not null
 * @param report what it has and what it lacks; not null
 * @param notices how long each of its notices must be kept; not null
 * @param keptThrough through which day its owner keeps it after its end; empty if nobody says
 * @since 0.1
 */
public record RecordFileAnswer(
    RecordFile file,
    LocalDate asOf,
    FileReport report,
    List<KeptNotice> notices,
    Optional<LocalDate> keptThrough) {
  /** Copies the list. */
  public RecordFileAnswer {
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
  public static RecordFileAnswer of(
      GearRules rules, RecordFile file, LocalDate asOf, Optional<RetentionPolicy> policy) {
    return new RecordFileAnswer(
        file,
        asOf,
        rules.file(file, asOf),
        file.pfasNotices().stream()
            .map(
                notice ->
                    new KeptNotice(
                        notice,
                        rules.tables().records().pfasLaws().keepThrough(notice, SaleParty.BUYER)))
            .toList(),
        policy.flatMap(own -> own.keepThrough(file)));
  }
}
