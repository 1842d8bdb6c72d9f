package org.ensemblerules.tables;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.ensemblerules.catalog.Catalog;
import org.ensemblerules.catalog.DefectForm;
import org.ensemblerules.catalog.ElementForm;
import org.ensemblerules.catalog.SiteForm;
import org.ensemblerules.defect.DefectKind;
import org.ensemblerules.defect.DefectRow;
import org.ensemblerules.defect.ExtentKind;
import org.ensemblerules.effect.Check;
import org.ensemblerules.effect.Task;
import org.ensemblerules.gear.AnatomyRow;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.LayerKind;
import org.ensemblerules.gear.Part;
import org.ensemblerules.gear.Site;
import org.ensemblerules.gear.Use;
import org.ensemblerules.inspection.CriterionRow;
import org.ensemblerules.inspection.InspectionKind;
import org.ensemblerules.ruleset.RuleSet;
import org.ensemblerules.source.OriginId;
import org.junit.jupiter.api.Test;

class CatalogJsonTest {
  private static final RuleSet RULES = ShippedRules.standard().rules();
  private static final Catalog CATALOG = Catalog.of(RULES);

  @Test
  void eachRowOfPartsDefectsAndCriteriaCanBeEntered() {
    Set<Object> entered = new HashSet<>();
    for (ElementForm element : CATALOG.elements()) {
      for (SiteForm site : element.sites()) {
        entered.add(element.kind() + " " + element.use() + " " + site.site());
        site.defects().forEach(defect -> entered.addAll(defect.rows()));
      }
      element.criteria().values().forEach(entered::addAll);
    }
    for (DefectRow row : RULES.tables().defects().rows()) {
      assertThat(entered).contains(row);
    }
    for (CriterionRow row : RULES.tables().criteria().rows()) {
      assertThat(entered).contains(row);
    }
    for (AnatomyRow row : RULES.tables().anatomy().rows()) {
      assertThat(entered).contains(row.element() + " " + row.use() + " " + row.site());
    }
  }

  @Test
  void aCoatsFormTellsHowItsDefectsAreMeasured() {
    ElementForm coat = CATALOG.element(ElementKind.COAT, Use.STRUCTURAL).orElseThrow();
    assertThat(coat.layers()).contains(LayerKind.OUTER_SHELL, LayerKind.MOISTURE_BARRIER);
    SiteForm shell =
        coat.sites().stream()
            .filter(each -> each.site().equals(Site.of(Part.FABRIC, LayerKind.OUTER_SHELL)))
            .findFirst()
            .orElseThrow();
    assertThat(shell.defects())
        .filteredOn(each -> each.defect() == DefectKind.TEAR)
        .singleElement()
        .satisfies(tear -> assertThat(tear.measured()).isEqualTo(measured(DefectKind.TEAR)));
    assertThat(coat.criteria().get(InspectionKind.ADVANCED)).hasSizeGreaterThan(20);
    assertThat(CATALOG.element(ElementKind.SHROUD, Use.STRUCTURAL)).isEmpty();
  }

  private static ExtentKind measured(DefectKind defect) {
    return RULES
        .tables()
        .defects()
        .bands(
            ElementKind.COAT, Use.STRUCTURAL, Site.of(Part.FABRIC, LayerKind.OUTER_SHELL), defect)
        .get(0)
        .band()
        .kind();
  }

  @Test
  void whatIsToldByAGradeHasGradesAndNothingElseHas() {
    CATALOG.elements().stream()
        .flatMap(element -> element.sites().stream())
        .flatMap(site -> site.defects().stream())
        .forEach(
            defect ->
                assertThat(defect.grades().isEmpty())
                    .as(defect.toString())
                    .isEqualTo(defect.measured() != ExtentKind.GRADE));
    assertThat(
            CATALOG.elements().stream()
                .flatMap(element -> element.sites().stream())
                .flatMap(site -> site.defects().stream())
                .map(DefectForm::measured)
                .collect(Collectors.toSet()))
        .contains(ExtentKind.PRESENCE, ExtentKind.LENGTH, ExtentKind.GRADE);
  }

  @Test
  void theJsonIsWhatItsSchemaSaysForEachEdition() throws IOException {
    for (OriginId edition : List.of(ShippedRules.DEFAULT_EDITION, new OriginId("NFPA_1851_2008"))) {
      RuleSet rules = ShippedRules.of(edition).orElseThrow().rules();
      String json = CatalogJson.write(Catalog.of(rules), ShippedWords.english());
      assertThat(TableSchemas.objections("catalog", json)).isEmpty();
    }
    JsonNode tree = new ObjectMapper().readTree(CatalogJson.write(CATALOG, ShippedWords.english()));
    assertThat(tree.get("checks")).hasSize(Check.values().length);
    assertThat(tree.get("doers")).hasSize(Task.values().length);
    assertThat(tree.at("/words/defectKind/BURN_HOLE/label").textValue()).isEqualTo("burn hole");
    assertThat(tree.at("/units/LENGTH").toString()).contains("\"mm\"", "\"in\"");
  }
}
