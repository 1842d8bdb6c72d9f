package org.ensemblerules.javadoc;

import java.io.ByteArrayInputStream;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.ensemblerules.DepartmentRules;
import org.ensemblerules.GearRules;
import org.ensemblerules.LaboratoryRules;
import org.ensemblerules.care.CareLimitTable;
import org.ensemblerules.fleet.Figures;
import org.ensemblerules.fleet.Today;
import org.ensemblerules.issue.JudgedElement;
import org.ensemblerules.issue.KeptElement;
import org.ensemblerules.issue.SafetyNotice;
import org.ensemblerules.measure.ExactQuantity;
import org.ensemblerules.measure.Quantity;
import org.ensemblerules.measure.Unit;
import org.ensemblerules.ruleset.CareKinds;
import org.ensemblerules.schedule.Due;
import org.ensemblerules.tables.AssessmentJson;
import org.ensemblerules.tables.JsonLines;
import org.ensemblerules.tables.ShippedRules;
import org.ensemblerules.tables.ShippedTables;
import org.ensemblerules.tables.VerdictJson;
import org.ensemblerules.tables.message.JsonFault;
import org.ensemblerules.tables.set.EditionTables;
import org.ensemblerules.verdict.Assessment;
import org.ensemblerules.verdict.Service;
import org.ensemblerules.verdict.Verdict;

/** The lines that classes show, compiled. */
final class ClassExamples {
  private ClassExamples() {}

  /** Runs each of them. */
  static void run(
      Assessment coat, List<KeptElement> gear, SafetyNotice notice, LocalDate today, String json) {
    GearRules rules = ShippedRules.standard();
    door(coat, today);
    department(rules, gear, notice, today);
    laboratory(rules);
    edition();
    lines(rules, json, today);
  }

  private static void door(Assessment coat, LocalDate today) {
    // org.ensemblerules.GearRules begins
    GearRules rules = ShippedRules.standard();
    Verdict verdict = rules.assess(coat, today);
    if (verdict.service() == Service.OUT) {
      verdict.reasons().forEach(why -> System.out.println(why.seen()));
    }
    for (Due due : rules.due(coat, today)) {
      System.out.println(due.task() + due.by().map(day -> " by " + day).orElse(" now"));
    }
    // org.ensemblerules.GearRules ends
  }

  private static void department(
      GearRules rules, List<KeptElement> gear, SafetyNotice notice, LocalDate today) {
    // org.ensemblerules.DepartmentRules begins
    DepartmentRules department = rules.department(List.of(notice), today);
    List<JudgedElement> judged = gear.stream().map(department::judged).toList();
    Today lists = judged.stream().collect(department.today());
    Figures figures = judged.stream().collect(department.figures());
    // org.ensemblerules.DepartmentRules ends
    System.out.println(lists + " " + figures);
  }

  private static void laboratory(GearRules rules) {
    // org.ensemblerules.LaboratoryRules begins
    LaboratoryRules laboratory = rules.laboratory();
    ExactQuantity left =
        laboratory.retention(Quantity.of("82", Unit.NEWTON), Quantity.of("100", Unit.NEWTON));
    // org.ensemblerules.LaboratoryRules ends
    System.out.println(left);
  }

  private static void edition() {
    EditionTables edition = ShippedTables.load().orElseThrow().tables(ShippedRules.DEFAULT_EDITION);
    // org.ensemblerules.tables.set.EditionTables begins
    Optional<CareLimitTable> limits = edition.find(CareKinds.CARE_LIMITS);
    // org.ensemblerules.tables.set.EditionTables ends
    System.out.println(limits);
  }

  private static void lines(GearRules rules, String json, LocalDate asOf) {
    InputStream stream = new ByteArrayInputStream(json.getBytes(StandardCharsets.UTF_8));
    // org.ensemblerules.tables.JsonLines begins
    try (JsonLines<String> answers =
        JsonLines.of("turnouts.jsonl", stream, AssessmentJson::read)
            .map(gear -> VerdictJson.write(rules.assess(gear, asOf)))) {
      while (answers.hasNext()) {
        JsonLines.Entry<String> outcome = answers.next();
        if (outcome instanceof JsonLines.Line<String> line) {
          write(line.value());
        } else if (outcome instanceof JsonLines.BadLine<String> bad) {
          report(bad.faults());
        }
      }
    }
    // org.ensemblerules.tables.JsonLines ends
  }

  private static void write(String line) {
    System.out.println(line);
  }

  private static void report(List<JsonFault> faults) {
    faults.forEach(System.out::println);
  }
}
