package org.ensemblerules.audit;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.ensemblerules.GearRules;
import org.ensemblerules.audit.difference.ElementDifference;
import org.ensemblerules.audit.difference.FleetDifference;
import org.ensemblerules.audit.json.DifferenceJson;
import org.ensemblerules.audit.json.DifferenceLine;
import org.ensemblerules.audit.soundness.AuditReport;
import org.ensemblerules.audit.soundness.SetAudit;
import org.ensemblerules.audit.words.AuditWords;
import org.ensemblerules.tables.set.TableFiles;
import org.ensemblerules.verdict.Assessment;

/** The lines that the packages show, compiled. */
final class Examples {
  private Examples() {}

  static void run(GearRules now, GearRules then, Path folder, Assessment coat, LocalDate today) {
    // org.ensemblerules.audit begins
    AuditedRules rules = AuditedRules.of(now);
    AuditReport report = rules.audit(today);
    report.faults().forEach(flaw -> System.out.println(flaw.kind() + ": " + flaw.found()));
    rules.changedRows(then).changes().forEach(change -> System.out.println(change.text()));
    // org.ensemblerules.audit ends

    // org.ensemblerules.audit.soundness begins
    SetAudit.Audited files = AuditedRules.folder(TableFiles.in(folder), List.of(), today);
    files.refused().ifPresent(refused -> System.out.println(refused.faults()));
    files.editions().forEach((edition, its) -> System.out.println(edition + ": " + its.isSound()));
    // org.ensemblerules.audit.soundness ends

    // org.ensemblerules.audit.difference begins
    ElementDifference difference = rules.changedElement(then, coat, today);
    boolean changes = difference.before().service() != difference.after().service();
    // org.ensemblerules.audit.difference ends

    // org.ensemblerules.audit.words begins
    String said = AuditWords.english().labels(difference.effects());
    // org.ensemblerules.audit.words ends

    // org.ensemblerules.audit.json begins
    String line = DifferenceJson.write(DifferenceLine.ChangedElement.of(difference));
    DifferenceLine read = DifferenceJson.read("kept", line).orElseThrow();
    // org.ensemblerules.audit.json ends
    System.out.println(changes + " " + said + " " + read);
    door(now, then, coat, today);
  }

  private static void door(GearRules now, GearRules then, Assessment coat, LocalDate today) {
    // org.ensemblerules.audit.AuditedRules begins
    AuditedRules rules = AuditedRules.of(now);
    boolean sound = rules.audit(today).isSound();
    FleetDifference difference =
        rules.changedFleet(then, List.of(coat), today, each -> System.out.println(each.after()));
    // org.ensemblerules.audit.AuditedRules ends
    System.out.println(sound + " " + difference);
  }
}
