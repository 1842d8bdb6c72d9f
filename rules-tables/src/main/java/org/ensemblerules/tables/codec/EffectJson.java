package org.ensemblerules.tables.codec;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import org.ensemblerules.effect.Effect;
import org.ensemblerules.effect.PermissionRow;

/** Writes effects as table files have them, and who may carry them out. */
final class EffectJson {
  private EffectJson() {}

  static JsonNode write(Effect effect) {
    Fields fields = new Fields().put("kind", effect.effectKind());
    if (effect instanceof Effect.Clean clean) {
      fields.put("cleaning", clean.kind()).put("scope", clean.scope());
    } else if (effect instanceof Effect.Repair repair) {
      fields.put("class", repair.repairClass()).put("scope", repair.scope());
    } else if (effect instanceof Effect.ReplacePart replace) {
      fields.put("class", replace.repairClass());
    } else if (effect instanceof Effect.Evaluate evaluate) {
      fields.put("check", evaluate.check()).put("scope", evaluate.scope());
    } else if (effect instanceof Effect.Retire retire) {
      fields.put("scope", retire.scope());
    }
    return fields.node();
  }

  /** Puts who may do something, each with the credential needed. */
  static Fields doers(Fields fields, List<PermissionRow> rows) {
    return fields.list(
        "by",
        rows,
        row -> new Fields().put("entity", row.entity()).known("needs", row.needs()).node());
  }
}
