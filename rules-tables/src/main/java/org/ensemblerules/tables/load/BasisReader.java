package org.ensemblerules.tables.load;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.ensemblerules.source.Basis;
import org.ensemblerules.source.Confidence;
import org.ensemblerules.source.FaultCode;
import org.ensemblerules.source.HowSeen;
import org.ensemblerules.source.Source;
import org.ensemblerules.source.SourceId;
import org.ensemblerules.tables.json.JsonCursor;
import org.ensemblerules.tables.json.NearestName;
import org.ensemblerules.tables.json.ObjectCursor;
import org.ensemblerules.tables.json.ValueReaders;

/**
 * Reads on whose word a row stands.
 *
 * @param sources the sources that can be named; empty if they could not be read, so that no more is
 *     known of them
 */
record BasisReader(Optional<Map<SourceId, Source>> sources) {
  private enum Kind {
    PUBLISHED,
    COMMON_PRACTICE,
    MEMORY
  }

  Optional<Basis> read(JsonCursor at) {
    ObjectCursor basis = at.object();
    Optional<Kind> kind = basis.required("kind", value -> value.enumOf(Kind.class));
    if (kind.isEmpty()) {
      return Optional.empty();
    }
    return switch (kind.get()) {
      case PUBLISHED -> published(basis);
      case COMMON_PRACTICE -> basis.make(Basis.CommonPractice::new);
      case MEMORY -> {
        Optional<Confidence> confidence =
            basis.required("confidence", value -> value.enumOf(Confidence.class));
        Optional<SourceId> about = basis.optional("about", this::source);
        yield basis.make(() -> new Basis.Memory(confidence.orElseThrow(), about));
      }
    };
  }

  private Optional<Basis> published(ObjectCursor basis) {
    Optional<SourceId> source = basis.required("source", this::source);
    Optional<String> clause = basis.optional("clause", JsonCursor::text);
    Optional<HowSeen> seen = basis.required("seen", at -> seen(at, source));
    Optional<List<SourceId>> pages =
        basis.optional("pages", at -> at.distinct(page -> page(page, source)));
    return basis.make(
        () ->
            new Basis.Published(
                source.orElseThrow(), clause, seen.orElseThrow(), pages.orElse(List.of())));
  }

  /** A page can bear out only the documents that it restates, and only in the edition it names. */
  private Optional<SourceId> page(JsonCursor at, Optional<SourceId> source) {
    Optional<SourceId> page = source(at);
    Optional<Source> named = sources.flatMap(known -> page.map(known::get));
    if (named.filter(each -> !each.wasSeen()).isPresent()) {
      return at.mismatch("a page that was seen, with its seenAt");
    }
    return named.isPresent()
            && source.filter(cited -> !named.get().restates().contains(cited)).isPresent()
        ? at.mismatch("a page that restates " + source.get() + ", and says so in its restates")
        : page;
  }

  /** Only a source with an address can have been read: others are known from other pages. */
  private Optional<HowSeen> seen(JsonCursor at, Optional<SourceId> source) {
    Optional<HowSeen> seen = at.enumOf(HowSeen.class);
    boolean neverRead =
        seen.filter(HowSeen.READ::equals).isPresent()
            && sources
                .flatMap(known -> source.map(known::get))
                .filter(named -> named.seenAt().isEmpty())
                .isPresent();
    return neverRead ? at.mismatch("RESTATED, since the source has no seenAt") : seen;
  }

  private Optional<SourceId> source(JsonCursor at) {
    Optional<SourceId> id = ValueReaders.sourceId(at);
    if (id.isEmpty() || sources.isEmpty() || sources.get().containsKey(id.get())) {
      return id;
    }
    List<String> known = sources.get().keySet().stream().map(SourceId::value).toList();
    return at.mismatch(
        FaultCode.UNKNOWN_SOURCE,
        NearestName.allowed(
            id.get().value(), known, "the id of a source in " + SourcesReader.FILE));
  }
}
