package org.ensemblerules.tables;

import java.io.IOException;
import java.io.InputStream;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.util.Iterator;
import java.util.List;
import java.util.NoSuchElementException;
import java.util.Objects;
import java.util.Spliterator;
import java.util.Spliterators;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.ensemblerules.source.FaultCode;
import org.ensemblerules.source.InvalidValueException;
import org.ensemblerules.tables.codec.AssessmentTree;
import org.ensemblerules.tables.json.JsonReader;
import org.ensemblerules.tables.lines.ByteLines;
import org.ensemblerules.tables.lines.CharacterLines;
import org.ensemblerules.tables.lines.LineSource;
import org.ensemblerules.tables.lines.RawLine;
import org.ensemblerules.verdict.Assessment;
import org.jspecify.annotations.Nullable;

/**
 * Reads assessments from JSON Lines: one assessment on each line, in memory that does not grow with
 * the number of lines. A bad line is handed over with its faults and its text, and reading goes on.
 * Lines end with a line feed, or a carriage return and a line feed; blank lines are passed over,
 * and so is a byte order mark.
 *
 * <pre>{@code
 * try (AssessmentLines lines = AssessmentLines.of("turnouts.jsonl", stream)) {
 *   while (lines.hasNext()) {
 *     AssessmentLines.Outcome outcome = lines.next();
 *     if (outcome instanceof AssessmentLines.Line line) {
 *       judge(line.assessment());
 *     } else if (outcome instanceof AssessmentLines.BadLine bad) {
 *       report(bad.faults());
 *     }
 *   }
 * }
 * }</pre>
 *
 * <p>For use by one thread at a time. A failure to read throws {@link UncheckedIOException}, so
 * that it is never taken for the end.
 */
public final class AssessmentLines implements Iterator<AssessmentLines.Outcome>, AutoCloseable {
  /** The length that a line may have unless another is chosen: 1,048,576 bytes or characters. */
  public static final int USUAL_LONGEST = 1024 * 1024;

  /** The largest length that can be chosen: 67,108,864 bytes or characters. */
  public static final int LARGEST_LONGEST = 64 * 1024 * 1024;

  private final String sourceName;
  private final LineSource lines;
  private final JsonReader reader;
  private @Nullable RawLine ahead;

  private AssessmentLines(String sourceName, LineSource lines, int longest) {
    this.sourceName = Objects.requireNonNull(sourceName, "sourceName");
    this.lines = lines;
    this.reader = AssessmentTree.reader(longest);
  }

  /** What came of one line. */
  public sealed interface Outcome {
    /**
     * Returns which line it is.
     *
     * @return the number, from 1, blank lines counted
     */
    long number();
  }

  /**
   * A line with an assessment.
   *
   * @param number which line, from 1, blank lines counted
   * @param assessment what it says; not null
   */
  public record Line(long number, Assessment assessment) implements Outcome {
    /** Checks for null. */
    public Line {
      Objects.requireNonNull(assessment, "assessment");
    }
  }

  /**
   * A line that was refused.
   *
   * @param number which line, from 1, blank lines counted
   * @param faults every fault, at least one; their source is the name and the number of the line
   * @param text the line as it stands, without its end; of a line that is too long only its
   *     beginning; bytes that are no UTF-8 stand one for one as the characters 0 to 255; not null
   * @param whole whether the text is the whole line
   */
  public record BadLine(long number, List<JsonFault> faults, String text, boolean whole)
      implements Outcome {
    /**
     * Copies the faults.
     *
     * @throws InvalidValueException if there is no fault
     */
    public BadLine {
      faults = List.copyOf(faults);
      InvalidValueException.require(!faults.isEmpty(), "BadLine.faults", faults, "at least one");
      Objects.requireNonNull(text, "text");
    }
  }

  /**
   * Reads lines of UTF-8 of at most {@link #USUAL_LONGEST} bytes.
   *
   * @param sourceName the name of the file or stream, for faults; not null
   * @param stream the bytes; closed with the lines; not null
   * @return the lines; never null
   */
  public static AssessmentLines of(String sourceName, InputStream stream) {
    return of(sourceName, stream, USUAL_LONGEST);
  }

  /**
   * Reads lines of UTF-8.
   *
   * @param sourceName the name of the file or stream, for faults; not null
   * @param stream the bytes; closed with the lines; not null
   * @param longest how many bytes a line may have, 1 to {@link #LARGEST_LONGEST}
   * @return the lines; never null
   * @throws InvalidValueException if the length is out of range
   */
  public static AssessmentLines of(String sourceName, InputStream stream, int longest) {
    return new AssessmentLines(sourceName, new ByteLines(stream, requireLongest(longest)), longest);
  }

  /**
   * Reads lines of at most {@link #USUAL_LONGEST} characters.
   *
   * @param sourceName the name of the file or stream, for faults; not null
   * @param characters the characters; closed with the lines; not null
   * @return the lines; never null
   */
  public static AssessmentLines of(String sourceName, Reader characters) {
    return of(sourceName, characters, USUAL_LONGEST);
  }

  /**
   * Reads lines.
   *
   * @param sourceName the name of the file or stream, for faults; not null
   * @param characters the characters; closed with the lines; not null
   * @param longest how many characters a line may have, 1 to {@link #LARGEST_LONGEST}
   * @return the lines; never null
   * @throws InvalidValueException if the length is out of range
   */
  public static AssessmentLines of(String sourceName, Reader characters, int longest) {
    return new AssessmentLines(
        sourceName, new CharacterLines(characters, requireLongest(longest)), longest);
  }

  private static int requireLongest(int longest) {
    InvalidValueException.require(
        longest >= 1 && longest <= LARGEST_LONGEST,
        "AssessmentLines.longest",
        longest,
        "1 to " + LARGEST_LONGEST);
    return longest;
  }

  /**
   * Tells whether there is another line that is not blank.
   *
   * @return whether {@link #next} gives one
   * @throws UncheckedIOException if reading fails
   */
  @Override
  public boolean hasNext() {
    try {
      while (ahead == null) {
        RawLine line = lines.next();
        if (line == null) {
          return false;
        }
        if (!line.isBlank()) {
          ahead = line;
        }
      }
      return true;
    } catch (IOException e) {
      throw new UncheckedIOException(sourceName, e);
    }
  }

  /**
   * Returns the next line that is not blank.
   *
   * @return what came of it; never null
   * @throws NoSuchElementException if there is none
   * @throws UncheckedIOException if reading fails
   */
  @Override
  public Outcome next() {
    if (!hasNext()) {
      throw new NoSuchElementException(sourceName);
    }
    RawLine line = Objects.requireNonNull(ahead, "ahead");
    ahead = null;
    String source = sourceName + ":" + line.number();
    if (line.problem().isPresent()) {
      RawLine.Problem problem = line.problem().get();
      JsonFault fault =
          new JsonFault(FaultCode.UNREADABLE, source, "", problem.found(), problem.allowed());
      return new BadLine(line.number(), List.of(fault), line.text(), line.whole());
    }
    Loaded<Assessment> loaded = reader.read(source, line.text(), AssessmentTree::read);
    if (loaded instanceof Loaded.Ok<Assessment> ok) {
      return new Line(line.number(), ok.value());
    }
    return new BadLine(
        line.number(), ((Loaded.Refused<Assessment>) loaded).faults(), line.text(), true);
  }

  /**
   * Returns the lines that are left, one by one.
   *
   * @return the lines in their order; closing it closes these lines; never null
   */
  public Stream<Outcome> stream() {
    return StreamSupport.stream(
            Spliterators.spliteratorUnknownSize(this, Spliterator.ORDERED | Spliterator.NONNULL),
            false)
        .onClose(this::close);
  }

  /**
   * Closes what the lines are read from.
   *
   * @throws UncheckedIOException if closing fails
   */
  @Override
  public void close() {
    try {
      lines.close();
    } catch (IOException e) {
      throw new UncheckedIOException(sourceName, e);
    }
  }
}
