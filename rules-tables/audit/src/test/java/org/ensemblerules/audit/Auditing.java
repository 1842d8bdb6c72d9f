package org.ensemblerules.audit;

import java.time.LocalDate;
import org.ensemblerules.audit.soundness.AuditReport;
import org.ensemblerules.ruleset.RuleSet;

/** The lines that the package shows, compiled. */
final class Auditing {
  private Auditing() {}

  static void run(RuleSet now, RuleSet then) {
    // The package begins
    AuditedRules rules = AuditedRules.of(now);
    AuditReport report = rules.audit(LocalDate.of(2026, 11, 25));
    report.faults().forEach(flaw -> System.out.println(flaw.kind() + ": " + flaw.found()));
    rules.changedRows(then).changes().forEach(change -> System.out.println(change.text()));
    // The package ends
  }
}
