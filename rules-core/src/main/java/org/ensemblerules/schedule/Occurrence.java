package org.ensemblerules.schedule;

import java.util.Comparator;
import org.ensemblerules.history.Moment;

/**
 * Something that called for a task.
 *
 * @param when when
 * @param what what, in words
 */
record Occurrence(Moment when, String what) {
  static final Comparator<Occurrence> ORDER =
      Comparator.comparing(Occurrence::when, Moment.FIRST_CERTAIN).thenComparing(Occurrence::what);

  String text() {
    return what + " " + when;
  }
}
