package org.ensemblerules.care;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.ensemblerules.effect.HandlingDuty;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.LayerKind;
import org.ensemblerules.gear.Use;
import org.ensemblerules.source.Checked;
import org.ensemblerules.source.InvalidValueException;
import org.ensemblerules.source.TableFault;
import org.junit.jupiter.api.Test;

/** Tables of care routes that leave something unanswered, or answer it too lightly. */
class CareRouteTableTest {
  private static final Optional<LayerKind> WHOLE = Optional.empty();

  private static List<String> faults(List<CareRouteRow> rows) {
    Checked<CareRouteTable, TableFault> result = CareRouteTable.of(rows);
    assertThat(result).isInstanceOf(Checked.Refused.class);
    return ((Checked.Refused<CareRouteTable, TableFault>) result)
        .faults().stream().map(fault -> fault.code() + " " + fault).toList();
  }

  /** The frozen rows with one of the helmet's replaced. */
  private static List<CareRouteRow> with(
      Exposure exposure, List<RouteStep> steps, HandlingDuty... handling) {
    List<CareRouteRow> rows = new ArrayList<>(Routes.rows());
    rows.replaceAll(
        row ->
            row.element() == ElementKind.HELMET && row.exposure() == exposure
                ? Routes.row(ElementKind.HELMET, WHOLE, exposure, steps, handling)
                : row);
    return rows;
  }

  @Test
  void anEmptyTableIsSoundAndAnswersNothing() {
    CareRouteTable table = CareRouteTable.of(List.of()).orElseThrow();
    assertThat(table.rows()).isEmpty();
    assertThat(table.rows(ElementKind.COAT, Use.STRUCTURAL, Exposure.UNKNOWN)).isEmpty();
  }

  @Test
  void noExposureGoesUnanswered() {
    List<CareRouteRow> rows = new ArrayList<>(Routes.rows());
    rows.removeIf(
        row -> row.element() == ElementKind.HELMET && row.exposure() == Exposure.FUEL_OR_OIL);
    assertThat(faults(rows))
        .singleElement()
        .asString()
        .startsWith("GAP ")
        .contains("no row for [FUEL_OR_OIL] on HELMET STRUCTURAL, allowed: a row for each");
  }

  @Test
  void noExposureIsAnsweredTwice() {
    List<CareRouteRow> rows = new ArrayList<>(Routes.rows());
    rows.add(rows.get(0));
    assertThat(faults(rows))
        .singleElement()
        .asString()
        .startsWith("DUPLICATE ")
        .contains("each once, not ");
  }

  @Test
  void anAgentNeverLetsGearReturnOrBeCleaned() {
    assertThat(faults(with(Exposure.CBRN_AGENT, List.of(Routes.step(CareAction.ISOLATE)))))
        .singleElement()
        .asString()
        .startsWith("NOT_ALLOWED ")
        .contains("found no NO_RETURN, allowed: NO_RETURN after CBRN_AGENT");
    assertThat(
            faults(
                with(
                    Exposure.CBRN_AGENT,
                    List.of(
                        Routes.step(CareAction.ISOLATE),
                        Routes.step(CareAction.ADVANCED_CLEANING),
                        Routes.step(CareAction.NO_RETURN)))))
        .singleElement()
        .asString()
        .startsWith("NOT_ALLOWED ")
        .contains("nothing that leads back where NO_RETURN");
  }

  @Test
  void whatMustNotBeWashedIsFoundOutFirst() {
    assertThat(
            faults(
                with(
                    Exposure.ASBESTOS,
                    List.of(
                        Routes.step(CareAction.ISOLATE),
                        Routes.step(CareAction.SPECIALIZED_CLEANING)),
                    HandlingDuty.DO_NOT_WASH)))
        .singleElement()
        .asString()
        .startsWith("NOT_ALLOWED ")
        .contains("FIND_OUT where handling is DO_NOT_WASH");
  }

  @Test
  void theUnknownIsNeverMilderThanTheKnown() {
    List<String> faults =
        faults(
            with(
                Exposure.UNKNOWN,
                List.of(
                    Routes.step(CareAction.EXPOSURE_REDUCTION),
                    Routes.step(CareAction.ISOLATE),
                    Routes.step(CareAction.FIND_OUT, CareEntry.DECISION),
                    Routes.cleaned(CareAction.SPECIALIZED_CLEANING, CareManner.BY_HAND),
                    Routes.cleaned(CareAction.ADVANCED_CLEANING, CareManner.BY_HAND)),
                HandlingDuty.DO_NOT_WASH,
                HandlingDuty.BIOHAZARD));
    assertThat(faults)
        .singleElement()
        .asString()
        .startsWith("LOOSER ")
        .contains("BLOOD_OR_BODY_FLUIDS, which asks for [SANITIZE AS_MANUFACTURER_SAYS");
    assertThat(
            faults(
                with(
                    Exposure.UNKNOWN,
                    List.of(Routes.cleaned(CareAction.ADVANCED_CLEANING, CareManner.BY_HAND)))))
        .anyMatch(
            fault ->
                fault.startsWith("NOT_ALLOWED ") && fault.contains("allowed: ISOLATE and FIND_OUT"))
        .hasSizeGreaterThan(5);
  }

  @Test
  void rowsThatCannotBe() {
    RouteStep isolate = Routes.step(CareAction.ISOLATE);
    RouteStep rinse = Routes.step(CareAction.EXPOSURE_REDUCTION);
    for (List<RouteStep> steps :
        List.of(List.<RouteStep>of(), List.of(isolate, rinse), List.of(isolate, isolate))) {
      assertThatThrownBy(() -> Routes.row(ElementKind.HELMET, WHOLE, Exposure.ASBESTOS, steps))
          .isInstanceOf(InvalidValueException.class)
          .hasMessageContaining("CareRouteRow.steps");
    }
    assertThatThrownBy(
            () ->
                Routes.row(
                    ElementKind.HELMET,
                    WHOLE,
                    Exposure.ASBESTOS,
                    List.of(isolate),
                    HandlingDuty.ISOLATE))
        .isInstanceOf(InvalidValueException.class)
        .hasMessageContaining("CareRouteRow.handling");
    assertThatThrownBy(() -> new RouteStep(CareAction.SANITIZE, Optional.empty(), Set.of()))
        .isInstanceOf(InvalidValueException.class)
        .hasMessageContaining("a manner for SANITIZE");
    assertThatThrownBy(
            () -> new RouteStep(CareAction.ISOLATE, Optional.of(CareManner.BY_HAND), Set.of()))
        .isInstanceOf(InvalidValueException.class)
        .hasMessageContaining("none for ISOLATE");
  }
}
