package org.ensemblerules.tables.codec;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import java.util.Optional;
import org.ensemblerules.source.Basis;
import org.ensemblerules.source.Confidence;
import org.ensemblerules.source.HowSeen;
import org.ensemblerules.source.OriginId;
import org.ensemblerules.source.SourceId;
import org.ensemblerules.tables.json.JsonCursor;
import org.ensemblerules.tables.json.ObjectCursor;
import org.ensemblerules.tables.json.ValueReaders;

/** The JSON form of the basis of a row, as answers carry it: its source need not be at hand. */
final class BasisJson {
  private enum Kind {
    PUBLISHED,
    COMMON_PRACTICE,
    MEMORY,
    CARRIED_OVER
  }

  private BasisJson() {}

  static Optional<Basis> read(JsonCursor at) {
    ObjectCursor basis = at.object();
    Optional<Kind> kind = basis.required("kind", value -> value.enumOf(Kind.class));
    if (kind.isEmpty()) {
      return Optional.empty();
    }
    return switch (kind.get()) {
      case PUBLISHED -> {
        Optional<SourceId> source = basis.required("source", ValueReaders::sourceId);
        Optional<String> clause = basis.optional("clause", JsonCursor::text);
        Optional<HowSeen> seen = basis.required("seen", value -> value.enumOf(HowSeen.class));
        Optional<List<SourceId>> pages =
            basis.optional("pages", value -> value.distinct(ValueReaders::sourceId));
        yield basis.make(
            () ->
                new Basis.Published(
                    source.orElseThrow(), clause, seen.orElseThrow(), pages.orElse(List.of())));
      }
      case COMMON_PRACTICE -> basis.make(Basis.CommonPractice::new);
      case MEMORY -> {
        Optional<Confidence> confidence =
            basis.required("confidence", value -> value.enumOf(Confidence.class));
        Optional<SourceId> about = basis.optional("about", ValueReaders::sourceId);
        yield basis.make(() -> new Basis.Memory(confidence.orElseThrow(), about));
      }
      case CARRIED_OVER -> {
        Optional<OriginId> into = basis.required("into", ValueReaders::editionId);
        Optional<Basis> there = basis.required("there", BasisJson::read);
        yield basis.make(() -> new Basis.CarriedOver(into.orElseThrow(), there.orElseThrow()));
      }
    };
  }

  static JsonNode write(Basis basis) {
    if (basis instanceof Basis.Published published) {
      return new Fields()
          .put("kind", Kind.PUBLISHED)
          .put("source", published.source())
          .known("clause", published.clause())
          .put("seen", published.seen())
          .some("pages", published.pages())
          .node();
    } else if (basis instanceof Basis.Memory memory) {
      return new Fields()
          .put("kind", Kind.MEMORY)
          .put("confidence", memory.confidence())
          .known("about", memory.about())
          .node();
    } else if (basis instanceof Basis.CarriedOver carried) {
      return new Fields()
          .put("kind", Kind.CARRIED_OVER)
          .put("into", carried.into())
          .put("there", write(carried.there()))
          .node();
    }
    return new Fields().put("kind", Kind.COMMON_PRACTICE).node();
  }
}
