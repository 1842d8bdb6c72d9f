package org.ensemblerules.tables;

import java.util.Objects;
import org.ensemblerules.effect.DoerRegister;
import org.ensemblerules.source.Checked;
import org.ensemblerules.tables.codec.AssessmentTree;
import org.ensemblerules.tables.codec.DoerRegisterTree;
import org.ensemblerules.tables.json.JsonLine;
import org.ensemblerules.tables.json.JsonReader;

/**
 * Reads and writes registers of doers as JSON, in the form of {@code doers.schema.json} of this
 * package's {@code schema} folder. Safe for use by many threads.
 */
public final class DoerRegisterJson {
  private static final int LONGEST = 16 * 1024 * 1024;
  private static final JsonReader READER = AssessmentTree.reader(LONGEST);

  private DoerRegisterJson() {}

  /**
   * Reads a register.
   *
   * @param sourceName the name of the text, for faults, such as a file's path; not null
   * @param json the text, at most 16,777,216 characters, nested at most 16 deep; not null
   * @return the register, or every fault with its place; never null
   */
  public static Checked<DoerRegister, JsonFault> read(String sourceName, String json) {
    Objects.requireNonNull(sourceName, "sourceName");
    Objects.requireNonNull(json, "json");
    return READER.read(sourceName, json, DoerRegisterTree::read);
  }

  /**
   * Writes a register.
   *
   * @param register the register; not null
   * @return one line of JSON without a line end; reading it gives an equal register; never null
   */
  public static String write(DoerRegister register) {
    return JsonLine.of(DoerRegisterTree.write(Objects.requireNonNull(register, "register")));
  }
}
