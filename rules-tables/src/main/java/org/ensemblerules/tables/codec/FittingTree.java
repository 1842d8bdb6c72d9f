package org.ensemblerules.tables.codec;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Optional;
import org.ensemblerules.gear.ElementId;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.gear.YesNoUnknown;
import org.ensemblerules.issue.Fitting;
import org.ensemblerules.issue.Join;
import org.ensemblerules.measure.Dimension;
import org.ensemblerules.measure.Quantity;
import org.ensemblerules.tables.json.JsonCursor;
import org.ensemblerules.tables.json.ObjectCursor;
import org.ensemblerules.tables.json.ValueReaders;

/** The JSON form of how two elements were seen to meet. */
public final class FittingTree {
  private FittingTree() {}

  /** Reads how two elements were seen to meet. */
  public static Optional<Fitting> read(JsonCursor at) {
    ObjectCursor object = at.object();
    Optional<String> member = object.required("member", JsonCursor::text);
    Optional<Join.Place> place = object.required("place", value -> value.enumOf(Join.Place.class));
    Optional<ElementId> one = object.required("one", id -> id.parsed(ElementId::new));
    Optional<ElementId> other = object.required("other", id -> id.parsed(ElementId::new));
    Optional<MarkedDate> on = object.required("on", ValueReaders::markedDate);
    Optional<YesNoUnknown> good =
        object.optional("good", value -> value.enumOf(YesNoUnknown.class));
    Optional<Quantity> overlap = object.optional("overlap", FittingTree::length);
    return object.make(
        () ->
            new Fitting(
                member.orElseThrow(),
                place.orElseThrow(),
                one.orElseThrow(),
                other.orElseThrow(),
                on.orElseThrow(),
                good.orElse(YesNoUnknown.UNKNOWN),
                overlap));
  }

  /** Reads by how much two elements lie over each other. */
  static Optional<Quantity> length(JsonCursor at) {
    return ValueReaders.quantityOf(at, Dimension.LENGTH);
  }

  /** Writes how two elements were seen to meet. */
  public static JsonNode write(Fitting fitting) {
    return new Fields()
        .put("member", fitting.member())
        .put("place", fitting.place())
        .put("one", fitting.one())
        .put("other", fitting.other())
        .put("on", fitting.on())
        .known("good", fitting.good())
        .known("overlap", fitting.overlap(), QuantityJson::write)
        .node();
  }
}
