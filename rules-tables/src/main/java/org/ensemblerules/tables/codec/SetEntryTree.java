package org.ensemblerules.tables.codec;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.Use;
import org.ensemblerules.issue.Join;
import org.ensemblerules.issue.SetRow;
import org.ensemblerules.issue.SizeFit;
import org.ensemblerules.measure.Quantity;
import org.ensemblerules.source.Basis;
import org.ensemblerules.tables.json.JsonCursor;
import org.ensemblerules.tables.json.ObjectCursor;
import org.ensemblerules.tables.message.SetEntry;

/** The JSON form of what the members of a department must have, how it must meet and what fits. */
public final class SetEntryTree {
  /** What an entry about sets says. */
  private enum Says {
    NEEDS,
    MEETS,
    FITS
  }

  private SetEntryTree() {}

  /** Reads an entry about sets. */
  public static Optional<SetEntry> read(JsonCursor at) {
    ObjectCursor object = at.object();
    Optional<Says> says = object.required("entry", value -> value.enumOf(Says.class));
    if (says.isEmpty()) {
      return Optional.empty();
    }
    return switch (says.get()) {
      case NEEDS -> {
        Optional<Use> use = use(object);
        Optional<List<Set<ElementKind>>> ways =
            object.required("ways", list -> list.distinct(way -> way.setOf(ElementKind.class)));
        Basis basis = basis(object);
        yield object.make(
            () -> new SetEntry.Needs(new SetRow(use.orElseThrow(), ways.orElseThrow(), basis)));
      }
      case MEETS -> {
        Optional<Use> use = use(object);
        Optional<Join.Place> place =
            object.required("place", value -> value.enumOf(Join.Place.class));
        Optional<Quantity> least = object.optional("leastOverlap", FittingTree::length);
        Basis basis = basis(object);
        yield object.make(
            () ->
                new SetEntry.Meets(new Join(place.orElseThrow(), use.orElseThrow(), least, basis)));
      }
      case FITS -> {
        Optional<ElementKind> kind =
            object.required("kind", value -> value.enumOf(ElementKind.class));
        Optional<String> needed = object.required("needed", JsonCursor::text);
        Optional<List<String>> fitting =
            object.required("fitting", list -> list.distinct(JsonCursor::text));
        Basis basis = basis(object);
        yield object.make(
            () ->
                new SetEntry.Fits(
                    new SizeFit(
                        kind.orElseThrow(),
                        needed.orElseThrow(),
                        Set.copyOf(fitting.orElseThrow()),
                        basis)));
      }
    };
  }

  /** Without a basis it is what the department does. */
  private static Basis basis(ObjectCursor object) {
    return object.optional("basis", BasisJson::read).orElseGet(Basis.CommonPractice::new);
  }

  private static Optional<Use> use(ObjectCursor object) {
    return object.required("use", value -> value.enumOf(Use.class));
  }

  /** Writes an entry about sets. */
  public static JsonNode write(SetEntry entry) {
    if (entry instanceof SetEntry.Needs needs) {
      return new Fields()
          .put("entry", Says.NEEDS)
          .put("use", needs.row().use())
          .list("ways", needs.row().ways(), SetEntryTree::names)
          .put("basis", BasisJson.write(needs.row().basis()))
          .node();
    } else if (entry instanceof SetEntry.Meets meets) {
      return new Fields()
          .put("entry", Says.MEETS)
          .put("use", meets.join().use())
          .put("place", meets.join().place())
          .known("leastOverlap", meets.join().leastOverlap(), QuantityJson::write)
          .put("basis", BasisJson.write(meets.join().basis()))
          .node();
    }
    SizeFit fit = ((SetEntry.Fits) entry).fit();
    return new Fields()
        .put("entry", Says.FITS)
        .put("kind", fit.kind())
        .put("needed", fit.needed())
        .list("fitting", fit.fitting())
        .put("basis", BasisJson.write(fit.basis()))
        .node();
  }

  private static JsonNode names(Set<ElementKind> way) {
    var names = JsonNodeFactory.instance.arrayNode();
    way.forEach(kind -> names.add(kind.name()));
    return names;
  }
}
