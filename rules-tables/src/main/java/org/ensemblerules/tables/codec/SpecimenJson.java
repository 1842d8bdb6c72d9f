package org.ensemblerules.tables.codec;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import java.util.Optional;
import org.ensemblerules.measure.Dimension;
import org.ensemblerules.measure.Quantity;
import org.ensemblerules.strength.Direction;
import org.ensemblerules.strength.FailureMode;
import org.ensemblerules.strength.Reading;
import org.ensemblerules.strength.Specimen;
import org.ensemblerules.tables.json.JsonCursor;
import org.ensemblerules.tables.json.ObjectCursor;
import org.ensemblerules.tables.json.ValueReaders;

/** The JSON form of a specimen, with one of: its value, its peaks, the mean of its peaks. */
final class SpecimenJson {
  private static final List<String> READINGS = List.of("value", "peaks", "meanOfHighestPeaks");

  private SpecimenJson() {}

  static Optional<Specimen> read(JsonCursor at) {
    int before = at.faults().count();
    ObjectCursor object = at.object();
    Optional<String> id = object.required("id", value -> value.parsed(Specimen::requireId));
    Optional<Direction> direction =
        object.optional("direction", value -> value.enumOf(Direction.class));
    Optional<Reading> single = object.optional("value", SpecimenJson::single);
    Optional<Reading> peaks = object.optional("peaks", SpecimenJson::peaks);
    Optional<Reading> mean = object.optional("meanOfHighestPeaks", SpecimenJson::mean);
    Optional<Reading> reading = single.or(() -> peaks).or(() -> mean);
    long given = READINGS.stream().filter(object::has).count();
    if (given != 1 && !at.faults().since(before)) {
      at.fault(
          given == 0 ? "no reading" : given + " readings",
          "exactly one of " + String.join(", ", READINGS));
    }
    Optional<FailureMode> failure =
        object.optional("failure", value -> value.enumOf(FailureMode.class));
    Optional<Quantity> fromJaw =
        object.optional("fromJaw", value -> ValueReaders.quantityOf(value, Dimension.LENGTH));
    Optional<Boolean> slipped = object.optional("slipped", JsonCursor::bool);
    Optional<Boolean> leftMarkedLine = object.optional("leftMarkedLine", JsonCursor::bool);
    Optional<String> fault =
        object.optional("fault", value -> value.parsed(Specimen::requireFault));
    return object.make(
        () ->
            new Specimen(
                id.orElseThrow(),
                direction.orElse(Direction.UNDIRECTED),
                reading.orElseThrow(),
                failure.orElse(FailureMode.NOT_RECORDED),
                fromJaw,
                slipped.orElse(false),
                leftMarkedLine.orElse(false),
                fault));
  }

  private static Optional<Reading> single(JsonCursor at) {
    return ValueReaders.quantity(at).flatMap(value -> at.make(() -> new Reading.Single(value)));
  }

  private static Optional<Reading> peaks(JsonCursor at) {
    return at.list(ValueReaders::quantity)
        .flatMap(values -> at.make(() -> new Reading.Peaks(values)));
  }

  private static Optional<Reading> mean(JsonCursor at) {
    ObjectCursor object = at.object();
    Optional<Integer> count =
        object.required("count", value -> value.integer(2, Integer.MAX_VALUE));
    Optional<Quantity> mean = object.required("mean", ValueReaders::quantity);
    return object.make(
        () -> new Reading.MeanOfHighestPeaks(count.orElseThrow(), mean.orElseThrow()));
  }

  static JsonNode write(Specimen specimen) {
    Fields fields = new Fields().put("id", specimen.id()).put("direction", specimen.direction());
    Reading reading = specimen.reading();
    if (reading instanceof Reading.Single single) {
      fields.put("value", QuantityJson.write(single.value()));
    } else if (reading instanceof Reading.Peaks peaks) {
      fields.list("peaks", peaks.peaks(), QuantityJson::write);
    } else if (reading instanceof Reading.MeanOfHighestPeaks mean) {
      fields.put(
          "meanOfHighestPeaks",
          new Fields()
              .put("count", mean.count())
              .put("mean", QuantityJson.write(mean.mean()))
              .node());
    }
    if (specimen.failure() != FailureMode.NOT_RECORDED) {
      fields.put("failure", specimen.failure());
    }
    fields.known("fromJaw", specimen.fromJaw(), QuantityJson::write);
    if (specimen.slipped()) {
      fields.put("slipped", true);
    }
    if (specimen.leftMarkedLine()) {
      fields.put("leftMarkedLine", true);
    }
    return fields.known("fault", specimen.fault()).node();
  }
}
