package org.ensemblerules.tables.codec;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.ensemblerules.effect.Doer;
import org.ensemblerules.gear.Known;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.inspection.CriterionOutcome;
import org.ensemblerules.inspection.Equipment;
import org.ensemblerules.inspection.Inspection;
import org.ensemblerules.inspection.InspectionKind;
import org.ensemblerules.inspection.Occasion;
import org.ensemblerules.inspection.Outcome;
import org.ensemblerules.source.RowKey;
import org.ensemblerules.tables.json.JsonCursor;
import org.ensemblerules.tables.json.ObjectCursor;
import org.ensemblerules.tables.json.ValueReaders;

/** The JSON form of an inspection. */
final class InspectionJson {
  private InspectionJson() {}

  static Optional<Inspection> read(JsonCursor at) {
    ObjectCursor object = at.object();
    Optional<InspectionKind> kind =
        object.required("kind", value -> value.enumOf(InspectionKind.class));
    Optional<Occasion> occasion =
        object.required("occasion", value -> value.enumOf(Occasion.class));
    Optional<MarkedDate> on = object.required("on", ValueReaders::markedDate);
    Optional<Doer> by = object.required("by", DoerJson::read);
    Optional<Known> gearClean = object.optional("gearClean", value -> value.enumOf(Known.class));
    Optional<List<Equipment>> atHand =
        object.optional(
            "atHand", value -> value.distinctOrNone(entry -> entry.enumOf(Equipment.class)));
    Optional<List<CriterionOutcome>> outcomes =
        object.optional("outcomes", value -> value.list(InspectionJson::outcome));
    return object.make(
        () -> {
          Inspection.Builder inspection =
              Inspection.builder(
                  kind.orElseThrow(), occasion.orElseThrow(), on.orElseThrow(), by.orElseThrow());
          gearClean.ifPresent(inspection::gearClean);
          atHand.ifPresent(equipment -> inspection.atHand(Set.copyOf(equipment)));
          outcomes
              .orElse(List.of())
              .forEach(each -> inspection.outcome(each.criterion(), each.outcome()));
          return inspection.build();
        });
  }

  private static Optional<CriterionOutcome> outcome(JsonCursor at) {
    ObjectCursor object = at.object();
    Optional<RowKey> criterion = object.required("criterion", value -> value.parsed(RowKey::new));
    Optional<Outcome> outcome = object.required("outcome", value -> value.enumOf(Outcome.class));
    return object.make(() -> new CriterionOutcome(criterion.orElseThrow(), outcome.orElseThrow()));
  }

  static JsonNode write(Inspection inspection) {
    return new Fields()
        .put("kind", inspection.kind())
        .put("occasion", inspection.occasion())
        .put("on", inspection.on())
        .put("by", DoerJson.write(inspection.by()))
        .known("gearClean", inspection.gearClean())
        .some("atHand", inspection.atHand())
        .some("outcomes", inspection.outcomes(), InspectionJson::write)
        .node();
  }

  private static JsonNode write(CriterionOutcome outcome) {
    return new Fields()
        .put("criterion", outcome.criterion())
        .put("outcome", outcome.outcome())
        .node();
  }
}
