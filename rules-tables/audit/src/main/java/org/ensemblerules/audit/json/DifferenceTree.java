package org.ensemblerules.audit.json;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Map;
import org.ensemblerules.audit.difference.DueMove;
import org.ensemblerules.audit.difference.FleetEffect;
import org.ensemblerules.audit.difference.Tally;
import org.ensemblerules.tables.codec.ElementJson;
import org.ensemblerules.tables.codec.Fields;
import org.ensemblerules.tables.codec.IdentityJson;
import org.ensemblerules.tables.codec.RowJson;
import org.ensemblerules.tables.codec.VerdictTree;

/** The JSON forms of what differs between two sets of rules. */
final class DifferenceTree {
  static final String DIFFERENCE = "difference";
  static final String BEFORE = "before";
  static final String AFTER = "after";

  /** What a line is about. */
  enum About {
    RULES,
    ROW,
    ELEMENT,
    FLEET
  }

  private DifferenceTree() {}

  /** Writes a line. */
  static JsonNode write(DifferenceLine line) {
    if (line instanceof DifferenceLine.Rules rules) {
      return write(rules);
    } else if (line instanceof DifferenceLine.ChangedRow row) {
      return write(row);
    } else if (line instanceof DifferenceLine.ChangedElement element) {
      return write(element);
    }
    return write((DifferenceLine.ChangedFleet) line);
  }

  private static Fields about(About about) {
    return new Fields().put(DIFFERENCE, about);
  }

  private static JsonNode write(DifferenceLine.Rules rules) {
    Fields counts = new Fields();
    rules.counts().forEach((table, kinds) -> counts.put(table, counts(kinds)));
    return about(About.RULES)
        .put(BEFORE, IdentityJson.write(rules.before()))
        .put(AFTER, IdentityJson.write(rules.after()))
        .put("counts", counts.node())
        .node();
  }

  private static JsonNode write(DifferenceLine.ChangedRow change) {
    return about(About.ROW)
        .put("kind", change.kind())
        .put("table", change.table())
        .list("topic", change.topic())
        .known(BEFORE, change.before(), DifferenceTree::write)
        .known(AFTER, change.after(), DifferenceTree::write)
        .put("strictness", change.strictness())
        .node();
  }

  private static JsonNode write(DifferenceLine.RowText row) {
    return new Fields().put("row", RowJson.write(row.row())).list("says", row.says()).node();
  }

  private static JsonNode write(DifferenceLine.ChangedElement changed) {
    return about(About.ELEMENT)
        .put("element", ElementJson.named(changed.element()).node())
        .put("asOf", changed.asOf())
        .put("serviceBefore", changed.before())
        .put("serviceAfter", changed.after())
        .list("effects", changed.effects())
        .list("gained", changed.gained(), DifferenceTree::write)
        .list("lost", changed.lost(), DifferenceTree::write)
        .list("due", changed.due(), DifferenceTree::write)
        .list("ages", changed.ages(), DifferenceTree::write)
        .node();
  }

  private static JsonNode write(DifferenceLine.Asked asked) {
    return new Fields()
        .put("action", VerdictTree.write(asked.action()))
        .list("rows", asked.rows())
        .node();
  }

  private static JsonNode write(DueMove move) {
    return new Fields()
        .put("task", move.task())
        .known("layer", move.layer())
        .known(BEFORE, move.before(), VerdictTree::write)
        .known(AFTER, move.after(), VerdictTree::write)
        .node();
  }

  private static JsonNode write(DifferenceLine.Leaving leaving) {
    return new Fields()
        .known("layer", leaving.layer())
        .known(BEFORE, leaving.before())
        .known(AFTER, leaving.after())
        .node();
  }

  private static JsonNode write(DifferenceLine.ChangedFleet fleet) {
    Tally total = fleet.total();
    Fields effects = new Fields();
    for (FleetEffect effect : FleetEffect.values()) {
      if (total.of(effect) > 0) {
        effects.put(effect.name(), total.of(effect));
      }
    }
    return about(About.FLEET)
        .put("asOf", fleet.asOf())
        .put("elements", total.elements())
        .put("inServiceBefore", total.inServiceBefore())
        .put("inServiceAfter", total.inServiceAfter())
        .put("changed", total.changed())
        .put("effects", effects.node())
        .put("gainedFor", counts(fleet.gainedFor()))
        .put("lostWith", counts(fleet.lostWith()))
        .node();
  }

  private static ObjectNode counts(Map<?, ? extends Number> counts) {
    Fields fields = new Fields();
    counts.forEach((what, count) -> fields.put(what.toString(), count.longValue()));
    return fields.node();
  }
}
