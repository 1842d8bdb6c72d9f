package org.ensemblerules.tables.codec;

import com.fasterxml.jackson.databind.JsonNode;
import java.math.BigDecimal;
import java.util.Optional;
import org.ensemblerules.effect.CleaningKind;
import org.ensemblerules.effect.RepairClass;
import org.ensemblerules.fleet.UnitCost;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.LayerKind;
import org.ensemblerules.gear.Use;
import org.ensemblerules.repair.CostPolicy;
import org.ensemblerules.tables.json.JsonCursor;
import org.ensemblerules.tables.json.ObjectCursor;
import org.ensemblerules.tables.message.CostEntry;

/** The JSON form of what things cost. */
public final class CostTree {
  /** What an entry of costs is of. */
  private enum Of {
    NEW_GEAR,
    CLEANING,
    REPAIR,
    WORTH
  }

  private CostTree() {}

  /** Reads an entry of what things cost. */
  public static Optional<CostEntry> read(JsonCursor at) {
    ObjectCursor object = at.object();
    Optional<Of> of = object.required("of", value -> value.enumOf(Of.class));
    if (of.isEmpty()) {
      return Optional.empty();
    }
    return switch (of.get()) {
      case NEW_GEAR -> {
        Optional<ElementKind> kind =
            object.required("kind", value -> value.enumOf(ElementKind.class));
        Optional<Use> use = object.required("use", value -> value.enumOf(Use.class));
        Optional<LayerKind> layer =
            object.optional("layer", value -> value.enumOf(LayerKind.class));
        Optional<BigDecimal> amount = amount(object);
        yield object.make(
            () ->
                new CostEntry.NewGear(
                    new UnitCost(
                        kind.orElseThrow(), use.orElseThrow(), layer, amount.orElseThrow())));
      }
      case CLEANING -> {
        Optional<CleaningKind> cleaning =
            object.required("cleaning", value -> value.enumOf(CleaningKind.class));
        Optional<BigDecimal> amount = amount(object);
        yield object.make(
            () -> new CostEntry.Cleaning(cleaning.orElseThrow(), amount.orElseThrow()));
      }
      case REPAIR -> {
        Optional<RepairClass> repair =
            object.required("class", value -> value.enumOf(RepairClass.class));
        Optional<BigDecimal> amount = amount(object);
        yield object.make(() -> new CostEntry.Repair(repair.orElseThrow(), amount.orElseThrow()));
      }
      case WORTH -> {
        Optional<CostPolicy.Against> against =
            object.required("against", value -> value.enumOf(CostPolicy.Against.class));
        Optional<BigDecimal> most = object.required("mostPercent", JsonCursor::decimalOrText);
        yield object.make(
            () -> new CostEntry.Worth(new CostPolicy(against.orElseThrow(), most.orElseThrow())));
      }
    };
  }

  private static Optional<BigDecimal> amount(ObjectCursor object) {
    return object.required("amount", JsonCursor::decimalOrText);
  }

  /** Writes an entry of what things cost. */
  public static JsonNode write(CostEntry entry) {
    if (entry instanceof CostEntry.NewGear gear) {
      return new Fields()
          .put("of", Of.NEW_GEAR)
          .put("kind", gear.cost().kind())
          .put("use", gear.cost().use())
          .known("layer", gear.cost().layer())
          .put("amount", amount(gear.cost().amount()))
          .node();
    } else if (entry instanceof CostEntry.Cleaning cleaning) {
      return new Fields()
          .put("of", Of.CLEANING)
          .put("cleaning", cleaning.cleaning())
          .put("amount", amount(cleaning.amount()))
          .node();
    } else if (entry instanceof CostEntry.Repair repair) {
      return new Fields()
          .put("of", Of.REPAIR)
          .put("class", repair.repair())
          .put("amount", amount(repair.amount()))
          .node();
    }
    CostPolicy policy = ((CostEntry.Worth) entry).policy();
    return new Fields()
        .put("of", Of.WORTH)
        .put("against", policy.against())
        .put("mostPercent", policy.mostPercent())
        .node();
  }

  /** An amount as text, which no reader rounds. */
  static String amount(BigDecimal amount) {
    return amount.toPlainString();
  }
}
