package org.ensemblerules.shipped;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.ensemblerules.defect.DefectKind;
import org.ensemblerules.defect.DefectRow;
import org.ensemblerules.defect.Extent;
import org.ensemblerules.defect.Grade;
import org.ensemblerules.defect.Ruling;
import org.ensemblerules.effect.Effect;
import org.ensemblerules.effect.RepairClass;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.LayerKind;
import org.ensemblerules.gear.Part;
import org.ensemblerules.gear.Site;
import org.ensemblerules.gear.Use;
import org.ensemblerules.measure.Quantity;
import org.ensemblerules.measure.Unit;
import org.ensemblerules.ruleset.CareKinds;
import org.ensemblerules.ruleset.InspectionKinds;
import org.ensemblerules.shipped.Facts.Fact;
import org.ensemblerules.source.OriginId;
import org.ensemblerules.source.Row;
import org.ensemblerules.tables.set.EditionTables;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The rows say what is known, and are as sure of it as it was seen. */
class FactsTest {
  static List<Fact> facts() {
    return Facts.all();
  }

  static List<OriginId> editions() {
    return ShippedEditions.WITH_INSPECTION;
  }

  @ParameterizedTest
  @MethodSource("facts")
  void theTableSaysSo(Fact fact) {
    for (OriginId edition : fact.editions()) {
      List<? extends Row> rows = rows(fact, edition);
      if (fact.field().equals("rows")) {
        assertThat(rows).as("%s: %s", edition, fact).hasSize(Integer.parseInt(fact.value()));
        continue;
      }
      assertThat(rows).as("%s: %s", edition, fact).isNotEmpty();
      for (Row row : rows) {
        String where = edition + ": " + row.key();
        if (fact.field().endsWith("~")) {
          String field = fact.field().substring(0, fact.field().length() - 1);
          assertThat(RowFields.of(row, field)).as(where).contains(fact.value());
        } else {
          assertThat(RowFields.of(row, fact.field())).as(where).isEqualTo(fact.value());
        }
        assertThat(RowFields.certainty(row.provenance().basis()))
            .as(where)
            .isEqualTo(fact.certainty());
      }
    }
  }

  @Test
  void everyFactNamesASourceThatIsListedOrTheTrade() {
    Set<String> listed =
        ShippedEditions.loaded().sources().keySet().stream()
            .map(id -> id.value())
            .collect(Collectors.toSet());
    listed.add(Facts.TRADE);
    assertThat(Facts.all()).isNotEmpty().allMatch(fact -> listed.contains(fact.source()));
  }

  private static List<? extends Row> rows(Fact fact, OriginId edition) {
    EditionTables tables = ShippedEditions.loaded().tables(edition);
    List<? extends Row> all =
        switch (fact.table()) {
          case "editions" -> ShippedEditions.loaded().editions();
          case "age-limits" -> tables.find(InspectionKinds.AGE_LIMITS).orElseThrow().rows();
          case "intervals" -> tables.find(InspectionKinds.INTERVALS).orElseThrow().rows();
          case "permissions" -> tables.find(InspectionKinds.PERMISSIONS).orElseThrow().rows();
          case "criteria" -> tables.find(InspectionKinds.CRITERIA).orElseThrow().rows();
          case "checks" -> tables.find(InspectionKinds.CHECKS).orElseThrow().rows();
          case "cautions" -> tables.find(InspectionKinds.CAUTIONS).orElseThrow().rows();
          case "care-routes" -> tables.find(CareKinds.CARE_ROUTES).orElseThrow().rows();
          case "repair-limits" -> tables.find(CareKinds.REPAIR_LIMITS).orElseThrow().rows();
          case "defects" -> tables.find(InspectionKinds.DEFECTS).orElseThrow().rows();
          case "ruling" -> List.of(ruled(fact.rows(), tables));
          default -> throw new IllegalStateException("no table " + fact.table());
        };
    return fact.table().equals("ruling")
        ? all
        : all.stream()
            .filter(
                row ->
                    row.key().value().equals(fact.rows())
                        || row.key().value().startsWith(fact.rows() + "/"))
            .toList();
  }

  private static DefectRow ruled(String finding, EditionTables tables) {
    String[] words = finding.split(" ", 5);
    Ruling ruling =
        tables
            .find(InspectionKinds.DEFECTS)
            .orElseThrow()
            .ruling(
                ElementKind.valueOf(words[0]),
                Use.valueOf(words[1]),
                Site.parse(words[2]),
                DefectKind.valueOf(words[3]),
                extent(words[4]));
    assertThat(ruling).as(finding).isInstanceOf(Ruling.Covered.class);
    return ((Ruling.Covered) ruling).row();
  }

  private static Extent extent(String text) {
    if (text.equals("-")) {
      return new Extent.NotMeasured();
    }
    String[] words = text.split(" ", -1);
    return words.length == 1
        ? new Extent.Graded(Grade.valueOf(text))
        : new Extent.Length(
            Quantity.of(
                words[0],
                Arrays.stream(Unit.values())
                    .filter(unit -> unit.symbol().equals(words[1]))
                    .findFirst()
                    .orElseThrow()));
  }

  // Restated of the 2020 edition: any work on the thermal liner or the moisture barrier is an
  // advanced repair; a liner sewn shut after its inspection is not a defect that a row repairs.
  @ParameterizedTest
  @MethodSource("editions")
  void noWorkOnBarrierOrThermalLinerIsBasic(OriginId edition) {
    Set<LayerKind> inner =
        Set.of(LayerKind.MOISTURE_BARRIER, LayerKind.THERMAL_LINER, LayerKind.WINTER_LINER);
    assertThat(basic(edition))
        .noneMatch(row -> row.site().layer().map(inner::contains).orElse(false));
  }

  // Restated of the 2020 edition: the list of basic repairs is of the outer shell alone.
  @ParameterizedTest
  @MethodSource("editions")
  void basicRepairsOfGarmentsAreOnTheOuterShell(OriginId edition) {
    Set<ElementKind> garments =
        Set.of(ElementKind.COAT, ElementKind.TROUSERS, ElementKind.COVERALL);
    assertThat(basic(edition).stream().filter(row -> garments.contains(row.element())))
        .isNotEmpty()
        .allMatch(row -> row.site().layer().equals(Optional.of(LayerKind.OUTER_SHELL)));
  }

  // Restated of the 2020 edition: hardware is replaced as a basic repair, positive closures are
  // not.
  @ParameterizedTest
  @MethodSource("editions")
  void noPositiveClosureIsReplacedAsABasicRepair(OriginId edition) {
    Set<Part> closures = Set.of(Part.CLOSURE, Part.ZIPPER, Part.HOOKS_AND_D_RINGS);
    assertThat(basic(edition))
        .filteredOn(row -> row.effect() instanceof Effect.ReplacePart)
        .isNotEmpty()
        .noneMatch(row -> closures.contains(row.site().part()));
  }

  private static List<DefectRow> basic(OriginId edition) {
    return ShippedEditions.rules(edition).tables().defects().rows().stream()
        .filter(
            row ->
                (row.effect() instanceof Effect.Repair repair
                        && repair.repairClass() == RepairClass.BASIC)
                    || (row.effect() instanceof Effect.ReplacePart replace
                        && replace.repairClass() == RepairClass.BASIC))
        .toList();
  }
}
