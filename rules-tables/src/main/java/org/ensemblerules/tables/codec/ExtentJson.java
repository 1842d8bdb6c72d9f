package org.ensemblerules.tables.codec;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import java.util.Optional;
import org.ensemblerules.defect.Extent;
import org.ensemblerules.defect.Grade;
import org.ensemblerules.measure.Dimension;
import org.ensemblerules.measure.Quantity;
import org.ensemblerules.tables.json.JsonCursor;
import org.ensemblerules.tables.json.ObjectCursor;
import org.ensemblerules.tables.json.ValueReaders;

/** The JSON form of the extent of a defect. What was not measured is left out altogether. */
final class ExtentJson {
  private static final List<String> FORMS = List.of("length", "area", "count", "grade");

  private ExtentJson() {}

  static Optional<Extent> read(JsonCursor at) {
    int before = at.faults().count();
    ObjectCursor object = at.object();
    Optional<Quantity> length =
        object.optional("length", value -> ValueReaders.quantityOf(value, Dimension.LENGTH));
    Optional<Quantity> area =
        object.optional("area", value -> ValueReaders.quantityOf(value, Dimension.AREA));
    Optional<Integer> count =
        object.optional("count", value -> value.integer(1, Integer.MAX_VALUE));
    Optional<Grade> grade = object.optional("grade", value -> value.enumOf(Grade.class));
    long given = FORMS.stream().filter(object::has).count();
    if (given != 1 && !at.faults().since(before)) {
      at.fault(
          given == 0 ? "no measure" : given + " measures",
          "exactly one of " + String.join(", ", FORMS) + "; an extent not measured is left out");
    }
    return object.make(
        () ->
            length
                .<Extent>map(Extent.Length::new)
                .or(() -> area.map(Extent.Area::new))
                .or(() -> count.map(Extent.Count::new))
                .or(() -> grade.map(Extent.Graded::new))
                .orElseThrow());
  }

  /** Writes an extent; empty if it was not measured. */
  static Optional<JsonNode> write(Extent extent) {
    if (extent instanceof Extent.Length measured) {
      return Optional.of(new Fields().put("length", QuantityJson.write(measured.length())).node());
    } else if (extent instanceof Extent.Area measured) {
      return Optional.of(new Fields().put("area", QuantityJson.write(measured.area())).node());
    } else if (extent instanceof Extent.Count counted) {
      return Optional.of(new Fields().put("count", counted.count()).node());
    } else if (extent instanceof Extent.Graded graded) {
      return Optional.of(new Fields().put("grade", graded.grade()).node());
    }
    return Optional.empty();
  }
}
