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
import java.util.function.Function;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.ensemblerules.source.Checked;
import org.ensemblerules.source.FaultCode;
import org.ensemblerules.source.InvalidValueException;
import org.ensemblerules.tables.lines.ByteLines;
import org.ensemblerules.tables.lines.CharacterLines;
import org.ensemblerules.tables.lines.LineSource;
import org.ensemblerules.tables.lines.RawLine;
import org.ensemblerules.tables.message.JsonFault;
import org.jspecify.annotations.Nullable;

/**
 * Reads JSON Lines: one value on each line, in memory that does not grow with the number of lines.
 * A bad line is handed over with its faults and its text, and reading goes on. Lines end with a
 * line feed, or a carriage return and a line feed; blank lines are passed over, and so is a byte
 * order mark.
 *
 * <p>Nothing that a line holds ends the reading of those after it. Whatever goes wrong in reading
 * it, or in answering it by {@link #map}, is a fault of that line; what should not have gone wrong
 * is named as a defect of this library. Only an {@link Error}, such as too little memory, and a
 * failure to read ({@link UncheckedIOException}, so that it is never taken for the end) get
 * through.
 *
 * <pre>{@code
 * try (JsonLines<String> answers =
 *     JsonLines.of("turnouts.jsonl", stream, AssessmentJson::read)
 *         .map(gear -> VerdictJson.write(rules.assess(gear, asOf)))) {
 *   while (answers.hasNext()) {
 *     JsonLines.Entry<String> outcome = answers.next();
 *     if (outcome instanceof JsonLines.Line<String> line) {
 *       write(line.value());
 *     } else if (outcome instanceof JsonLines.BadLine<String> bad) {
 *       report(bad.faults());
 *     }
 *   }
 * }
 * }</pre>
 *
 * <p>For use by one thread at a time.
 *
 * @param <T> what a line says
 * @since 0.1
 */
public final class JsonLines<T> implements Iterator<JsonLines.Entry<T>>, AutoCloseable {
  /** The length that a line may have unless another is chosen: 1,048,576 bytes or characters. */
  public static final int USUAL_LONGEST = 1024 * 1024;

  /** The largest length that can be chosen: 16,777,216 bytes or characters. */
  public static final int LARGEST_LONGEST = LineSource.LARGEST_LONGEST;

  private final String sourceName;
  private final LineSource lines;
  private final Reading<T> reading;
  private @Nullable RawLine ahead;

  private JsonLines(String sourceName, LineSource lines, Reading<T> reading) {
    this.sourceName = Objects.requireNonNull(sourceName, "sourceName");
    this.lines = lines;
    this.reading = Objects.requireNonNull(reading, "reading");
  }

  /**
   * How a line is read, as by {@link AssessmentJson#read(String, String)}.
   *
   * @param <T> what it says
   */
  @FunctionalInterface
  public interface Reading<T> {
    /**
     * Reads a line.
     *
     * @param sourceName the name and number of the line, for faults; not null
     * @param json the line without its end; not null
     * @return what it says, or every fault; never null
     */
    Checked<T, JsonFault> read(String sourceName, String json);
  }

  /**
   * What came of one line.
   *
   * @param <T> what a line says
   */
  public sealed interface Entry<T> {
    /**
     * Returns which line it is.
     *
     * @return the number, from 1, blank lines counted
     */
    long number();
  }

  /**
   * A good line.
   *
   * @param number which line, from 1, blank lines counted
   * @param value what it says; not null
   * @param <T> its type
   */
  public record Line<T>(long number, T value) implements Entry<T> {
    /** Checks for null. */
    public Line {
      Objects.requireNonNull(value, "value");
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
   * @param <T> what a line says
   */
  public record BadLine<T>(long number, List<JsonFault> faults, String text, boolean whole)
      implements Entry<T> {
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
   * @param reading how a line is read; not null
   * @param <T> what a line says
   * @return the lines; never null
   */
  public static <T> JsonLines<T> of(String sourceName, InputStream stream, Reading<T> reading) {
    return of(sourceName, stream, reading, USUAL_LONGEST);
  }

  /**
   * Reads lines of UTF-8.
   *
   * @param sourceName the name of the file or stream, for faults; not null
   * @param stream the bytes; closed with the lines; not null
   * @param reading how a line is read; not null
   * @param longest how many bytes a line may have, 1 to {@link #LARGEST_LONGEST}
   * @param <T> what a line says
   * @return the lines; never null
   * @throws InvalidValueException if the length is out of range
   */
  public static <T> JsonLines<T> of(
      String sourceName, InputStream stream, Reading<T> reading, int longest) {
    return new JsonLines<>(sourceName, new ByteLines(stream, longest), reading);
  }

  /**
   * Reads lines of at most {@link #USUAL_LONGEST} characters.
   *
   * @param sourceName the name of the file or stream, for faults; not null
   * @param characters the characters; closed with the lines; not null
   * @param reading how a line is read; not null
   * @param <T> what a line says
   * @return the lines; never null
   */
  public static <T> JsonLines<T> of(String sourceName, Reader characters, Reading<T> reading) {
    return of(sourceName, characters, reading, USUAL_LONGEST);
  }

  /**
   * Reads lines.
   *
   * @param sourceName the name of the file or stream, for faults; not null
   * @param characters the characters; closed with the lines; not null
   * @param reading how a line is read; not null
   * @param longest how many characters a line may have, 1 to {@link #LARGEST_LONGEST}
   * @param <T> what a line says
   * @return the lines; never null
   * @throws InvalidValueException if the length is out of range
   */
  public static <T> JsonLines<T> of(
      String sourceName, Reader characters, Reading<T> reading, int longest) {
    return new JsonLines<>(sourceName, new CharacterLines(characters, longest), reading);
  }

  /**
   * Answers each good line as it is read. To be asked for before the first line is read; closing
   * what it returns closes these lines.
   *
   * @param answer what to make of what a line says; what it throws is a fault of that line; not
   *     null
   * @param <R> what is made of it
   * @return the answers, with the faults of bad lines as they are; never null
   */
  public <R> JsonLines<R> map(Function<? super T, ? extends R> answer) {
    Objects.requireNonNull(answer, "answer");
    return new JsonLines<>(
        sourceName, lines, (source, json) -> reading.read(source, json).map(answer));
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
      if (ahead == null) {
        ahead = lines.nextWritten();
      }
      return ahead != null;
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
  public Entry<T> next() {
    if (!hasNext()) {
      throw new NoSuchElementException(sourceName);
    }
    RawLine line = Objects.requireNonNull(ahead, "ahead");
    ahead = null;
    Checked<T, JsonFault> loaded = read(sourceName + ":" + line.number(), line);
    return loaded instanceof Checked.Refused<T, JsonFault> bad
        ? new BadLine<>(line.number(), bad.faults(), line.text(), line.whole())
        : new Line<>(line.number(), loaded.orElseThrow());
  }

  private Checked<T, JsonFault> read(String source, RawLine line) {
    if (line.problem().isPresent()) {
      RawLine.Problem problem = line.problem().get();
      return new Checked.Refused<>(
          List.of(
              new JsonFault(FaultCode.UNREADABLE, source, "", problem.found(), problem.allowed())));
    }
    try {
      return reading.read(source, line.text());
    } catch (RuntimeException e) {
      return new Checked.Refused<>(List.of(JsonFault.defect(source, e)));
    }
  }

  /**
   * Returns the lines that are left, one by one.
   *
   * @return the lines in their order; closing it closes these lines; never null
   */
  public Stream<Entry<T>> stream() {
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
