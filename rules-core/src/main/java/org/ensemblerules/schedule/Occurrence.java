package org.ensemblerules.schedule;

import org.ensemblerules.history.Moment;

/**
 * Something that called for a task.
 *
 * @param when when
 * @param what what, in words
 */
record Occurrence(Moment when, String what) {
  String text() {
    return what + " " + when;
  }
}
