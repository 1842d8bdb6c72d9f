package org.ensemblerules.inspection;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.ensemblerules.defect.DefectKind;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.Site;
import org.ensemblerules.gear.Use;
import org.ensemblerules.source.Checked;
import org.ensemblerules.source.RowKey;
import org.ensemblerules.source.TableFault;
import org.ensemblerules.testkit.FitGear;
import org.ensemblerules.testkit.FrozenProvenance;
import org.ensemblerules.testkit.FrozenRules;
import org.junit.jupiter.api.Test;

/** What an inspection must look at, in order. */
class CriteriaTableTest {
  private static CriterionRow row(String key, int order, String... sites) {
    return new CriterionRow(
        FrozenProvenance.of(key),
        EnumSet.of(InspectionKind.ADVANCED, InspectionKind.ROUTINE),
        ElementKind.HELMET,
        Use.STRUCTURAL,
        order,
        Arrays.stream(sites).map(Site::parse).toList(),
        EnumSet.of(DefectKind.DAMAGED),
        Set.of(),
        Set.of(),
        "Look.");
  }

  private static Checked<CriteriaTable, TableFault> table(CriterionRow... rows) {
    return CriteriaTable.of(List.of(rows), FrozenRules.rules().tables().anatomy());
  }

  @Test
  void criteriaComeInTheirOrder() {
    CriteriaTable table =
        table(row("b", 2, "SUSPENSION"), row("a", 1, "HELMET_SHELL"), row("c", 3, "GOGGLES"))
            .orElseThrow();
    for (InspectionKind kind : List.of(InspectionKind.ADVANCED, InspectionKind.ROUTINE)) {
      assertThat(table.required(kind, ElementKind.HELMET, Use.STRUCTURAL))
          .extracting(CriterionRow::order)
          .containsExactly(1, 2, 3);
    }
    assertThat(table.required(InspectionKind.COMPLETE_LINER, ElementKind.HELMET, Use.STRUCTURAL))
        .isEmpty();
    assertThat(table.required(InspectionKind.ADVANCED, ElementKind.HELMET, Use.PROXIMITY))
        .isEmpty();
    assertThat(table.required(InspectionKind.ADVANCED, ElementKind.COAT, Use.STRUCTURAL)).isEmpty();
  }

  @Test
  void onlyWhatNotEveryElementHasMayBeNotFitted() {
    CriteriaTable table =
        table(
                row("a", 1, "FACESHIELD", "GOGGLES"),
                row("b", 2, "FACESHIELD", "SUSPENSION"),
                row("c", 3, "SUSPENSION"))
            .orElseThrow();
    assertThat(table.mayBeNotFitted(new RowKey("frozen/a"))).contains(true);
    assertThat(table.mayBeNotFitted(new RowKey("frozen/b"))).contains(false);
    assertThat(table.mayBeNotFitted(new RowKey("frozen/c"))).contains(false);
    assertThat(table.mayBeNotFitted(new RowKey("frozen/d"))).isEmpty();
  }

  @Test
  void keysOrdersAndSitesAreChecked() {
    Checked<CriteriaTable, TableFault> result =
        table(row("a", 1, "SUSPENSION"), row("a", 2, "HELMET_SHELL"), row("c", 2, "GLOVE_SHELL"));
    assertThat(((Checked.Refused<CriteriaTable, TableFault>) result).faults())
        .extracting(fault -> fault.code() + " " + fault)
        .containsExactly(
            "DUPLICATE frozen/a, key: found frozen/a, allowed: each key once",
            "DUPLICATE frozen/c, order: found 2 on HELMET STRUCTURAL, allowed: each order once per"
                + " element",
            "NO_SUCH_PLACE frozen/c, sites: found GLOVE_SHELL on HELMET STRUCTURAL, allowed: a site"
                + " that the anatomy table has");
  }

  @Test
  void anEmptyTableRequiresNothingSoThatNothingIsComplete() {
    CriteriaTable empty = table().orElseThrow();
    Inspection made =
        FitGear.inspection(InspectionKind.ROUTINE, ElementKind.HELMET, FitGear.AS_OF).build();
    Coverage coverage =
        Coverage.of(
            made, FitGear.element(ElementKind.HELMET).build(), empty, FrozenRules.signOffs());
    assertThat(coverage.required()).isZero();
    assertThat(coverage.isComplete()).isFalse();
    Inspection silent =
        Inspection.builder(made.kind(), made.occasion(), made.on(), made.by()).build();
    assertThat(
            Coverage.of(
                    silent,
                    FitGear.element(ElementKind.HELMET).build(),
                    empty,
                    FrozenRules.signOffs())
                .isComplete())
        .isFalse();
  }
}
