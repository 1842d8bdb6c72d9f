package org.ensemblerules.issue;

import java.util.Objects;
import java.util.Optional;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.YesNoUnknown;

/**
 * What keeps a set from being complete and usable together.
 *
 * @since 0.1
 */
public sealed interface SetGap {
  /**
   * No row says what such a set must have.
   *
   * @param why which rows are missing, in words; not null
   */
  record NoRow(String why) implements SetGap {
    /** Checks for null. */
    public NoRow {
      Objects.requireNonNull(why, "why");
    }

    @Override
    public Optional<ElementKind> lacks() {
      return Optional.empty();
    }

    @Override
    public String text() {
      return why;
    }
  }

  /**
   * The member has none.
   *
   * @param kind the kind of element that is missing; not null
   */
  record Missing(ElementKind kind) implements SetGap {
    /** Checks for null. */
    public Missing {
      Objects.requireNonNull(kind, "kind");
    }

    @Override
    public Optional<ElementKind> lacks() {
      return Optional.of(kind);
    }

    @Override
    public String text() {
      return kind + ": none issued";
    }
  }

  /**
   * The best that the member has may not be in service.
   *
   * @param piece the element; not null
   */
  record Out(SetPiece piece) implements SetGap {
    /** Checks for null. */
    public Out {
      Objects.requireNonNull(piece, "piece");
    }

    @Override
    public Optional<ElementKind> lacks() {
      return Optional.of(piece.element().kind());
    }

    @Override
    public String text() {
      return piece.element().kind()
          + " "
          + piece.element().id()
          + " is out of service: "
          + piece.goesTo().orElseThrow().text();
    }
  }

  /**
   * It is built for another use. Structural and proximity elements are never worn together.
   *
   * @param piece the element; not null
   */
  record OtherUse(SetPiece piece) implements SetGap {
    /** Checks for null. */
    public OtherUse {
      Objects.requireNonNull(piece, "piece");
    }

    @Override
    public Optional<ElementKind> lacks() {
      return Optional.of(piece.element().kind());
    }

    @Override
    public String text() {
      return piece.element().kind()
          + " "
          + piece.element().id()
          + " is built for "
          + piece.element().use();
    }
  }

  /**
   * It is not shown to fit the member.
   *
   * @param piece the element; not null
   * @param fits no, or unknown if a size is not known
   */
  record Size(SetPiece piece, YesNoUnknown fits) implements SetGap {
    /** Checks for nulls. */
    public Size {
      Objects.requireNonNull(piece, "piece");
      Objects.requireNonNull(fits, "fits");
    }

    @Override
    public Optional<ElementKind> lacks() {
      return Optional.of(piece.element().kind());
    }

    @Override
    public String text() {
      return piece.element().kind()
          + " "
          + piece.element().id()
          + (fits == YesNoUnknown.NO
              ? " is of another size: " + String.join(", ", piece.sizes())
              : " is not shown to fit: a size is not known");
    }
  }

  /**
   * Several elements in the department have its id, so that nobody can tell which is meant.
   *
   * @param piece the element; not null
   */
  record SameId(SetPiece piece) implements SetGap {
    /** Checks for null. */
    public SameId {
      Objects.requireNonNull(piece, "piece");
    }

    @Override
    public Optional<ElementKind> lacks() {
      return Optional.of(piece.element().kind());
    }

    @Override
    public String text() {
      return piece.element().kind()
          + " "
          + piece.element().id()
          + ": more than one element has this id";
    }
  }

  /**
   * It is not shown that two elements meet as they should.
   *
   * @param join what must be shown; not null
   * @param shown no if they do not, unknown if nobody looked at these two, or something is missing
   */
  record NotJoined(Join join, YesNoUnknown shown) implements SetGap {
    /** Checks for nulls. */
    public NotJoined {
      Objects.requireNonNull(join, "join");
      Objects.requireNonNull(shown, "shown");
    }

    @Override
    public Optional<ElementKind> lacks() {
      return Optional.empty();
    }

    @Override
    public String text() {
      return join.place()
          + (shown == YesNoUnknown.NO
              ? ": they do not meet as they must"
              : ": not shown for these two")
          + join.leastOverlap().map(least -> ", overlap of at least " + least).orElse("");
    }
  }

  /**
   * Returns the kind of element that another one would have to take the place of.
   *
   * @return the kind; empty where no element is missing or spoken against
   */
  Optional<ElementKind> lacks();

  /**
   * Returns it in words.
   *
   * @return the text; never null
   */
  String text();
}
