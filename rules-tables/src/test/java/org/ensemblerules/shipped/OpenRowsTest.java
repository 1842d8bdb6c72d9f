package org.ensemblerules.shipped;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.ensemblerules.GearRules;
import org.ensemblerules.defect.Admitted;
import org.ensemblerules.defect.Approval;
import org.ensemblerules.defect.DefectKind;
import org.ensemblerules.defect.DefectRow;
import org.ensemblerules.defect.DefectTable;
import org.ensemblerules.defect.Demand;
import org.ensemblerules.defect.Extent;
import org.ensemblerules.defect.Finding;
import org.ensemblerules.defect.FindingId;
import org.ensemblerules.defect.Grade;
import org.ensemblerules.effect.Check;
import org.ensemblerules.effect.Effect;
import org.ensemblerules.effect.RepairClass;
import org.ensemblerules.fieldcheck.Applicability;
import org.ensemblerules.gear.Element;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.LayerKind;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.gear.Part;
import org.ensemblerules.gear.Site;
import org.ensemblerules.gear.Use;
import org.ensemblerules.ruleset.RuleSet;
import org.ensemblerules.source.OriginId;
import org.ensemblerules.source.Provenance;
import org.ensemblerules.source.RowKey;
import org.ensemblerules.tables.OverlayJson;
import org.ensemblerules.testkit.ShippedCase;
import org.ensemblerules.testkit.ShippedExtents;
import org.ensemblerules.testkit.ShippedGear;
import org.ensemblerules.testkit.ShippedGear.Kind;
import org.ensemblerules.verdict.Reason;
import org.ensemblerules.verdict.Verdict;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** What a department's own policy may decide where practice is disputed, and what it may not. */
class OpenRowsTest {
  private static final RuleSet RULES = ShippedEditions.rules(ShippedEditions.EDITION_2020);
  private static final FindingId ID = new FindingId("F1");
  private static final Kind COAT = new Kind(ElementKind.COAT, Use.STRUCTURAL);
  private static final Set<DefectKind> HEAT_OR_IMPACT =
      EnumSet.of(
          DefectKind.HELMET_STRUCK, DefectKind.CHARRING, DefectKind.BURN_HOLE, DefectKind.MELTING);

  static List<OriginId> editions() {
    return ShippedEditions.WITH_INSPECTION;
  }

  private static List<DefectRow> open(OriginId edition) {
    return ShippedEditions.rules(edition).tables().defects().rows().stream()
        .filter(DefectRow::open)
        .toList();
  }

  @Tag("slow")
  @ParameterizedTest
  @MethodSource("editions")
  void noOpenRowAdmitsLessThanItMay(OriginId edition) {
    RuleSet rules = ShippedEditions.rules(edition);
    List<String> wrong = new ArrayList<>();
    for (DefectRow row : open(edition)) {
      boolean identity = row.site().part() == Part.LABEL;
      if (identity != row.admits().isEmpty()) {
        wrong.add(row.key() + " admits " + row.admits());
      }
      Element element = ShippedGear.element(rules, new Kind(row.element(), row.use())).build();
      for (Admitted answer : row.admits()) {
        boolean basic =
            (answer.effect() instanceof Effect.Repair repair
                    && repair.repairClass() == RepairClass.BASIC)
                || (answer.effect() instanceof Effect.ReplacePart part
                    && part.repairClass() == RepairClass.BASIC);
        boolean barrier = row.site().layer().filter(LayerKind.MOISTURE_BARRIER::equals).isPresent();
        boolean judged =
            answer.effect() instanceof Effect.Evaluate
                || answer.effect() instanceof Effect.Retire
                || answer.afterward().contains(Check.ADVANCED_INSPECTION)
                || answer.afterward().contains(Check.LINER_INSPECTION);
        boolean there =
            answer.afterward().stream()
                .noneMatch(
                    check ->
                        rules.validity().applicability(check, element)
                            instanceof Applicability.NotApplicable);
        if ((basic && barrier)
            || !there
            || (HEAT_OR_IMPACT.contains(row.defect()) && (basic || !judged))) {
          wrong.add(row.key() + " admits " + answer.text());
        }
      }
    }
    assertThat(wrong).isEmpty();
  }

  /** Each answer that an open row admits stands in its place, and nothing else moves. */
  @Test
  void everyAdmittedAnswerStandsInThePlaceOfItsRow() {
    List<Extent> extents = ShippedExtents.of(RULES.tables().defects());
    int answers = 0;
    for (DefectRow row : open(ShippedEditions.EDITION_2020)) {
      Extent extent =
          extents.stream().filter(each -> row.band().holds(each)).findFirst().orElseThrow();
      Element element = ShippedGear.element(RULES, new Kind(row.element(), row.use())).build();
      Finding finding =
          new Finding(ID, row.site(), "", row.defect(), extent, MarkedDate.of(ShippedGear.AS_OF));
      for (Admitted admitted : row.admits()) {
        DefectRow answer = answer(row, admitted);
        assertThat(row.isAnsweredBy(answer)).isTrue();
        DefectTable laid =
            RULES.tables().defects().with(List.of(answer), RULES.tables().anatomy()).orElseThrow();
        assertThat(Demand.of(finding, element, RULES.tables().anatomy(), laid))
            .singleElement()
            .satisfies(demand -> assertThat(demand.row()).contains(answer));
        answers++;
      }
    }
    assertThat(answers).isGreaterThan(500);
  }

  private static DefectRow answer(DefectRow row, Admitted admitted) {
    Provenance from = row.provenance();
    return new DefectRow(
        new Provenance(
            new RowKey("answer"),
            new OriginId("POLICY"),
            from.basis(),
            from.reviewedThrough(),
            Optional.empty()),
        row.element(),
        row.use(),
        row.site(),
        row.defect(),
        row.band(),
        admitted.effect(),
        row.handling(),
        admitted.afterward(),
        false,
        List.of(),
        Optional.of(new Approval(row.key(), "the chief", LocalDate.of(2024, 1, 2))),
        "Answered.");
  }

  private static String policy(String more, String defects, String grade, String effect) {
    return """
    {"overlay": "STATION_POLICY", "kind": "DEPARTMENT_POLICY", "title": "Order 7 (invented)",
     "reviewedThrough": "2027-12-31", "defects": [{"key": "ours", %s
     "elements": ["COAT"], "uses": ["STRUCTURAL"], "sites": ["FABRIC@OUTER_SHELL"],
     "defects": [%s], "extent": {"kind": "GRADE", "grades": ["%s"]}, "effect": %s,
     "wording": "Our inspector judges it.", "basis": {"kind": "COMMON_PRACTICE"}}]}
    """
        .formatted(more, defects, grade, effect);
  }

  private static final String APPROVED =
      "\"decides\": \"shell-breach-moderate\", \"approvedBy\": \"the fire chief\","
          + " \"approvedOn\": \"2024-01-02\",";
  private static final String INSPECTOR =
      "{\"kind\": \"EVALUATE\", \"check\": \"INSPECTOR_EVALUATION\", \"scope\": \"PART\"}";

  private static Verdict torn(RuleSet rules) {
    return ShippedCase.fit(rules, COAT)
        .with(
            new Finding(
                ID,
                Site.of(Part.FABRIC, LayerKind.OUTER_SHELL),
                "",
                DefectKind.TEAR,
                new Extent.Graded(Grade.MODERATE),
                MarkedDate.of(ShippedGear.AS_OF)))
        .verdict();
  }

  private static RuleSet laid(String overlay) {
    return OverlayJson.lay(
            GearRules.of(RULES),
            List.of(OverlayJson.read("ours.json", overlay).orElseThrow()),
            ShippedGear.AS_OF)
        .orElseThrow()
        .rules();
  }

  @Test
  void theAnswerNamesThePolicyWhoApprovedItAndWhen() {
    assertThat(torn(RULES).actions())
        .extracting(action -> action.effect().text())
        .containsExactly("EVALUATE by EXPERT_EVALUATION on PART");
    Verdict verdict = torn(laid(policy(APPROVED, "\"TEAR\"", "MODERATE", INSPECTOR)));
    assertThat(verdict.actions())
        .extracting(action -> action.effect().text())
        .containsExactly("EVALUATE by INSPECTOR_EVALUATION on PART");
    assertThat(verdict.reasons())
        .flatExtracting(reason -> reason.wording().stream().toList())
        .singleElement()
        .asString()
        .contains(
            "policy STATION_POLICY, approved by the fire chief on 2024-01-02, in place of row"
                + " shell-breach-moderate/COAT/STRUCTURAL/FABRIC@OUTER_SHELL/TEAR");
  }

  @Test
  void whatNamesNoOpenRowStandsBesideIt() {
    Verdict verdict = torn(laid(policy("", "\"TEAR\"", "MODERATE", INSPECTOR)));
    assertThat(verdict.reasons())
        .extracting(Reason::effect)
        .extracting(Effect::text)
        .containsExactlyInAnyOrder(
            "EVALUATE by EXPERT_EVALUATION on PART", "EVALUATE by INSPECTOR_EVALUATION on PART");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "MODERATE|{\"kind\": \"REPAIR\", \"class\": \"BASIC\", \"scope\": \"PART\"}|one of",
        "MODERATE|{\"kind\": \"CLEAN\", \"cleaning\": \"ADVANCED\", \"scope\": \"PART\"}|",
        "MODERATE|{\"kind\": \"NOTE\"}|",
        "MODERATE|{\"kind\": \"REPAIR\", \"class\": \"ADVANCED\", \"scope\": \"PART\"}|one of",
        "SEVERE|{\"kind\": \"EVALUATE\", \"check\": \"INSPECTOR_EVALUATION\", \"scope\":"
            + " \"PART\"}|for MODERATE one of"
      })
  void anyOtherAnswerIsRefused(String grade, String effect, String allowed) {
    assertThat(refused(policy(APPROVED, "\"TEAR\"", grade, effect)))
        .anyMatch(fault -> allowed == null || fault.contains(allowed));
  }

  @Test
  void anAnswerWithoutWhoApprovedItIsRefused() {
    assertThat(
            refused(
                policy(
                    "\"decides\": \"shell-breach-moderate\",", "\"TEAR\"", "MODERATE", INSPECTOR)))
        .anyMatch(fault -> fault.contains("approvedBy"));
  }

  private static List<String> refused(String overlay) {
    try {
      laid(overlay);
      return List.of();
    } catch (RuntimeException refused) {
      return List.of(String.valueOf(refused.getMessage()));
    }
  }
}
