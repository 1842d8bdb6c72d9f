package org.ensemblerules.shipped;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.ensemblerules.GearRules;
import org.ensemblerules.defect.DefectKind;
import org.ensemblerules.defect.DefectRow;
import org.ensemblerules.defect.Extent;
import org.ensemblerules.defect.Finding;
import org.ensemblerules.defect.FindingId;
import org.ensemblerules.defect.Grade;
import org.ensemblerules.effect.Check;
import org.ensemblerules.effect.CheckRow;
import org.ensemblerules.effect.Credential;
import org.ensemblerules.effect.CredentialScope;
import org.ensemblerules.effect.Doer;
import org.ensemblerules.effect.Effect;
import org.ensemblerules.effect.EntityKind;
import org.ensemblerules.effect.PermissionRow;
import org.ensemblerules.effect.RepairClass;
import org.ensemblerules.effect.Task;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.LayerKind;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.gear.Part;
import org.ensemblerules.gear.Site;
import org.ensemblerules.gear.Use;
import org.ensemblerules.history.LookEvent;
import org.ensemblerules.history.Moment;
import org.ensemblerules.history.WorkEvent;
import org.ensemblerules.ruleset.RuleSet;
import org.ensemblerules.tables.OverlayJson;
import org.ensemblerules.testkit.ShippedCase;
import org.ensemblerules.testkit.ShippedGear;
import org.ensemblerules.testkit.ShippedGear.Kind;
import org.ensemblerules.testkit.ShippedWork;
import org.ensemblerules.verdict.Service;
import org.ensemblerules.verdict.Step;
import org.ensemblerules.verdict.WayBack;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What a department's trained inspector settles at the bench, and what still goes outside.
 *
 * <p>That the organization decides what is done is restated of the 2001 and the 2008 edition; which
 * wear its inspector judges and which parts it changes like for like is common practice.
 */
class InspectorsBenchTest {
  private static final RuleSet RULES = ShippedEditions.rules(ShippedEditions.EDITION_2020);
  private static final FindingId ID = new FindingId("F1");
  private static final Kind BOOTS = new Kind(ElementKind.FOOTWEAR, Use.STRUCTURAL);
  private static final Kind HELMET = new Kind(ElementKind.HELMET, Use.STRUCTURAL);
  private static final Kind COAT = new Kind(ElementKind.COAT, Use.STRUCTURAL);
  private static final Set<EntityKind> OWN = EnumSet.of(EntityKind.MEMBER, EntityKind.ORGANIZATION);

  private static MarkedDate before(int days) {
    return MarkedDate.of(ShippedGear.AS_OF.minusDays(days));
  }

  private static ShippedCase found(
      RuleSet rules, Kind kind, Site site, DefectKind defect, Extent extent) {
    return ShippedCase.fit(rules, kind)
        .with(new LookEvent.Found(new Finding(ID, site, "", defect, extent, before(20))));
  }

  private static ShippedCase worn(RuleSet rules) {
    return found(
        rules, BOOTS, Site.of(Part.SOLE), DefectKind.TREAD_WEAR, new Extent.Graded(Grade.MODERATE));
  }

  private static Doer member(CredentialScope... scopes) {
    return new Doer(
        "F. Invented",
        EntityKind.MEMBER,
        List.of(scopes).stream()
            .map(
                scope ->
                    new Credential(scope, LocalDate.of(2020, 1, 1), LocalDate.of(2030, 12, 31)))
            .toList());
  }

  private static ShippedCase passed(ShippedCase given, Check check, Doer by, int daysBefore) {
    return given.with(
        ShippedWork.passed(given.rules(), Moment.on(before(daysBefore)), check, by, Set.of(ID)));
  }

  private static List<Step> steps(ShippedCase given) {
    return ((WayBack.Steps) given.verdict().wayBack()).steps();
  }

  private static boolean byOwnPeople(ShippedCase given) {
    return steps(given).stream()
        .allMatch(step -> step.by().stream().anyMatch(doer -> OWN.contains(doer.entity())));
  }

  @Test
  void wornTreadIsJudgedByATrainedMember() {
    ShippedCase worn = worn(RULES);
    assertThat(worn.verdict().service()).isEqualTo(Service.OUT);
    assertThat(byOwnPeople(worn)).isTrue();
    assertThat(
            passed(worn, Check.INSPECTOR_EVALUATION, member(CredentialScope.INSPECT), 10)
                .verdict()
                .service())
        .isEqualTo(Service.IN);
    for (Doer nobody :
        List.of(
            member(),
            member(CredentialScope.CLEAN),
            new Doer("Untrained", EntityKind.ORGANIZATION, List.of()))) {
      assertThat(passed(worn, Check.INSPECTOR_EVALUATION, nobody, 10).verdict().service())
          .as("%s", nobody)
          .isEqualTo(Service.OUT);
    }
    assertThat(
            passed(worn, Check.EXPERT_EVALUATION, ShippedGear.trained(EntityKind.MANUFACTURER), 10)
                .verdict()
                .service())
        .isEqualTo(Service.IN);
  }

  @Test
  void aTrainedMemberIsNotMoreThanTheOrganization() {
    for (Task task : Task.values()) {
      Doer all = member(CredentialScope.values());
      boolean organization =
          RULES
              .tables()
              .permissions()
              .mayPerform(
                  ShippedGear.trained(EntityKind.ORGANIZATION),
                  task,
                  ShippedGear.element(RULES, COAT).build(),
                  ShippedGear.AS_OF)
              .granted();
      boolean wearer =
          RULES.tables().permissions().permitted(task).stream()
              .anyMatch(row -> row.entity() == EntityKind.MEMBER);
      if (RULES
          .tables()
          .permissions()
          .mayPerform(all, task, ShippedGear.element(RULES, COAT).build(), ShippedGear.AS_OF)
          .granted()) {
        assertThat(organization || wearer).as("%s", task).isTrue();
      }
    }
  }

  /** Each of these went outside before. */
  @ParameterizedTest
  @CsvSource({
    "FOOTWEAR, SOLE, , TREAD_WEAR, SEVERE",
    "FOOTWEAR, WHOLE_ELEMENT, , LEAK, ",
    "FOOTWEAR, FOOTWEAR_UPPER, , LOST_WATER_RESISTANCE, ",
    "COAT, FABRIC, OUTER_SHELL, DISCOLORATION, HELD",
    "COAT, FABRIC, MOISTURE_BARRIER, LEAK, ",
    "COAT, SEAM_MINOR, OUTER_SHELL, LOOSE_SEAM, ",
    "COAT, WHOLE_ELEMENT, LINER_SYSTEM, DETACHED, ",
    "HELMET, HELMET_SHELL, , ABRASION, MODERATE",
    "HELMET, FACESHIELD, , SCRATCHES_LIMITING_SIGHT, ",
    "HELMET, GOGGLES, , LOST_ELASTICITY, ",
    "HELMET, RETENTION_SYSTEM, , MISSING, ",
    "HELMET, EAR_COVERS, , BROKEN_STITCHING, ",
    "HELMET, EAR_COVERS, , TEAR, ",
    "GLOVES, SEAM, , LOOSE_SEAM, ",
    "HOOD, SEAM, , LOOSE_SEAM, "
  })
  void isBroughtBackByTheDepartmentsOwnPeople(
      ElementKind element, Part part, LayerKind layer, DefectKind defect, Grade grade) {
    ShippedCase given =
        found(RULES, new Kind(element, Use.STRUCTURAL), site(part, layer), defect, extent(grade));
    assertThat(given.verdict().service()).isEqualTo(Service.OUT);
    assertThat(byOwnPeople(given)).as("%s", steps(given)).isTrue();
  }

  /** Mending a barrier, radiant reflective wear, impact, wide heat damage, identity. */
  @ParameterizedTest
  @CsvSource({
    "COAT, STRUCTURAL, FABRIC, MOISTURE_BARRIER, TEAR, SLIGHT",
    "COAT, STRUCTURAL, SEAM_TAPE, MOISTURE_BARRIER, LIFTING_TAPE, ",
    "COAT, PROXIMITY, REFLECTIVE_SURFACE, OUTER_SHELL, ABRASION, SLIGHT",
    "HELMET, STRUCTURAL, WHOLE_ELEMENT, , HELMET_STRUCK, NO_MARK",
    "HELMET, STRUCTURAL, HELMET_SHELL, , DENT, ",
    "HELMET, STRUCTURAL, HELMET_SHELL, , BUBBLING, ",
    "HELMET, STRUCTURAL, FACESHIELD, , MELTING, ",
    "COAT, STRUCTURAL, WHOLE_ELEMENT, , EXTREME_HEAT_EXPOSURE, ",
    "COAT, STRUCTURAL, FABRIC, OUTER_SHELL, CHARRING, GAVE_WAY",
    "COAT, STRUCTURAL, WHOLE_ELEMENT, , MISMATCH_OF_ASSEMBLY, "
  })
  void stillGoesOutside(
      ElementKind element, Use use, Part part, LayerKind layer, DefectKind defect, Grade grade) {
    ShippedCase given =
        found(RULES, new Kind(element, use), site(part, layer), defect, extent(grade));
    assertThat(byOwnPeople(given)).as("%s", steps(given)).isFalse();
  }

  private static Site site(Part part, LayerKind layer) {
    return layer == null ? Site.of(part) : Site.of(part, layer);
  }

  private static Extent extent(Grade grade) {
    return grade == null ? new Extent.NotMeasured() : new Extent.Graded(grade);
  }

  @Test
  void aFaceshieldIsChangedByWhoeverIsTrainedForBasicRepairs() {
    ShippedCase scratched =
        found(
            RULES,
            HELMET,
            Site.of(Part.FACESHIELD),
            DefectKind.SCRATCHES_LIMITING_SIGHT,
            new Extent.NotMeasured());
    Moment day = Moment.on(before(10));
    Doer trained = member(CredentialScope.BASIC_REPAIR);
    assertThat(
            scratched
                .with(new WorkEvent.Repaired(day, RepairClass.BASIC, true, trained, Set.of(ID)))
                .verdict()
                .service())
        .isEqualTo(Service.IN);
    for (WorkEvent.Repaired not :
        List.of(
            new WorkEvent.Repaired(day, RepairClass.BASIC, false, trained, Set.of(ID)),
            new WorkEvent.Repaired(day, RepairClass.BASIC, true, member(), Set.of(ID)))) {
      assertThat(scratched.with(not).verdict().service()).isEqualTo(Service.OUT);
    }
  }

  @Test
  void aLeakingBarrierIsNotTalkedTight() {
    ShippedCase leaking =
        found(
            RULES,
            COAT,
            Site.of(Part.FABRIC, LayerKind.MOISTURE_BARRIER),
            DefectKind.LEAK,
            new Extent.NotMeasured());
    Doer inspector = ShippedGear.trained(EntityKind.ORGANIZATION);
    ShippedCase judged = passed(leaking, Check.INSPECTOR_EVALUATION, inspector, 10);
    assertThat(judged.verdict().service()).isEqualTo(Service.OUT);
    assertThat(judged.verdict().actions())
        .extracting(action -> action.effect().text())
        .containsExactly("EVALUATE by LINER_INSPECTION on ELEMENT");
  }

  @Test
  void aDepartmentMaySendMoreOut() {
    String head =
        """
        {"overlay": "STRICT", "kind": "DEPARTMENT_POLICY", "title": "Sent out (invented)",
         "reviewedThrough": "2027-12-31",
        """;
    String basis = "\"basis\": {\"kind\": \"COMMON_PRACTICE\"}";
    String forbidden =
        head
            + "\"forbidden\": [{\"key\": \"we-do-not\", \"task\": \"INSPECTOR_EVALUATION\","
            + " \"entities\": [\"ORGANIZATION\"], "
            + basis
            + "}]}";
    ShippedCase worn = worn(laid(forbidden));
    assertThat(byOwnPeople(worn)).isFalse();
    assertThat(
            passed(worn, Check.INSPECTOR_EVALUATION, member(CredentialScope.INSPECT), 10)
                .verdict()
                .service())
        .as("what its trained people may not do, a trained member may not")
        .isEqualTo(Service.OUT);
    String row =
        head
            + "\"defects\": [{\"key\": \"tread-out\", \"elements\": [\"FOOTWEAR\"], \"uses\":"
            + " [\"STRUCTURAL\"], \"sites\": [\"SOLE\"], \"defects\": [\"TREAD_WEAR\"], \"extent\":"
            + " {\"kind\": \"GRADE\", \"grades\": [\"MODERATE\"]}, \"effect\": {\"kind\":"
            + " \"EVALUATE\", \"check\": \"EXPERT_EVALUATION\", \"scope\": \"PART\"}, \"wording\":"
            + " \"Sent out.\", "
            + basis
            + "}]}";
    assertThat(byOwnPeople(worn(laid(row)))).isFalse();
  }

  private static RuleSet laid(String overlay) {
    return OverlayJson.lay(
            GearRules.of(RULES),
            List.of(OverlayJson.read("strict.json", overlay).orElseThrow()),
            ShippedGear.AS_OF)
        .orElseThrow()
        .rules();
  }

  /** Of the rows of the default edition that keep gear out and are not final. */
  @Test
  void howManyRowsTheOwnPeopleCanSettle() {
    long all = 0;
    long own = 0;
    for (DefectRow row : RULES.tables().defects().rows()) {
      if (row.effect().keepsOut() && !row.effect().isFinal()) {
        all++;
        own += ownPeopleSettle(row) ? 1 : 0;
      }
    }
    // A change of these numbers is a change of who may bring gear back: say so in the decisions.
    assertThat(List.of(own, all)).containsExactly(1575L, 6982L);
  }

  private static boolean ownPeopleSettle(DefectRow row) {
    return own(task(row.effect()))
        && row.afterward().stream().allMatch(check -> own(check(check).task()));
  }

  private static Task task(Effect effect) {
    return effect.task().orElseGet(() -> lastTask(((Effect.Evaluate) effect).check()));
  }

  private static Task lastTask(Check check) {
    return check(check(check).lastWord()).task();
  }

  private static CheckRow check(Check check) {
    return RULES.tables().checks().row(check);
  }

  private static boolean own(Task task) {
    return RULES.tables().permissions().permitted(task).stream()
        .map(PermissionRow::entity)
        .anyMatch(OWN::contains);
  }
}
