package org.ensemblerules.tables.codec;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Map;
import org.ensemblerules.audit.RowChange;
import org.ensemblerules.audit.RuleSetDifference;
import org.ensemblerules.fleet.ActionChange;
import org.ensemblerules.fleet.AgeMove;
import org.ensemblerules.fleet.DueMove;
import org.ensemblerules.fleet.ElementDifference;
import org.ensemblerules.fleet.FleetDifference;
import org.ensemblerules.fleet.FleetEffect;
import org.ensemblerules.fleet.Tally;
import org.ensemblerules.retirement.AgeAnswer;
import org.ensemblerules.source.Row;

/** The JSON forms of what differs between two sets of rules. */
public final class DifferenceTree {
  private static final String DIFFERENCE = "difference";
  private static final String BEFORE = "before";
  private static final String AFTER = "after";

  private DifferenceTree() {}

  /** Writes which rules are compared, and how many rows of each table differ how. */
  public static JsonNode write(RuleSetDifference difference) {
    Fields counts = new Fields();
    difference.counts().forEach((table, kinds) -> counts.put(table, counts(kinds)));
    return new Fields()
        .put(DIFFERENCE, "RULES")
        .put(BEFORE, IdentityJson.write(difference.before()))
        .put(AFTER, IdentityJson.write(difference.after()))
        .put("counts", counts.node())
        .node();
  }

  /** Writes in what a row differs. */
  public static JsonNode write(RowChange change) {
    return new Fields()
        .put(DIFFERENCE, "ROW")
        .put("kind", change.kind())
        .put("table", change.table())
        .list("topic", change.topic())
        .known(BEFORE, change.before(), DifferenceTree::write)
        .known(AFTER, change.after(), DifferenceTree::write)
        .put("strictness", change.strictness())
        .node();
  }

  private static JsonNode write(Row row) {
    return new Fields().put("row", RowJson.write(row)).list("says", row.canonical()).node();
  }

  /** Writes what differs for an element. */
  public static JsonNode write(ElementDifference difference) {
    return new Fields()
        .put(DIFFERENCE, "ELEMENT")
        .put("element", ElementJson.named(difference.before().element()).node())
        .put("asOf", difference.before().asOf())
        .put("serviceBefore", difference.before().service())
        .put("serviceAfter", difference.after().service())
        .list("effects", difference.effects())
        .list("gained", difference.gained(), DifferenceTree::write)
        .list("lost", difference.lost(), DifferenceTree::write)
        .list("due", difference.due(), DifferenceTree::write)
        .list("ages", difference.ages(), DifferenceTree::write)
        .node();
  }

  private static JsonNode write(ActionChange change) {
    return new Fields()
        .put("action", VerdictTree.write(change.action()))
        .list("rows", change.rows())
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

  private static JsonNode write(AgeMove move) {
    return new Fields()
        .known("layer", move.layer())
        .known(BEFORE, move.before().map(AgeAnswer::text))
        .known(AFTER, move.after().map(AgeAnswer::text))
        .node();
  }

  /** Writes for how many elements what differs. */
  public static JsonNode write(FleetDifference difference) {
    Tally total = difference.counts().total();
    Fields effects = new Fields();
    for (FleetEffect effect : FleetEffect.values()) {
      if (total.of(effect) > 0) {
        effects.put(effect.name(), total.of(effect));
      }
    }
    return new Fields()
        .put(DIFFERENCE, "FLEET")
        .put("asOf", difference.asOf())
        .put("elements", total.elements())
        .put("inServiceBefore", total.inServiceBefore())
        .put("inServiceAfter", total.inServiceAfter())
        .put("changed", total.changed())
        .put("effects", effects.node())
        .put("gainedFor", counts(difference.counts().gainedFor()))
        .put("lostWith", counts(difference.counts().lostWith()))
        .node();
  }

  private static ObjectNode counts(Map<?, ? extends Number> counts) {
    Fields fields = new Fields();
    counts.forEach((what, count) -> fields.put(what.toString(), count.longValue()));
    return fields.node();
  }
}
