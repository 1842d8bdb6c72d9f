package org.ensemblerules.tables.codec;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.ensemblerules.effect.Doer;
import org.ensemblerules.effect.DoerRegister;
import org.ensemblerules.source.FaultCode;
import org.ensemblerules.tables.json.JsonCursor;
import org.ensemblerules.tables.json.ObjectCursor;

/** The JSON form of a register of doers. */
public final class DoerRegisterTree {
  /** The field that lists them. */
  public static final String DOERS = "doers";

  private DoerRegisterTree() {}

  /** Reads who stands in a register; a name again with other particulars is a fault. */
  public static Optional<List<Doer>> read(JsonCursor at) {
    ObjectCursor object = at.object();
    Map<String, Doer> seen = new HashMap<>();
    Optional<List<Doer>> doers =
        object.required(DOERS, value -> value.list(entry -> once(entry, seen)));
    return object.make(doers::orElseThrow);
  }

  private static Optional<Doer> once(JsonCursor at, Map<String, Doer> seen) {
    Optional<Doer> read = DoerJson.inFull(at);
    if (read.isPresent()) {
      Doer doer = read.get();
      if (!doer.registered()) {
        return at.fault("registered false", "a doer who is registered");
      }
      Doer other = seen.putIfAbsent(doer.name(), doer);
      if (other != null && !other.equals(doer)) {
        return at.fault(
            FaultCode.DUPLICATE,
            "\"" + doer.name() + "\" again with other particulars",
            "each name once, or with the same particulars");
      }
    }
    return read;
  }

  /** Writes a register. */
  public static JsonNode write(DoerRegister register) {
    ArrayNode doers = JsonNodeFactory.instance.arrayNode();
    register.doers().forEach(doer -> doers.add(DoerJson.write(doer)));
    return new Fields().put(DOERS, doers).node();
  }
}
