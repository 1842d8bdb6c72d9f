package org.ensemblerules.javadoc;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.ensemblerules.DepartmentRules;
import org.ensemblerules.GearRules;
import org.ensemblerules.care.CareRoute;
import org.ensemblerules.care.Exposure;
import org.ensemblerules.catalog.ElementForm;
import org.ensemblerules.defect.DefectKind;
import org.ensemblerules.defect.DefectRow;
import org.ensemblerules.defect.Extent;
import org.ensemblerules.defect.Finding;
import org.ensemblerules.defect.FindingId;
import org.ensemblerules.effect.Check;
import org.ensemblerules.effect.Doer;
import org.ensemblerules.effect.Permission;
import org.ensemblerules.effect.Task;
import org.ensemblerules.fieldcheck.ConditionRow;
import org.ensemblerules.fleet.Figures;
import org.ensemblerules.gear.Element;
import org.ensemblerules.gear.ElementId;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.Label;
import org.ensemblerules.gear.Legibility;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.gear.Site;
import org.ensemblerules.gear.Use;
import org.ensemblerules.history.OpenFinding;
import org.ensemblerules.inspection.CriterionRow;
import org.ensemblerules.inspection.InspectionKind;
import org.ensemblerules.issue.KeptElement;
import org.ensemblerules.issue.SafetyNotice;
import org.ensemblerules.measure.ComparisonMethod;
import org.ensemblerules.measure.Quantity;
import org.ensemblerules.measure.Unit;
import org.ensemblerules.record.RecordFile;
import org.ensemblerules.repair.RepairPlan;
import org.ensemblerules.retirement.AgeAnswer;
import org.ensemblerules.ruleset.Identity;
import org.ensemblerules.schedule.Due;
import org.ensemblerules.source.Checked;
import org.ensemblerules.source.OriginId;
import org.ensemblerules.source.Row;
import org.ensemblerules.strength.DecisionRule;
import org.ensemblerules.strength.Property;
import org.ensemblerules.strength.Purpose;
import org.ensemblerules.strength.ReportJudge;
import org.ensemblerules.strength.TestMethod;
import org.ensemblerules.strength.TestReport;
import org.ensemblerules.tables.AssessmentJson;
import org.ensemblerules.tables.ShippedRules;
import org.ensemblerules.tables.ShippedTables;
import org.ensemblerules.tables.ShippedWords;
import org.ensemblerules.tables.VerdictJson;
import org.ensemblerules.tables.message.JsonFault;
import org.ensemblerules.tables.set.LoadedTables;
import org.ensemblerules.tables.set.TableRevision;
import org.ensemblerules.verdict.Assessment;
import org.ensemblerules.verdict.Service;
import org.ensemblerules.verdict.Verdict;
import org.ensemblerules.verdict.WayBack;
import org.ensemblerules.words.Sentences;

/** The examples that the descriptions of packages show, compiled. */
final class Examples {
  private Examples() {}

  /** Runs each of them. */
  static void run(
      Assessment coat,
      List<KeptElement> gear,
      Finding torn,
      Doer washer,
      SafetyNotice notice,
      String json) {
    GearRules rules = ShippedRules.standard();
    LocalDate today = LocalDate.of(2026, 11, 25);
    root(coat, today);
    care(rules, coat);
    catalog(rules);
    defect(coat, today);
    effect(rules, coat, washer, today);
    fieldcheck(rules);
    fleet(rules, gear, today);
    gear();
    history(rules, coat, today);
    inspection(rules);
    issue(rules, gear, notice, today);
    measure();
    record(rules, coat, today);
    repair(rules, coat, torn, washer, today);
    retirement(rules);
    ruleset(rules);
    schedule(rules, coat, today);
    source(rules, coat, today);
    strength(rules);
    verdict(rules, coat, today);
    words(rules, coat, today);
    tables(today, json);
    message(coat, json);
    set();
  }

  private static void root(Assessment coat, LocalDate today) {
    // org.ensemblerules begins
    GearRules rules = ShippedRules.standard();
    Verdict verdict = rules.assess(coat, today);
    boolean serves = verdict.service() == Service.IN;
    // org.ensemblerules ends
  }

  private static void care(GearRules rules, Assessment coat) {
    // org.ensemblerules.care begins
    CareRoute route = rules.care(coat.element(), Set.of(Exposure.PRODUCTS_OF_COMBUSTION));
    if (route instanceof CareRoute.Steps steps) {
      steps.steps().forEach(System.out::println);
    }
    // org.ensemblerules.care ends
  }

  private static void catalog(GearRules rules) {
    // org.ensemblerules.catalog begins
    Optional<ElementForm> form = rules.catalog().element(ElementKind.COAT, Use.STRUCTURAL);
    form.ifPresent(each -> each.sites().forEach(System.out::println));
    // org.ensemblerules.catalog ends
  }

  private static void defect(Assessment coat, LocalDate today) {
    // org.ensemblerules.defect begins
    Finding torn =
        new Finding(
            new FindingId("F-1"),
            Site.parse("FABRIC@OUTER_SHELL"),
            "left cuff",
            DefectKind.TEAR,
            new Extent.Length(Quantity.of("1.5", Unit.INCH)),
            MarkedDate.of(today));
    Assessment now =
        Assessment.builder(coat.element()).history(coat.history()).finding(torn).build();
    // org.ensemblerules.defect ends
  }

  private static void effect(GearRules rules, Assessment coat, Doer washer, LocalDate today) {
    // org.ensemblerules.effect begins
    Permission may = rules.mayPerform(washer, Task.ADVANCED_CLEANING, coat.element(), today);
    boolean permitted = may instanceof Permission.Permitted;
    // org.ensemblerules.effect ends
  }

  private static void fieldcheck(GearRules rules) {
    // org.ensemblerules.fieldcheck begins
    List<ConditionRow> conditions =
        rules.tables().conditions().conditions(Check.STRENGTH_BY_THUMBS);
    conditions.forEach(row -> System.out.println(row.condition() + ": " + row.expected()));
    // org.ensemblerules.fieldcheck ends
  }

  private static void fleet(GearRules rules, List<KeptElement> gear, LocalDate today) {
    // org.ensemblerules.fleet begins
    DepartmentRules department = rules.department(List.of(), today);
    Figures figures = gear.stream().map(department::judged).collect(department.figures());
    long out = figures.out();
    // org.ensemblerules.fleet ends
  }

  private static void gear() {
    // org.ensemblerules.gear begins
    Label label =
        Label.builder()
            .manufacturer("Maker One")
            .manufactured(MarkedDate.parse("2023-05"))
            .legibility(Legibility.READABLE)
            .build();
    Element helmet =
        Element.builder(new ElementId("H-17"), ElementKind.HELMET, Use.STRUCTURAL)
            .label(label)
            .build();
    // org.ensemblerules.gear ends
  }

  private static void history(GearRules rules, Assessment coat, LocalDate today) {
    // org.ensemblerules.history begins
    for (OpenFinding open : rules.openFindings(coat, today)) {
      System.out.println(open.effect().text());
    }
    // org.ensemblerules.history ends
  }

  private static void inspection(GearRules rules) {
    // org.ensemblerules.inspection begins
    List<CriterionRow> criteria =
        rules.criteria(InspectionKind.ADVANCED, ElementKind.COAT, Use.STRUCTURAL);
    criteria.forEach(row -> System.out.println(row.sites() + ": " + row.lookFor()));
    // org.ensemblerules.inspection ends
  }

  private static void issue(
      GearRules rules, List<KeptElement> gear, SafetyNotice notice, LocalDate today) {
    // org.ensemblerules.issue begins
    DepartmentRules department = rules.department(List.of(notice), today);
    gear.stream()
        .map(department::judged)
        .flatMap(judged -> department.touched(judged).stream())
        .forEach(touched -> System.out.println(touched.element() + ": " + touched.notices()));
    // org.ensemblerules.issue ends
  }

  private static void measure() {
    // org.ensemblerules.measure begins
    Quantity inch = Quantity.of("1", Unit.INCH);
    boolean longer = Quantity.of("25.5", Unit.MILLIMETER).compareSize(inch) > 0;
    // org.ensemblerules.measure ends
  }

  private static void record(GearRules rules, Assessment coat, LocalDate today) {
    // org.ensemblerules.record begins
    RecordFile file = RecordFile.builder(coat.element(), coat.history()).build();
    boolean complete = rules.file(file, today).complete();
    // org.ensemblerules.record ends
  }

  private static void repair(
      GearRules rules, Assessment coat, Finding torn, Doer washer, LocalDate today) {
    // org.ensemblerules.repair begins
    RepairPlan plan = rules.repair(coat.element(), List.of(torn), washer, today);
    boolean granted = plan.granted();
    // org.ensemblerules.repair ends
  }

  private static void retirement(GearRules rules) {
    // org.ensemblerules.retirement begins
    MarkedDate made = MarkedDate.parse("2017-05");
    List<AgeAnswer> answers =
        rules
            .tables()
            .ageLimits()
            .answers(ElementKind.HELMET, Use.STRUCTURAL, Optional.empty(), made);
    // org.ensemblerules.retirement ends
  }

  private static void ruleset(GearRules rules) {
    // org.ensemblerules.ruleset begins
    Identity identity = rules.identity();
    List<DefectRow> rows = rules.tables().defects().rows();
    // org.ensemblerules.ruleset ends
  }

  private static void schedule(GearRules rules, Assessment coat, LocalDate today) {
    // org.ensemblerules.schedule begins
    for (Due due : rules.due(coat, today)) {
      System.out.println(due.task() + (due.isOverdue(today) ? " is overdue" : ""));
    }
    // org.ensemblerules.schedule ends
  }

  private static void source(GearRules rules, Assessment coat, LocalDate today) {
    // org.ensemblerules.source begins
    for (Row row : rules.trace(coat, today)) {
      System.out.println(row.key() + " rests on " + row.provenance().basis());
    }
    // org.ensemblerules.source ends
  }

  private static void strength(GearRules rules) {
    OriginId edition = new OriginId("NFPA_1971_2018");
    TestReport report =
        TestReport.builder(
                ElementKind.COAT,
                Use.STRUCTURAL,
                Site.parse("FABRIC@OUTER_SHELL"),
                Property.TEAR_RESISTANCE,
                new TestMethod("ASTM_D5587"))
            .build();
    // org.ensemblerules.strength begins
    ReportJudge judge =
        rules.judge(
            new Purpose.Certification(),
            new DecisionRule.SimpleAcceptance(ComparisonMethod.absolute()));
    if (judge.judge(edition, report) instanceof ReportJudge.Judged judged) {
      System.out.println(judged.outcome());
    }
    // org.ensemblerules.strength ends
  }

  private static void verdict(GearRules rules, Assessment coat, LocalDate today) {
    // org.ensemblerules.verdict begins
    Verdict verdict = rules.assess(coat, today);
    if (verdict.wayBack() instanceof WayBack.Steps back) {
      back.steps().forEach(step -> System.out.println(step.effect().text()));
    }
    // org.ensemblerules.verdict ends
  }

  private static void words(GearRules rules, Assessment coat, LocalDate today) {
    // org.ensemblerules.words begins
    Sentences sentences = new Sentences(ShippedWords.english());
    String said = sentences.of(rules.assess(coat, today));
    // org.ensemblerules.words ends
  }

  private static void tables(LocalDate today, String json) {
    // org.ensemblerules.tables begins
    Assessment coat = AssessmentJson.read("coat C-1", json).orElseThrow();
    Verdict verdict = ShippedRules.standard().assess(coat, today);
    String line = VerdictJson.write(verdict);
    // org.ensemblerules.tables ends
  }

  private static void message(Assessment coat, String json) {
    // org.ensemblerules.tables.message begins
    Checked<Assessment, JsonFault> read = AssessmentJson.read("coat C-1", json);
    if (read instanceof Checked.Refused<Assessment, JsonFault> refused) {
      for (JsonFault fault : refused.faults()) {
        System.out.println(
            fault.pointer() + ": " + fault.found() + ", allowed: " + fault.allowed());
      }
    }
    // org.ensemblerules.tables.message ends
  }

  private static void set() {
    // org.ensemblerules.tables.set begins
    LoadedTables tables = ShippedTables.load().orElseThrow();
    for (TableRevision file : tables.revisions()) {
      System.out.println(file.file() + " is revision " + file.revision());
    }
    // org.ensemblerules.tables.set ends
  }
}
