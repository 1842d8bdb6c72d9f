package org.ensemblerules.tables;

import java.util.List;
import java.util.Objects;
import org.ensemblerules.GearRules;
import org.ensemblerules.effect.DoerRegister;
import org.ensemblerules.record.RecordFile;
import org.ensemblerules.source.Checked;
import org.ensemblerules.tables.codec.AssessmentTree;
import org.ensemblerules.tables.codec.CriterionNames;
import org.ensemblerules.tables.codec.NamedDoers;
import org.ensemblerules.tables.codec.RecordFileTree;
import org.ensemblerules.tables.json.JsonLine;
import org.ensemblerules.tables.json.JsonReader;
import org.ensemblerules.tables.message.JsonFault;
import org.ensemblerules.tables.message.UnknownDoer;

/**
 * Reads and writes the files of elements as JSON, in the form of {@code file.schema.json} of this
 * package's {@code schema} folder. What is not known is left out; {@code null} is refused, and so
 * are fields that nobody knows and fields given twice. Safe for use by many threads.
 *
 * @since 0.1
 */
public final class RecordFileJson {
  private static final int LONGEST = 16 * 1024 * 1024;
  private static final JsonReader READER = AssessmentTree.reader(LONGEST);

  private RecordFileJson() {}

  /**
   * Reads an element's file.
   *
   * @param sourceName the name of the text, for faults, such as a file's path; not null
   * @param json the text, at most 16,777,216 characters, nested at most 16 deep; not null
   * @return the file, or every fault with its place; never null
   */
  public static Checked<RecordFile, JsonFault> read(String sourceName, String json) {
    Objects.requireNonNull(sourceName, "sourceName");
    Objects.requireNonNull(json, "json");
    return READER.read(sourceName, json, RecordFileTree::read);
  }

  /**
   * Makes a reader of files that name doers of a register, as {@link AssessmentJson#naming} does.
   *
   * @param register those whom the texts name; not null
   * @param unknown what becomes of a name that the register does not have; not null
   * @return the reader, for a single text or for {@link JsonLines}; never null
   */
  public static JsonLines.Reading<RecordFile> naming(DoerRegister register, UnknownDoer unknown) {
    return beside(List.of(NamedDoers.of(register, unknown)));
  }

  /**
   * Makes a reader of files that name criteria short within their inspection, as {@link
   * AssessmentJson#under} does.
   *
   * @param rules the rules whose criteria are named; not null
   * @return the reader, for a single text or for {@link JsonLines}; never null
   */
  public static JsonLines.Reading<RecordFile> under(GearRules rules) {
    return beside(List.of(new CriterionNames(rules.tables().criteria())));
  }

  /**
   * Makes a reader of files that name doers of a register and criteria short, as {@link
   * AssessmentJson#naming(DoerRegister, UnknownDoer, GearRules)} does.
   *
   * @param register those whom the texts name; not null
   * @param unknown what becomes of a name that the register does not have; not null
   * @param rules the rules whose criteria are named; not null
   * @return the reader, for a single text or for {@link JsonLines}; never null
   */
  public static JsonLines.Reading<RecordFile> naming(
      DoerRegister register, UnknownDoer unknown, GearRules rules) {
    return beside(
        List.of(NamedDoers.of(register, unknown), new CriterionNames(rules.tables().criteria())));
  }

  private static JsonLines.Reading<RecordFile> beside(List<Object> beside) {
    return (sourceName, json) ->
        READER.read(
            Objects.requireNonNull(sourceName, "sourceName"),
            Objects.requireNonNull(json, "json"),
            beside,
            RecordFileTree::read);
  }

  /**
   * Writes an element's file.
   *
   * @param file the file; not null
   * @return one line of JSON without a line end, its fields in a fixed order; reading it gives an
   *     equal file; never null
   */
  public static String write(RecordFile file) {
    return JsonLine.of(RecordFileTree.write(Objects.requireNonNull(file, "file")));
  }
}
