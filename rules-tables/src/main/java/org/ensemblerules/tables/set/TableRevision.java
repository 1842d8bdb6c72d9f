package org.ensemblerules.tables.set;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.ensemblerules.source.InvalidValueException;
import org.ensemblerules.source.OriginId;

/**
 * What the head of a table file says.
 *
 * @param file the path of the file in its set; not null
 * @param table the name of the table, as in {@code age-limits}; not null
 * @param edition the edition that the file is for; empty for sources and editions themselves
 * @param revision the number of the file's revision, 1 or more
 * @param about what the file is about, 1 to 300 characters; not null
 * @param knownGaps what is known to be missing from it, each 1 to 500 characters; not null
 * @since 0.1
 */
public record TableRevision(
    String file,
    String table,
    Optional<OriginId> edition,
    int revision,
    String about,
    List<String> knownGaps) {
  /**
   * Checks the texts and the number.
   *
   * @throws InvalidValueException if the revision is below 1 or a text blank or too long
   */
  public TableRevision {
    Objects.requireNonNull(file, "file");
    Objects.requireNonNull(table, "table");
    Objects.requireNonNull(edition, "edition");
    InvalidValueException.require(revision >= 1, "TableRevision.revision", revision, "1 or more");
    InvalidValueException.requireText("TableRevision.about", about, 300);
    knownGaps = List.copyOf(knownGaps);
    knownGaps.forEach(
        gap -> InvalidValueException.requireText("TableRevision.knownGaps", gap, 500));
  }
}
