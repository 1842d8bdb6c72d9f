package org.ensemblerules.source;

import com.google.common.collect.ImmutableList;
import java.util.List;
import java.util.stream.Stream;

/**
 * The editions of a subject in the order of publication, up to the one in force. What a later
 * edition took over as it was, an earlier one had.
 *
 * @param through the editions, the one in force last; empty if none is; not null
 * @since 0.1
 */
public record EditionOrder(List<OriginId> through) {
  /** Copies the list. */
  public EditionOrder {
    through = ImmutableList.copyOf(through);
  }

  /**
   * Puts editions in order.
   *
   * @param inForce the one in force; not null
   * @param published all of the subject, in any order; later ones are left out; not null
   * @return the order; never null
   */
  public static EditionOrder upTo(Edition inForce, List<Edition> published) {
    return new EditionOrder(
        Stream.concat(published.stream(), Stream.of(inForce))
            .filter(each -> each.compareTo(inForce) <= 0)
            .sorted()
            .map(Edition::id)
            .distinct()
            .toList());
  }

  /**
   * Tells whether an edition has a row of the edition in force just as it stands there: it is the
   * edition in force itself, or was published before it, and the row was written by then. Of an
   * edition that is not among these, a later one among them, nobody here can say.
   *
   * @param edition the edition asked about; not null
   * @param row where a row of the edition in force comes from; not null
   * @return true if it has the row
   */
  public boolean has(OriginId edition, Provenance row) {
    int asked = through.indexOf(edition);
    if (asked < 0 || asked == through.size() - 1) {
      return asked >= 0;
    }
    int written = through.indexOf(row.origin());
    return written >= 0 && written <= asked;
  }
}
