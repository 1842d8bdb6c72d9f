package org.ensemblerules.tables;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.ensemblerules.source.Checked;
import org.ensemblerules.source.InvalidValueException;
import org.ensemblerules.tables.codec.AssessmentTree;
import org.ensemblerules.tables.codec.LineTree;
import org.ensemblerules.tables.json.JsonLine;
import org.ensemblerules.tables.json.JsonReader;

/**
 * Writes and reads what came of a line of JSON Lines, in the form of {@code line.schema.json} of
 * this package's {@code schema} folder: which line it was, what it is about, and either its answer
 * or its faults. So a program that asks many questions knows which line each answer belongs to.
 * Safe for use by many threads.
 */
public final class LineJson {
  private static final int LONGEST = 64 * 1024 * 1024;
  private static final JsonReader READER = AssessmentTree.reader(LONGEST);

  private LineJson() {}

  /** What came of a line. */
  public sealed interface Entry {
    /**
     * Returns where the line stands.
     *
     * @return the name of the file or stream; never null
     */
    String source();

    /**
     * Returns which line it is.
     *
     * @return the number, from 1, blank lines counted
     */
    long line();

    /**
     * Returns what the line is about.
     *
     * @return the id of its element, or its own; empty if it has none or it could not be read
     */
    Optional<String> id();
  }

  /**
   * A line that was answered.
   *
   * @param source the name of the file or stream; not null
   * @param line which line, from 1
   * @param id the id of its element, or its own; empty if it has none; not null
   * @param cautions what holds for its element whatever is done to it; empty where the answer has
   *     its own; not null
   * @param answer the answer as JSON, an object, as this package's other classes write it; not null
   */
  public record Answered(
      String source, long line, Optional<String> id, List<String> cautions, String answer)
      implements Entry {
    /**
     * Copies the cautions, and checks that the answer is an object.
     *
     * @throws InvalidValueException if it is none
     */
    public Answered {
      Objects.requireNonNull(source, "source");
      Objects.requireNonNull(id, "id");
      cautions = List.copyOf(cautions);
      InvalidValueException.require(
          answer.startsWith("{") && answer.endsWith("}"), "Answered.answer", answer, "an object");
    }
  }

  /**
   * A line that was refused.
   *
   * @param source the name of the file or stream; not null
   * @param line which line, from 1
   * @param id the id of its element, or its own, as far as it can be read; not null
   * @param faults every fault, at least one; not null
   */
  public record Refused(String source, long line, Optional<String> id, List<JsonFault> faults)
      implements Entry {
    /**
     * Copies the faults.
     *
     * @throws InvalidValueException if there is no fault
     */
    public Refused {
      Objects.requireNonNull(source, "source");
      Objects.requireNonNull(id, "id");
      faults = List.copyOf(faults);
      InvalidValueException.require(!faults.isEmpty(), "Refused.faults", faults, "at least one");
    }

    /**
     * Makes what came of a bad line. What it is about is read from the line itself as far as that
     * goes.
     *
     * @param source the name of the file or stream; not null
     * @param bad the line; not null
     * @return what came of it; never null
     */
    public static Refused of(String source, JsonLines.BadLine<?> bad) {
      return new Refused(source, bad.number(), LineTree.id(READER, bad.text()), bad.faults());
    }
  }

  /**
   * Writes what came of a line.
   *
   * @param outcome what came of it; not null
   * @return one line of JSON without a line end, its fields in a fixed order; never null
   */
  public static String write(Entry outcome) {
    String line = JsonLine.of(LineTree.write(Objects.requireNonNull(outcome, "outcome")));
    // The answer is JSON already.
    return outcome instanceof Answered answered
        ? line.substring(0, line.length() - 1) + ",\"answer\":" + answered.answer() + "}"
        : line;
  }

  /**
   * Reads the faults of a line that was refused.
   *
   * @param sourceName the name of the text, for faults; not null
   * @param json the text; not null
   * @return what came of the line, or every fault with its place, as for a line that was answered;
   *     never null
   */
  public static Checked<Refused, JsonFault> readRefused(String sourceName, String json) {
    Objects.requireNonNull(sourceName, "sourceName");
    Objects.requireNonNull(json, "json");
    return READER.read(sourceName, json, LineTree::readRefused);
  }
}
