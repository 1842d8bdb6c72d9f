package org.ensemblerules.dmn;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.StringReader;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.ensemblerules.defect.DefectKind;
import org.ensemblerules.defect.DefectRow;
import org.ensemblerules.defect.DefectTable;
import org.ensemblerules.defect.Extent;
import org.ensemblerules.defect.ExtentKind;
import org.ensemblerules.defect.Ruling;
import org.ensemblerules.gear.AnatomyRow;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.Site;
import org.ensemblerules.gear.Use;
import org.ensemblerules.measure.Quantity;
import org.ensemblerules.ruleset.Tables;
import org.ensemblerules.tables.ShippedRules;
import org.ensemblerules.testkit.ShippedExtents;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestReporter;
import org.kie.dmn.api.core.DMNContext;
import org.kie.dmn.api.core.DMNModel;
import org.kie.dmn.api.core.DMNResult;
import org.kie.dmn.api.core.DMNRuntime;
import org.kie.dmn.core.internal.utils.DMNRuntimeBuilder;
import org.kie.internal.io.ResourceFactory;

/**
 * The default tables of defects against a general-purpose decision engine, the DMN engine of Apache
 * KIE (org.kie:kie-dmn-core 10.1.0), on every part, defect and extent of every kind of element in
 * every use.
 */
@Tag("slow")
class DmnAgreementTest {
  private record Gear(ElementKind element, Use use) {}

  private static List<Gear> gear(Tables tables) {
    return tables.anatomy().rows().stream()
        .map(row -> new Gear(row.element(), row.use()))
        .distinct()
        .toList();
  }

  private static List<DefectRow> rows(Tables tables, Gear gear) {
    return tables.defects().rows().stream()
        .filter(row -> row.element() == gear.element() && row.use() == gear.use())
        .toList();
  }

  /**
   * Where a defect at a place has rows, every extent at and around the edges of the bands that is
   * told as they are; and everywhere one extent of each kind and none.
   */
  @Test
  void anEngineThatKnowsOnlyTheExportedTableAnswersAlike(TestReporter report) {
    Tables tables = ShippedRules.standard().tables();
    List<Extent> extents = ShippedExtents.of(tables.defects());
    List<Extent> oneOfEachKind = ShippedExtents.deciding(extents, ExtentKind.PRESENCE);
    List<String> wrong = new ArrayList<>();
    long combinations = 0;
    for (Gear gear : gear(tables)) {
      Engine engine = new Engine(rows(tables, gear));
      for (AnatomyRow place : tables.anatomy().of(gear.element(), gear.use())) {
        for (DefectKind defect : DefectKind.values()) {
          Set<Extent> asked = new LinkedHashSet<>(oneOfEachKind);
          tables
              .defects()
              .bands(gear.element(), gear.use(), place.site(), defect)
              .forEach(row -> asked.addAll(ShippedExtents.deciding(extents, row.band().kind())));
          for (Extent extent : asked) {
            List<String> expected = library(tables.defects(), gear, place.site(), defect, extent);
            List<String> answered = engine.answer(place.site(), defect, extent);
            if (!answered.equals(expected)) {
              wrong.add(
                  String.join(
                      " ",
                      gear.toString(),
                      place.site().toString(),
                      defect.name(),
                      extent + ":",
                      answered + ", not " + expected));
            }
            combinations++;
          }
        }
      }
    }
    assertThat(wrong).isEmpty();
    assertThat(combinations).isGreaterThan(100_000);
    report.publishEntry("combinations on which a DMN engine agrees", Long.toString(combinations));
  }

  @Test
  void theEngineTellsARowThatWasChanged() {
    Tables tables = ShippedRules.standard().tables();
    Gear gear = new Gear(ElementKind.GLOVES, Use.STRUCTURAL);
    List<DefectRow> rows = rows(tables, gear);
    DefectRow dropped = rows.get(0);
    Engine engine = new Engine(rows.subList(1, rows.size()));
    assertThat(ShippedExtents.of(tables.defects()))
        .filteredOn(dropped.band()::holds)
        .isNotEmpty()
        .allSatisfy(
            extent ->
                assertThat(engine.answer(dropped.site(), dropped.defect(), extent))
                    .isNotEqualTo(
                        library(tables.defects(), gear, dropped.site(), dropped.defect(), extent)));
  }

  /** The key of the row that applies; else by what must be measured; else nothing. */
  private static List<String> library(
      DefectTable table, Gear gear, Site site, DefectKind defect, Extent extent) {
    Ruling ruling = table.ruling(gear.element(), gear.use(), site, defect, extent);
    if (ruling instanceof Ruling.Covered covered) {
      return List.of(covered.row().key().value());
    }
    return ruling instanceof Ruling.MustMeasure measure
        ? List.of(defect + " " + measure.by())
        : List.of();
  }

  /** The engine, which knows of the tables only what was exported. */
  private static final class Engine {
    private final DMNRuntime runtime;
    private final DMNModel model;

    Engine(List<DefectRow> rows) {
      runtime =
          DMNRuntimeBuilder.fromDefaults()
              .buildConfiguration()
              .fromResources(
                  List.of(ResourceFactory.newReaderResource(new StringReader(DmnExport.of(rows)))))
              .getOrElseThrow(IllegalStateException::new);
      model = runtime.getModel(DmnExport.NAMESPACE, DmnExport.MODEL);
      assertThat(model.hasErrors()).as("%s", model.getMessages()).isFalse();
    }

    List<String> answer(Site site, DefectKind defect, Extent extent) {
      if (model.getDecisionByName(DmnExport.rowsAt(site)) == null) {
        return List.of();
      }
      DMNContext context = runtime.newContext();
      inputs(defect, extent).forEach(context::set);
      List<String> rows = answers(context, DmnExport.rowsAt(site));
      return rows.isEmpty() ? answers(context, DmnExport.extentAt(site)) : rows;
    }

    private List<String> answers(DMNContext context, String decision) {
      DMNResult result = runtime.evaluateByName(model, context, decision);
      Object found =
          result.getDecisionResults().stream()
              .map(each -> each.getResult())
              .filter(List.class::isInstance)
              .findFirst()
              .orElse(List.of());
      return ((List<?>) found).stream().map(String::valueOf).toList();
    }
  }

  private static Map<String, Object> inputs(DefectKind defect, Extent extent) {
    Map<String, Object> inputs = new HashMap<>();
    DmnExport.INPUTS.forEach(input -> inputs.put(input, null));
    inputs.put("defect", defect.name());
    if (extent instanceof Extent.Length length) {
      inputs.put("length", millimeters(length.length()));
    } else if (extent instanceof Extent.Area area) {
      inputs.put("area", millimeters(area.area()));
    } else if (extent instanceof Extent.Count count) {
      inputs.put("count", BigDecimal.valueOf(count.count()));
    } else if (extent instanceof Extent.Graded graded) {
      inputs.put("grade", graded.grade().name());
    }
    return inputs;
  }

  /** By factors of its own: 1 in is 25.4 mm. */
  private static BigDecimal millimeters(Quantity quantity) {
    return quantity
        .value()
        .multiply(
            new BigDecimal(
                switch (quantity.unit()) {
                  case MILLIMETER, SQUARE_MILLIMETER -> "1";
                  case CENTIMETER -> "10";
                  case SQUARE_CENTIMETER -> "100";
                  case METER -> "1000";
                  case INCH -> "25.4";
                  case SQUARE_INCH -> "645.16";
                  default -> throw new IllegalStateException("no length or area: " + quantity);
                }));
  }
}
