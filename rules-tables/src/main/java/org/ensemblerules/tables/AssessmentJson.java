package org.ensemblerules.tables;

import java.util.List;
import java.util.Objects;
import org.ensemblerules.GearRules;
import org.ensemblerules.effect.DoerRegister;
import org.ensemblerules.source.Checked;
import org.ensemblerules.tables.codec.AssessmentTree;
import org.ensemblerules.tables.codec.CriterionNames;
import org.ensemblerules.tables.codec.NamedDoers;
import org.ensemblerules.tables.json.JsonLine;
import org.ensemblerules.tables.json.JsonReader;
import org.ensemblerules.tables.message.JsonFault;
import org.ensemblerules.tables.message.UnknownDoer;
import org.ensemblerules.verdict.Assessment;

/**
 * Reads and writes assessments as JSON, in the form of {@code assessment.schema.json} of this
 * package's {@code schema} folder. What is not known is left out; {@code null} is refused, and so
 * are fields that nobody knows and fields given twice. Safe for use by many threads.
 *
 * @since 0.1
 */
public final class AssessmentJson {
  private static final int LONGEST = 16 * 1024 * 1024;
  private static final JsonReader READER = AssessmentTree.reader(LONGEST);

  private AssessmentJson() {}

  /**
   * Reads an assessment.
   *
   * @param sourceName the name of the text, for faults, such as a file's path; not null
   * @param json the text, at most 16,777,216 characters, nested at most 16 deep; not null
   * @return the assessment, or every fault with its place; never null
   */
  public static Checked<Assessment, JsonFault> read(String sourceName, String json) {
    Objects.requireNonNull(sourceName, "sourceName");
    Objects.requireNonNull(json, "json");
    return READER.read(sourceName, json, AssessmentTree::read);
  }

  /**
   * Makes a reader of assessments that name doers of a register, {@code "by": "Gear room"}, in
   * place of repeating who they are and what they are trained or verified for. Doers in full are
   * read as ever.
   *
   * @param register those whom the texts name; not null
   * @param unknown what becomes of a name that the register does not have; not null
   * @return the reader, for a single text or for {@link JsonLines}; never null
   */
  public static JsonLines.Reading<Assessment> naming(DoerRegister register, UnknownDoer unknown) {
    return beside(List.of(NamedDoers.of(register, unknown)));
  }

  /**
   * Makes a reader of assessments that name criteria short within their inspection, {@code
   * "labels"} in place of the whole key: by the end of the key of their family after a hyphen, if
   * no other criterion of that inspection ends so. A short name that is none, or that may be
   * several, is a fault that lists those allowed. Keys in full are read as ever.
   *
   * @param rules the rules whose criteria are named; not null
   * @return the reader, for a single text or for {@link JsonLines}; never null
   */
  public static JsonLines.Reading<Assessment> under(GearRules rules) {
    return beside(List.of(new CriterionNames(rules.tables().criteria())));
  }

  /**
   * Makes a reader of assessments that name doers of a register, as {@link #naming(DoerRegister,
   * UnknownDoer)} does, and criteria short, as {@link #under} does.
   *
   * @param register those whom the texts name; not null
   * @param unknown what becomes of a name that the register does not have; not null
   * @param rules the rules whose criteria are named; not null
   * @return the reader, for a single text or for {@link JsonLines}; never null
   */
  public static JsonLines.Reading<Assessment> naming(
      DoerRegister register, UnknownDoer unknown, GearRules rules) {
    return beside(
        List.of(NamedDoers.of(register, unknown), new CriterionNames(rules.tables().criteria())));
  }

  private static JsonLines.Reading<Assessment> beside(List<Object> beside) {
    return (sourceName, json) ->
        READER.read(
            Objects.requireNonNull(sourceName, "sourceName"),
            Objects.requireNonNull(json, "json"),
            beside,
            AssessmentTree::read);
  }

  /**
   * Writes an assessment with short names of criteria, those of one outcome together.
   *
   * @param assessment the assessment; not null
   * @param rules the rules to read it beside; not null
   * @return one line of JSON without a line end; reading it by {@link #under} with the rules gives
   *     an equal assessment; never null
   */
  public static String write(Assessment assessment, GearRules rules) {
    return JsonLine.of(
        AssessmentTree.write(
            Objects.requireNonNull(assessment, "assessment"),
            new CriterionNames(rules.tables().criteria())));
  }

  /**
   * Writes an assessment with short names of criteria that names those of its doers who stand in a
   * register just as they do in the assessment.
   *
   * @param assessment the assessment; not null
   * @param register the register to read it beside; not null
   * @param rules the rules to read it beside; not null
   * @return one line of JSON without a line end; reading it by {@link #naming(DoerRegister,
   *     UnknownDoer, GearRules)} with both gives an equal assessment; never null
   */
  public static String write(Assessment assessment, DoerRegister register, GearRules rules) {
    return JsonLine.of(
        AssessmentTree.write(
            Objects.requireNonNull(assessment, "assessment"),
            new NamedDoers(Objects.requireNonNull(register, "register"), true),
            new CriterionNames(rules.tables().criteria())));
  }

  /**
   * Writes an assessment.
   *
   * @param assessment the assessment; not null
   * @return one line of JSON without a line end, its fields in a fixed order; reading it gives an
   *     equal assessment; never null
   */
  public static String write(Assessment assessment) {
    return JsonLine.of(AssessmentTree.write(Objects.requireNonNull(assessment, "assessment")));
  }

  /**
   * Writes an assessment that names those of its doers who stand in a register just as they do in
   * the assessment.
   *
   * @param assessment the assessment; not null
   * @param register the register to read it beside; not null
   * @return one line of JSON without a line end; reading it by {@link #naming} with the register
   *     gives an equal assessment; never null
   */
  public static String write(Assessment assessment, DoerRegister register) {
    return JsonLine.of(
        AssessmentTree.write(
            Objects.requireNonNull(assessment, "assessment"),
            new NamedDoers(Objects.requireNonNull(register, "register"), true)));
  }
}
