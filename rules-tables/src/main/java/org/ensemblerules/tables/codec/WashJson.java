package org.ensemblerules.tables.codec;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.TextNode;
import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.ensemblerules.care.Extraction;
import org.ensemblerules.care.ExtractorForce;
import org.ensemblerules.care.MachineType;
import org.ensemblerules.care.WashMeasure;
import org.ensemblerules.care.WashPractice;
import org.ensemblerules.care.WashRecord;
import org.ensemblerules.care.WashRecordBuilder;
import org.ensemblerules.gear.YesNoUnknown;
import org.ensemblerules.measure.Dimension;
import org.ensemblerules.measure.Quantity;
import org.ensemblerules.tables.json.JsonCursor;
import org.ensemblerules.tables.json.ObjectCursor;
import org.ensemblerules.tables.json.ValueReaders;

/** The JSON form of how something was washed. What nobody has said is left out. */
final class WashJson {
  private static final String NOT_SPUN = "NOT_SPUN";
  private static final List<WashPractice> PRACTICES =
      Arrays.stream(WashPractice.values())
          .filter(
              practice ->
                  practice != WashPractice.TOP_LOADER && practice != WashPractice.MACHINE_WASHING)
          .toList();

  private WashJson() {}

  static Optional<WashRecord> read(JsonCursor at) {
    ObjectCursor object = at.object();
    WashRecordBuilder wash = WashRecord.builder();
    object
        .optional("waterTemperature", value -> temperature(value, WashMeasure.WATER_TEMPERATURE))
        .ifPresent(wash::waterTemperature);
    object
        .optional("dryingTemperature", value -> temperature(value, WashMeasure.DRYING_TEMPERATURE))
        .ifPresent(wash::dryingTemperature);
    object.optional("detergentPh", WashJson::ph).ifPresent(wash::detergentPh);
    object.optional("extraction", WashJson::extraction).ifPresent(wash::extraction);
    object.optional("machine", value -> value.enumOf(MachineType.class)).ifPresent(wash::machine);
    object.optional("practices", value -> practices(value, wash));
    return object.make(wash::build);
  }

  /** Each value is checked alone, so that its fault is found at its own place; so below. */
  private static Optional<Quantity> temperature(JsonCursor at, WashMeasure measure) {
    return ValueReaders.quantityOf(at, Dimension.TEMPERATURE)
        .flatMap(value -> at.make(() -> WashRecord.requireTemperature(measure, value)));
  }

  private static Optional<BigDecimal> ph(JsonCursor at) {
    return at.decimalOrText().flatMap(value -> at.make(() -> WashRecord.requireDetergentPh(value)));
  }

  private static Optional<Boolean> practices(JsonCursor at, WashRecordBuilder wash) {
    ObjectCursor object = at.object();
    for (WashPractice practice : PRACTICES) {
      object
          .optional(practice.name(), value -> value.enumOf(YesNoUnknown.class))
          .ifPresent(known -> wash.practice(practice, known));
    }
    return object.make(() -> true);
  }

  private static Optional<Extraction> extraction(JsonCursor at) {
    if (at.isText()) {
      return at.named(Map.of(NOT_SPUN, new Extraction.NotSpun()));
    }
    if (at.has("stated")) {
      ObjectCursor object = at.object();
      Optional<Extraction> stated = object.required("stated", WashJson::stated);
      return object.make(stated::orElseThrow);
    }
    if (!at.has("drumRadius") && !at.has("drumDiameter")) {
      return at.mismatch(
          NOT_SPUN + ", or an object with stated, or with drumRadius or drumDiameter and speed");
    }
    ObjectCursor object = at.object();
    boolean byDiameter = object.has("drumDiameter");
    Optional<Quantity> drum =
        object.required(
            byDiameter ? "drumDiameter" : "drumRadius",
            value -> ValueReaders.quantityOf(value, Dimension.LENGTH));
    Optional<Quantity> speed =
        object.required("speed", value -> ValueReaders.quantityOf(value, Dimension.ROTATION));
    return object.make(
        () ->
            new Extraction.Computed(
                byDiameter
                    ? ExtractorForce.ofDiameter(drum.orElseThrow(), speed.orElseThrow())
                    : ExtractorForce.ofRadius(drum.orElseThrow(), speed.orElseThrow())));
  }

  private static Optional<Extraction> stated(JsonCursor at) {
    return ValueReaders.quantityOf(at, Dimension.ACCELERATION_RATIO)
        .flatMap(force -> at.make(() -> new Extraction.Stated(force)));
  }

  static JsonNode write(WashRecord wash) {
    Fields fields =
        new Fields()
            .known(
                "waterTemperature",
                wash.measured(WashMeasure.WATER_TEMPERATURE),
                QuantityJson::write)
            .known(
                "dryingTemperature",
                wash.measured(WashMeasure.DRYING_TEMPERATURE),
                QuantityJson::write)
            .known(
                "detergentPh",
                wash.measured(WashMeasure.DETERGENT_PH).map(value -> value.value().toString()))
            .known("extraction", write(wash.extraction()), node -> node);
    if (wash.machine() != MachineType.UNKNOWN) {
      fields.put("machine", wash.machine());
    }
    Fields practices = new Fields();
    PRACTICES.forEach(practice -> practices.known(practice.name(), wash.practiced(practice)));
    JsonNode stated = practices.node();
    return (stated.isEmpty() ? fields : fields.put("practices", stated)).node();
  }

  private static Optional<JsonNode> write(Extraction extraction) {
    if (extraction instanceof Extraction.NotSpun) {
      return Optional.of(TextNode.valueOf(NOT_SPUN));
    } else if (extraction instanceof Extraction.Stated stated) {
      return Optional.of(new Fields().put("stated", QuantityJson.write(stated.force())).node());
    } else if (extraction instanceof Extraction.Computed computed) {
      return Optional.of(
          new Fields()
              .put("drumRadius", QuantityJson.write(computed.force().radius()))
              .put("speed", QuantityJson.write(computed.force().speed()))
              .node());
    }
    return Optional.empty();
  }
}
