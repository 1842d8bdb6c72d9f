package org.ensemblerules.shipped;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.ensemblerules.defect.Band;
import org.ensemblerules.defect.DefectKind;
import org.ensemblerules.defect.DefectRow;
import org.ensemblerules.defect.Demand;
import org.ensemblerules.defect.Extent;
import org.ensemblerules.defect.Finding;
import org.ensemblerules.defect.FindingId;
import org.ensemblerules.defect.Grade;
import org.ensemblerules.defect.GradeScale;
import org.ensemblerules.effect.Effect;
import org.ensemblerules.gear.Element;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.LayerKind;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.gear.Part;
import org.ensemblerules.gear.Site;
import org.ensemblerules.gear.Use;
import org.ensemblerules.measure.Quantity;
import org.ensemblerules.measure.Unit;
import org.ensemblerules.ruleset.RuleSet;
import org.ensemblerules.source.OriginId;
import org.ensemblerules.testkit.ShippedCase;
import org.ensemblerules.testkit.ShippedGear;
import org.ensemblerules.testkit.ShippedGear.Kind;
import org.ensemblerules.verdict.Reason;
import org.ensemblerules.verdict.ReasonKind;
import org.ensemblerules.verdict.Service;
import org.ensemblerules.verdict.Verdict;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** A size is an answer, also where the rows tell damage by how far it goes. */
class MeasuredSizesTest {
  private static final RuleSet RULES = ShippedEditions.rules(ShippedEditions.EDITION_2020);
  private static final FindingId ID = new FindingId("F1");
  private static final List<Extent> SIZES =
      List.of(
          new Extent.Length(Quantity.of("12", Unit.MILLIMETER)),
          new Extent.Area(Quantity.of("3", Unit.SQUARE_CENTIMETER)),
          new Extent.Count(2));

  static List<OriginId> editions() {
    return ShippedEditions.WITH_INSPECTION;
  }

  private static Finding finding(Site site, DefectKind defect, Extent extent) {
    return new Finding(ID, site, "", defect, extent, MarkedDate.of(ShippedGear.AS_OF));
  }

  /** Before, a tear of 12 mm was refused: it had to be told by grade. */
  @Test
  void aTearThatWasMeasuredAsksForTheStrictestShortOfRetirementAndSaysSo() {
    Verdict verdict =
        ShippedCase.fit(RULES, new Kind(ElementKind.COAT, Use.STRUCTURAL))
            .with(
                finding(Site.of(Part.FABRIC, LayerKind.OUTER_SHELL), DefectKind.TEAR, SIZES.get(0)))
            .verdict();
    assertThat(verdict.service()).isEqualTo(Service.OUT);
    Reason reason = verdict.reasons().get(0);
    assertThat(verdict.reasons()).hasSize(1);
    assertThat(reason.kind()).isEqualTo(ReasonKind.RULE);
    assertThat(reason.effect().text()).isEqualTo("EVALUATE by EXPERT_EVALUATION on LAYER");
    assertThat(reason.seen())
        .startsWith("TEAR at FABRIC@OUTER_SHELL, 12 mm; no row says what this size calls for")
        .contains("SLIGHT (seen only when looked for closely)");
  }

  @ParameterizedTest
  @MethodSource("editions")
  void everyGradedPlaceTakesSizes(OriginId edition) {
    RuleSet rules = ShippedEditions.rules(edition);
    List<String> wrong = new ArrayList<>();
    int places = 0;
    for (DefectRow row : rules.tables().defects().rows()) {
      boolean graded =
          row.band() instanceof Band.Grades grades && grades.scale() == GradeScale.SEVERITY;
      if (!graded) {
        continue;
      }
      places++;
      List<DefectRow> bands =
          rules.tables().defects().bands(row.element(), row.use(), row.site(), row.defect());
      Element element = ShippedGear.element(rules, new Kind(row.element(), row.use())).build();
      for (Extent size : SIZES) {
        Set<Effect> asked = new LinkedHashSet<>();
        Demand.of(
                finding(row.site(), row.defect(), size),
                element,
                rules.tables().anatomy(),
                rules.tables().defects())
            .forEach(demand -> asked.add(demand.effect()));
        if (asked.size() != 1 || !isStrictest(asked.iterator().next(), bands)) {
          wrong.add(row.key() + " " + size + ": " + asked);
        }
      }
    }
    assertThat(wrong).isEmpty();
    assertThat(places).isGreaterThan(100);
  }

  private static boolean isStrictest(Effect asked, List<DefectRow> bands) {
    return asked.keepsOut()
        && !(asked instanceof Effect.Retire)
        && bands.stream()
            .map(DefectRow::effect)
            .filter(effect -> !(effect instanceof Effect.Retire))
            .noneMatch(effect -> asked.against(effect).isLess());
  }

  @Test
  void gradesAreDefinedWhereTheyAreReadAndWritten() throws IOException {
    Path root = Path.of("..");
    String schema =
        Files.readString(
            root.resolve(
                "rules-tables/src/main/resources/org/ensemblerules/tables/schema/"
                    + "vocabulary.schema.json"));
    String page = Files.readString(root.resolve("docs/tables/defects.md"));
    for (Grade grade : Grade.values()) {
      assertThat(schema).contains(grade + ": " + grade.meaning());
      assertThat(page).contains(grade.meaning());
    }
  }
}
