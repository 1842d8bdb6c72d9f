package org.ensemblerules.tables.codec;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.ensemblerules.defect.FindingId;
import org.ensemblerules.effect.Doer;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.gear.NamedElement;
import org.ensemblerules.gear.YesNoUnknown;
import org.ensemblerules.inspection.CriterionOutcome;
import org.ensemblerules.inspection.Equipment;
import org.ensemblerules.inspection.Inspection;
import org.ensemblerules.inspection.InspectionBuilder;
import org.ensemblerules.inspection.InspectionKind;
import org.ensemblerules.inspection.Occasion;
import org.ensemblerules.inspection.Outcome;
import org.ensemblerules.inspection.SignOff;
import org.ensemblerules.source.OriginId;
import org.ensemblerules.source.RowKey;
import org.ensemblerules.tables.json.JsonCursor;
import org.ensemblerules.tables.json.JsonDecoder;
import org.ensemblerules.tables.json.ObjectCursor;
import org.ensemblerules.tables.json.ValueReaders;

/** The JSON form of an inspection. */
final class InspectionJson {
  /** All that its criteria ask for. */
  private static final String ALL = "ALL";

  private InspectionJson() {}

  static Optional<Inspection> read(JsonCursor at, Optional<NamedElement> element) {
    ObjectCursor object = at.object();
    Optional<InspectionKind> kind =
        object.required("kind", value -> value.enumOf(InspectionKind.class));
    Optional<Occasion> occasion =
        object.required("occasion", value -> value.enumOf(Occasion.class));
    Optional<MarkedDate> on = object.required("on", ValueReaders::markedDate);
    Optional<Doer> by = object.optional("by", DoerJson::read);
    Optional<YesNoUnknown> gearClean =
        object.optional("gearClean", value -> value.enumOf(YesNoUnknown.class));
    Optional<Set<Equipment>> atHand = object.optional("atHand", InspectionJson::atHand);
    Optional<List<CriterionOutcome>> outcomes =
        object.optional("outcomes", value -> outcomes(value, key(kind, element)));
    Optional<SignOff> signedOff = object.optional("signedOff", InspectionJson::signOff);
    return object.make(
        () -> {
          InspectionBuilder inspection =
              Inspection.builder(kind.orElseThrow(), occasion.orElseThrow(), on.orElseThrow(), by);
          gearClean.ifPresent(inspection::gearClean);
          atHand.ifPresent(inspection::atHand);
          signedOff.ifPresent(inspection::signOff);
          outcomes
              .orElse(List.of())
              .forEach(each -> inspection.outcome(each.criterion(), each.outcome()));
          return inspection.build();
        });
  }

  private static Optional<Set<Equipment>> atHand(JsonCursor at) {
    return at.isText()
        ? at.named(Map.of(ALL, EnumSet.allOf(Equipment.class)))
        : at.distinctOrNone(entry -> entry.enumOf(Equipment.class)).map(Set::copyOf);
  }

  private static Optional<SignOff> signOff(JsonCursor at) {
    ObjectCursor object = at.object();
    Optional<OriginId> edition = object.required("edition", ValueReaders::editionId);
    // That nothing was found is said, never taken from a field that is not there.
    Optional<List<FindingId>> clearBut =
        object.required(
            "clearBut", value -> value.distinctOrNone(entry -> entry.parsed(FindingId::new)));
    return object.make(
        () -> new SignOff(edition.orElseThrow(), Set.copyOf(clearBut.orElseThrow())));
  }

  /** A short key needs to know of which inspection it is one, and the criteria in force. */
  private static JsonDecoder<RowKey> key(
      Optional<InspectionKind> kind, Optional<NamedElement> element) {
    return at -> {
      Optional<CriterionNames> names = at.beside(CriterionNames.class);
      return names.isPresent() && kind.isPresent() && element.isPresent()
          ? names.get().read(at, kind.get(), element.get())
          : at.shared(RowKey.class, each -> each.parsed(RowKey::new));
    };
  }

  /** A list of outcomes, or for each outcome a list of criteria. */
  private static Optional<List<CriterionOutcome>> outcomes(JsonCursor at, JsonDecoder<RowKey> key) {
    if (at.isList()) {
      return at.list(entry -> outcome(entry, key));
    }
    ObjectCursor object = at.object();
    List<CriterionOutcome> all = new ArrayList<>();
    for (Outcome outcome : Outcome.values()) {
      object
          .optional(outcome.name(), value -> value.distinct(key))
          .ifPresent(keys -> keys.forEach(each -> all.add(new CriterionOutcome(each, outcome))));
    }
    return object.make(() -> all);
  }

  private static Optional<CriterionOutcome> outcome(JsonCursor at, JsonDecoder<RowKey> key) {
    ObjectCursor object = at.object();
    Optional<RowKey> criterion = object.required("criterion", key);
    Optional<Outcome> outcome = object.required("outcome", value -> value.enumOf(Outcome.class));
    return object.make(() -> new CriterionOutcome(criterion.orElseThrow(), outcome.orElseThrow()));
  }

  static JsonNode write(Inspection inspection) {
    Fields fields =
        new Fields()
            .put("kind", inspection.kind())
            .put("occasion", inspection.occasion())
            .put("on", inspection.on())
            .known("by", inspection.by(), DoerJson::write)
            .known("gearClean", inspection.gearClean());
    if (inspection.atHand().equals(EnumSet.allOf(Equipment.class))) {
      fields.put("atHand", ALL);
    } else {
      fields.some("atHand", inspection.atHand());
    }
    return fields
        .known("signedOff", inspection.signOff(), InspectionJson::write)
        .some("outcomes", inspection.outcomes(), InspectionJson::write)
        .node();
  }

  private static JsonNode write(SignOff signOff) {
    return new Fields()
        .put("edition", signOff.edition())
        .list("clearBut", signOff.clearBut())
        .node();
  }

  private static JsonNode write(CriterionOutcome outcome) {
    return new Fields()
        .put("criterion", outcome.criterion())
        .put("outcome", outcome.outcome())
        .node();
  }
}
