package org.ensemblerules.source;

import java.util.Objects;
import java.util.Optional;

/**
 * A document or study that rows cite.
 *
 * @param id its short name; not null
 * @param kind what sort of document it is; not null
 * @param title its title, 1 to 300 characters; not null
 * @param issuer who published it; empty if not known
 * @param date its edition or date as printed; empty if not known
 * @param seenAt the public address where it was read; empty if its own text was not seen
 */
public record Source(
    SourceId id,
    SourceKind kind,
    String title,
    Optional<String> issuer,
    Optional<String> date,
    Optional<String> seenAt) {

  /**
   * Checks the texts.
   *
   * @throws InvalidValueException if a text is blank or too long
   */
  public Source {
    Objects.requireNonNull(id, "id");
    Objects.requireNonNull(kind, "kind");
    InvalidValueException.requireText("Source.title", title, 300);
    issuer.ifPresent(text -> InvalidValueException.requireText("Source.issuer", text, 200));
    date.ifPresent(text -> InvalidValueException.requireText("Source.date", text, 60));
    seenAt.ifPresent(text -> InvalidValueException.requireText("Source.seenAt", text, 300));
  }
}
