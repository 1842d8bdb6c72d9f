package org.ensemblerules.source;

import com.google.common.collect.ImmutableSet;
import java.time.LocalDate;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A document or study that rows cite, or a page on which rows were seen restated.
 *
 * @param id its short name; not null
 * @param kind what sort of document it is; not null
 * @param title its title, 1 to 300 characters; not null
 * @param issuer who published it; empty if not known
 * @param date its edition or date as printed; empty if not known
 * @param seenAt the public address where it was read; empty if its own text was not seen, or if its
 *     kind keeps the address back
 * @param seenOn the last day on which it was seen there; empty if that was not written down
 * @param restates the documents whose requirements it restates, each as far as it names it: of a
 *     page that names no edition, the standard with its edition open; empty if it restates none;
 *     not null
 * @since 0.1
 */
public record Source(
    SourceId id,
    SourceKind kind,
    String title,
    Optional<String> issuer,
    Optional<String> date,
    Optional<String> seenAt,
    Optional<LocalDate> seenOn,
    Set<SourceId> restates) {

  /**
   * Checks the texts.
   *
   * @throws InvalidValueException if a text is blank or too long, if a page of somebody who sells
   *     names its issuer or address, or if the document restates itself
   */
  public Source {
    Objects.requireNonNull(id, "id");
    Objects.requireNonNull(kind, "kind");
    InvalidValueException.requireText("Source.title", title, 300);
    issuer.ifPresent(text -> InvalidValueException.requireText("Source.issuer", text, 200));
    date.ifPresent(text -> InvalidValueException.requireText("Source.date", text, 60));
    seenAt.ifPresent(text -> InvalidValueException.requireText("Source.seenAt", text, 300));
    Objects.requireNonNull(seenOn, "seenOn");
    restates = ImmutableSet.copyOf(restates);
    boolean kept = kind == SourceKind.COMMERCIAL;
    InvalidValueException.require(
        !kept || issuer.isEmpty(),
        "Source.issuer",
        issuer.orElse(""),
        "none of a page of this kind");
    InvalidValueException.require(
        !kept || seenAt.isEmpty(),
        "Source.seenAt",
        seenAt.orElse(""),
        "none of a page of this kind");
    InvalidValueException.require(
        !restates.contains(id), "Source.restates", restates, "documents other than itself");
  }

  /**
   * Names it so that a reader can follow it: its title, who published it and when, where it was
   * read and on which day it was last seen there, as far as each is known.
   *
   * @return one line; of a page whose kind keeps its address back, title and date alone; never null
   */
  public String citation() {
    return Stream.of(
            Optional.of(title),
            issuer,
            date,
            seenAt.or(() -> Optional.of(wasSeen() ? "address kept back" : "own text not seen")),
            seenOn.map(day -> "seen on " + day))
        .flatMap(Optional::stream)
        .collect(Collectors.joining(", "));
  }

  /**
   * Tells whether somebody saw it: its own text, or a page of a kind that keeps its address back.
   *
   * @return false of a document known only from others
   */
  public boolean wasSeen() {
    return seenAt.isPresent() || kind == SourceKind.COMMERCIAL;
  }
}
