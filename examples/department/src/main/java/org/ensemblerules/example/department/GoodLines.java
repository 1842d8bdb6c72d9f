package org.ensemblerules.example.department;

import java.io.PrintWriter;
import java.util.Iterator;
import java.util.NoSuchElementException;
import java.util.Optional;
import org.ensemblerules.tables.AssessmentLines;
import org.ensemblerules.verdict.Assessment;

/** The assessments of a file; a bad line is named, counted and passed over. */
final class GoodLines implements Iterator<Assessment> {
  private final AssessmentLines lines;
  private final PrintWriter err;
  private Optional<Assessment> ahead = Optional.empty();
  private int bad;

  GoodLines(AssessmentLines lines, PrintWriter err) {
    this.lines = lines;
    this.err = err;
  }

  /** How many lines were bad so far. */
  int bad() {
    return bad;
  }

  @Override
  public boolean hasNext() {
    while (ahead.isEmpty() && lines.hasNext()) {
      AssessmentLines.Outcome outcome = lines.next();
      if (outcome instanceof AssessmentLines.Line line) {
        ahead = Optional.of(line.assessment());
      } else if (outcome instanceof AssessmentLines.BadLine refused) {
        bad++;
        refused.faults().forEach(err::println);
      }
    }
    return ahead.isPresent();
  }

  @Override
  public Assessment next() {
    if (!hasNext()) {
      throw new NoSuchElementException("no line is left");
    }
    Assessment next = ahead.orElseThrow();
    ahead = Optional.empty();
    return next;
  }
}
