package org.ensemblerules.dmn;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.StringReader;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.ensemblerules.defect.DefectKind;
import org.ensemblerules.defect.DefectRow;
import org.ensemblerules.defect.DefectTable;
import org.ensemblerules.defect.Extent;
import org.ensemblerules.defect.Ruling;
import org.ensemblerules.gear.AnatomyRow;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.Site;
import org.ensemblerules.gear.Use;
import org.ensemblerules.measure.Quantity;
import org.ensemblerules.ruleset.Tables;
import org.ensemblerules.tables.ShippedRules;
import org.ensemblerules.testkit.ShippedExtents;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestReporter;
import org.kie.dmn.api.core.DMNContext;
import org.kie.dmn.api.core.DMNModel;
import org.kie.dmn.api.core.DMNResult;
import org.kie.dmn.api.core.DMNRuntime;
import org.kie.dmn.core.internal.utils.DMNRuntimeBuilder;
import org.kie.internal.io.ResourceFactory;

/**
 * The tables of defects against a general-purpose decision engine, the DMN engine of Apache KIE
 * (org.kie:kie-dmn-core 10.1.0), on every part, defect and extent of one kind of element.
 */
class DmnAgreementTest {
  private static final ElementKind KIND = ElementKind.GLOVES;

  @Test
  void anEngineThatKnowsOnlyTheExportedTableAnswersAlike(TestReporter report) {
    Tables tables = ShippedRules.standard().tables();
    List<DefectRow> rows =
        tables.defects().rows().stream()
            .filter(row -> row.element() == KIND && row.use() == Use.STRUCTURAL)
            .toList();
    DMNRuntime engine = engine(DmnExport.of(rows));
    DMNModel model = engine.getModel(DmnExport.NAMESPACE, DmnExport.MODEL);
    assertThat(model.hasErrors()).as("%s", model.getMessages()).isFalse();
    List<Extent> extents = ShippedExtents.of(tables.defects());
    List<String> wrong = new ArrayList<>();
    long combinations = 0;
    for (AnatomyRow place : tables.anatomy().of(KIND, Use.STRUCTURAL)) {
      for (DefectKind defect : DefectKind.values()) {
        for (Extent extent : extents) {
          List<String> expected = library(tables.defects(), place.site(), defect, extent);
          List<String> answered = answer(engine, model, place.site(), defect, extent);
          if (!answered.equals(expected)) {
            wrong.add(
                place.site() + " " + defect + " " + extent + ": " + answered + ", not " + expected);
          }
          combinations++;
        }
      }
    }
    assertThat(wrong).isEmpty();
    assertThat(combinations).isGreaterThan(10_000);
    report.publishEntry("combinations on which a DMN engine agrees", Long.toString(combinations));
  }

  @Test
  void theEngineTellsARowThatWasChanged() {
    List<DefectRow> rows =
        ShippedRules.standard().tables().defects().rows().stream()
            .filter(row -> row.element() == KIND && row.use() == Use.STRUCTURAL)
            .toList();
    DefectRow dropped = rows.get(0);
    DMNRuntime engine = engine(DmnExport.of(rows.subList(1, rows.size())));
    DMNModel model = engine.getModel(DmnExport.NAMESPACE, DmnExport.MODEL);
    Tables tables = ShippedRules.standard().tables();
    assertThat(ShippedExtents.of(tables.defects()))
        .filteredOn(dropped.band()::holds)
        .isNotEmpty()
        .allSatisfy(
            extent ->
                assertThat(answer(engine, model, dropped.site(), dropped.defect(), extent))
                    .isNotEqualTo(
                        library(tables.defects(), dropped.site(), dropped.defect(), extent)));
  }

  private static DMNRuntime engine(String xml) {
    return DMNRuntimeBuilder.fromDefaults()
        .buildConfiguration()
        .fromResources(List.of(ResourceFactory.newReaderResource(new StringReader(xml))))
        .getOrElseThrow(IllegalStateException::new);
  }

  /** The key of the row that applies; else by what must be measured; else nothing. */
  private static List<String> library(
      DefectTable table, Site site, DefectKind defect, Extent extent) {
    Ruling ruling = table.ruling(KIND, Use.STRUCTURAL, site, defect, extent);
    if (ruling instanceof Ruling.Covered covered) {
      return List.of(covered.row().key().value());
    }
    return ruling instanceof Ruling.MustMeasure measure
        ? List.of(site + " " + defect + " " + measure.by())
        : List.of();
  }

  private static List<String> answer(
      DMNRuntime engine, DMNModel model, Site site, DefectKind defect, Extent extent) {
    DMNContext context = engine.newContext();
    Map<String, Object> inputs = new HashMap<>();
    DmnExport.INPUTS.forEach(input -> inputs.put(input, null));
    inputs.put("site", site.toString());
    inputs.put("defect", defect.name());
    if (extent instanceof Extent.Length length) {
      inputs.put("length", millimetres(length.length()));
    } else if (extent instanceof Extent.Area area) {
      inputs.put("area", millimetres(area.area()));
    } else if (extent instanceof Extent.Count count) {
      inputs.put("count", BigDecimal.valueOf(count.count()));
    } else if (extent instanceof Extent.Graded graded) {
      inputs.put("grade", graded.grade().name());
    }
    inputs.forEach(context::set);
    List<String> rows = answers(engine.evaluateByName(model, context, "rows that apply"));
    return rows.isEmpty() ? answers(engine.evaluateByName(model, context, "extent told by")) : rows;
  }

  private static List<String> answers(DMNResult result) {
    Object found =
        result.getDecisionResults().stream()
            .map(each -> each.getResult())
            .filter(List.class::isInstance)
            .findFirst()
            .orElse(List.of());
    return ((List<?>) found).stream().map(String::valueOf).toList();
  }

  /** By factors of its own: 1 in is 25.4 mm. */
  private static BigDecimal millimetres(Quantity quantity) {
    return quantity
        .value()
        .multiply(
            new BigDecimal(
                switch (quantity.unit()) {
                  case MILLIMETRE, SQUARE_MILLIMETRE -> "1";
                  case CENTIMETRE -> "10";
                  case SQUARE_CENTIMETRE -> "100";
                  case METRE -> "1000";
                  case INCH -> "25.4";
                  case SQUARE_INCH -> "645.16";
                  default -> throw new IllegalStateException("no length or area: " + quantity);
                }));
  }
}
