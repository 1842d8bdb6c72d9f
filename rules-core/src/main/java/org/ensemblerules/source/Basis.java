package org.ensemblerules.source;

import com.google.common.collect.ImmutableList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * Says who: on whose word a value of a table rests.
 *
 * @since 0.1
 */
public sealed interface Basis {

  /**
   * A published document says so.
   *
   * @param source the document; not null
   * @param clause its clause as printed where it was seen; empty if the clause was not seen
   * @param seen whether it was read there or seen restated; not null
   * @param pages the pages on which it was seen restated, the best first; empty if it was read in
   *     the document itself, or if no page is named; not null
   */
  record Published(SourceId source, Optional<String> clause, HowSeen seen, List<SourceId> pages)
      implements Basis {
    /**
     * Checks the clause and the pages.
     *
     * @throws InvalidValueException if the clause is blank or longer than 80 characters, if a page
     *     is named twice or is the document itself, or if pages are named of what was read
     */
    public Published {
      Objects.requireNonNull(source, "source");
      clause.ifPresent(text -> InvalidValueException.requireText("Basis.clause", text, 80));
      Objects.requireNonNull(seen, "seen");
      pages = ImmutableList.copyOf(pages);
      InvalidValueException.require(
          seen == HowSeen.RESTATED || pages.isEmpty(),
          "Basis.pages",
          pages,
          "none, since it was read in the document itself");
      InvalidValueException.require(
          pages.stream().distinct().count() == pages.size() && !pages.contains(source),
          "Basis.pages",
          pages,
          "each page once, and none that is the document itself");
    }

    /**
     * Of a document that was read, or of one restated on pages that are not named.
     *
     * @param source the document; not null
     * @param clause its clause as printed where it was seen; empty if the clause was not seen
     * @param seen whether it was read there or seen restated; not null
     * @throws InvalidValueException if the clause is blank or longer than 80 characters
     */
    public Published(SourceId source, Optional<String> clause, HowSeen seen) {
      this(source, clause, seen, List.of());
    }

    @Override
    public Optional<SourceId> cited() {
      return Optional.of(source);
    }

    @Override
    public String text() {
      return "PUBLISHED, "
          + seen
          + ", "
          + source
          + clause.map(text -> ", " + text).orElse(", clause not seen")
          + (pages.isEmpty()
              ? ""
              : pages.stream()
                  .map(SourceId::value)
                  .collect(Collectors.joining(" and ", ", on page ", "")));
    }
  }

  /** The trade does so; there is no source to name. */
  record CommonPractice() implements Basis {
    @Override
    public Optional<SourceId> cited() {
      return Optional.empty();
    }

    @Override
    public String text() {
      return "COMMON_PRACTICE";
    }
  }

  /**
   * Remembered; no page was found. To be confirmed against a bought copy before use.
   *
   * @param confidence how sure it is; not null
   * @param about the document that is believed to say so; empty if none
   */
  record Memory(Confidence confidence, Optional<SourceId> about) implements Basis {
    /** Checks for nulls. */
    public Memory {
      Objects.requireNonNull(confidence, "confidence");
      Objects.requireNonNull(about, "about");
    }

    @Override
    public Optional<SourceId> cited() {
      return about;
    }

    @Override
    public String text() {
      return "MEMORY, " + confidence + about.map(id -> ", of " + id).orElse("");
    }
  }

  /**
   * The edition's own text was not seen: the value of an earlier edition stands in for it until
   * somebody confirms it.
   *
   * @param into the edition whose text was not seen; not null
   * @param there on whose word it stands in the earlier edition, not carried over itself; not null
   */
  record CarriedOver(OriginId into, Basis there) implements Basis {
    /**
     * Checks that nothing is carried over twice.
     *
     * @throws InvalidValueException if the basis is itself one that was carried over
     */
    public CarriedOver {
      Objects.requireNonNull(into, "into");
      InvalidValueException.require(
          !(there instanceof CarriedOver), "Basis.there", there, "a basis of its own");
    }

    @Override
    public Optional<SourceId> cited() {
      return there.cited();
    }

    @Override
    public List<SourceId> pages() {
      return there.pages();
    }

    @Override
    public String text() {
      return "CARRIED_OVER into " + into + " unconfirmed; " + there.text();
    }
  }

  /**
   * Returns the source named, if any.
   *
   * @return the source; empty if none is named
   */
  Optional<SourceId> cited();

  /**
   * Returns the pages on which the value was seen restated, the best first.
   *
   * @return the pages; empty if it was read in the source itself, if nothing was seen, or if no
   *     page is named; never null
   */
  default List<SourceId> pages() {
    return List.of();
  }

  /**
   * Returns the basis on one line, as verdicts and pages show it.
   *
   * @return the text; never null
   */
  String text();
}
