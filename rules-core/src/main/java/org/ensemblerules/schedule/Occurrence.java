package org.ensemblerules.schedule;

import org.ensemblerules.history.When;

/**
 * Something that called for a task.
 *
 * @param when when
 * @param what what, in words
 */
record Occurrence(When when, String what) {
  String text() {
    return what + " " + when;
  }
}
