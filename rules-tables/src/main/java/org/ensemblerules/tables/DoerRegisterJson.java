package org.ensemblerules.tables;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.ensemblerules.effect.Doer;
import org.ensemblerules.effect.DoerRegister;
import org.ensemblerules.source.Checked;
import org.ensemblerules.source.FaultCode;
import org.ensemblerules.tables.codec.AssessmentTree;
import org.ensemblerules.tables.codec.DoerRegisterTree;
import org.ensemblerules.tables.json.EntryLines;
import org.ensemblerules.tables.json.JsonLine;
import org.ensemblerules.tables.json.JsonReader;
import org.ensemblerules.tables.message.JsonFault;

/**
 * Reads and writes registers of doers as JSON, in the form of {@code doers.schema.json} of this
 * package's {@code schema} folder. Safe for use by many threads.
 *
 * @since 0.1
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
    return readAll(Map.of(sourceName, json));
  }

  /**
   * Reads several registers as one. Where two say of one name who that is, they must say the same.
   *
   * @param texts the texts by their names, each as {@link #read} takes it, read in the order of the
   *     map; not null
   * @return those of all registers, or every fault with its place; where two disagree, the lines of
   *     both; never null
   */
  public static Checked<DoerRegister, JsonFault> readAll(Map<String, String> texts) {
    List<JsonFault> faults = new ArrayList<>();
    Map<String, Placed> all = new LinkedHashMap<>();
    texts.forEach((sourceName, json) -> read(sourceName, json, all, faults));
    return Checked.of(
        faults, () -> DoerRegister.of(all.values().stream().map(Placed::doer).toList()));
  }

  private record Placed(Doer doer, String place) {}

  private static void read(
      String sourceName, String json, Map<String, Placed> all, List<JsonFault> faults) {
    Checked<List<Doer>, JsonFault> read = READER.read(sourceName, json, DoerRegisterTree::read);
    if (read instanceof Checked.Refused<List<Doer>, JsonFault> refused) {
      faults.addAll(refused.faults());
      return;
    }
    List<Doer> doers = read.orElseThrow();
    List<Integer> lines = EntryLines.of(json, DoerRegisterTree.DOERS);
    for (int i = 0; i < doers.size(); i++) {
      Doer doer = doers.get(i);
      String place = sourceName + ":" + lines.get(i);
      Placed other = all.putIfAbsent(doer.name(), new Placed(doer, place));
      if (other != null && !other.doer().equals(doer)) {
        faults.add(
            new JsonFault(
                FaultCode.DUPLICATE,
                place,
                "/" + DoerRegisterTree.DOERS + "/" + i,
                "\"" + doer.name() + "\" with other particulars than in " + other.place(),
                "the same particulars of a name wherever it stands"));
      }
    }
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
