package org.ensemblerules.care;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.ensemblerules.gear.Element;
import org.ensemblerules.gear.ElementId;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.LayerKind;
import org.ensemblerules.gear.Use;
import org.ensemblerules.gear.YesNoUnknown;
import org.ensemblerules.measure.Limit;
import org.ensemblerules.measure.Quantity;
import org.ensemblerules.measure.Unit;
import org.ensemblerules.source.Basis;
import org.ensemblerules.source.Confidence;
import org.ensemblerules.source.OriginId;
import org.ensemblerules.source.Provenance;
import org.ensemblerules.source.RowKey;

/** Frozen rows, and a wash that keeps them all. */
final class Washes {
  static final Limit WARM =
      Limit.atMost("105", Unit.DEGREE_FAHRENHEIT)
          .alsoPrinted(Quantity.of("40", Unit.DEGREE_CELSIUS));

  private Washes() {}

  static Provenance provenance(String key) {
    return new Provenance(
        new RowKey(key),
        new OriginId("FROZEN"),
        new Basis.Memory(Confidence.HIGH, Optional.empty()),
        LocalDate.of(2027, 11, 30),
        Optional.empty());
  }

  static Element coat(Use use) {
    return Element.builder(new ElementId("C-1"), ElementKind.COAT, use).build();
  }

  static List<CareLimitRow> rows() {
    List<CareLimitRow> rows = new ArrayList<>();
    for (Use use : Use.values()) {
      rows.add(within(use, WashMeasure.WATER_TEMPERATURE, WARM));
      rows.add(within(use, WashMeasure.DRYING_TEMPERATURE, WARM));
      rows.add(within(use, WashMeasure.DETERGENT_PH, Limit.atLeast("6.0", Unit.ONE)));
      rows.add(within(use, WashMeasure.DETERGENT_PH, Limit.atMost("10.5", Unit.ONE)));
      rows.add(within(use, WashMeasure.EXTRACTION, Limit.atMost("100", Unit.STANDARD_GRAVITY)));
      rows.add(forbidden(use, WashPractice.CHLORINE_BLEACH));
      rows.add(forbidden(use, WashPractice.TOP_LOADER));
      rows.add(forbidden(use, WashPractice.LAYERS_TOGETHER));
      rows.add(forbidden(use, WashPractice.DRYING_IN_SUNLIGHT));
    }
    for (WashPractice practice :
        List.of(WashPractice.MACHINE_WASHING, WashPractice.MACHINE_DRYING)) {
      rows.add(
          new CareLimitRow(
              provenance(practice.name()),
              ElementKind.COAT,
              Use.PROXIMITY,
              Optional.of(LayerKind.OUTER_SHELL),
              new CareDemand.Forbidden(practice)));
    }
    return rows;
  }

  static CareLimitRow within(Use use, WashMeasure measure, Limit limit) {
    return new CareLimitRow(
        provenance(measure + "/" + limit.bound() + "/" + use),
        ElementKind.COAT,
        use,
        Optional.empty(),
        new CareDemand.Within(measure, limit));
  }

  static CareLimitRow forbidden(Use use, WashPractice practice) {
    return new CareLimitRow(
        provenance(practice + "/" + use),
        ElementKind.COAT,
        use,
        Optional.empty(),
        new CareDemand.Forbidden(practice));
  }

  static CareLimitTable table() {
    return CareLimitTable.of(rows()).orElseThrow();
  }

  static WashRecordBuilder sound() {
    return WashRecord.builder()
        .waterTemperature(Quantity.of("105", Unit.DEGREE_FAHRENHEIT))
        .dryingTemperature(Quantity.of("35", Unit.DEGREE_CELSIUS))
        .detergentPh(new BigDecimal("8"))
        .extraction(new Extraction.Stated(Quantity.of("100", Unit.STANDARD_GRAVITY)))
        .machine(MachineType.FRONT_LOADING)
        .practice(WashPractice.CHLORINE_BLEACH, YesNoUnknown.NO)
        .practice(WashPractice.LAYERS_TOGETHER, YesNoUnknown.NO)
        .practice(WashPractice.MACHINE_DRYING, YesNoUnknown.NO)
        .practice(WashPractice.DRYING_IN_SUNLIGHT, YesNoUnknown.NO);
  }
}
