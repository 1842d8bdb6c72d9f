package org.ensemblerules.tables.codec;

import com.fasterxml.jackson.databind.JsonNode;
import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import org.ensemblerules.gear.Element;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.gear.YesNoUnknown;
import org.ensemblerules.history.Moment;
import org.ensemblerules.retirement.CustodyAnswer;
import org.ensemblerules.retirement.CustodyRecord;
import org.ensemblerules.retirement.CustodyRecordBuilder;
import org.ensemblerules.retirement.CustodyStep;
import org.ensemblerules.retirement.Handover;
import org.ensemblerules.tables.json.JsonCursor;
import org.ensemblerules.tables.json.ObjectCursor;
import org.ensemblerules.tables.json.ValueReaders;
import org.ensemblerules.tables.message.CustodyRequest;

/** The JSON form of what was recorded of an element under custody, and of what that shows. */
public final class CustodyTree {
  private CustodyTree() {}

  /** Reads what is asked. */
  public static Optional<CustodyRequest> read(JsonCursor at) {
    ObjectCursor object = at.object();
    Optional<Element> element = object.required("element", ElementJson::read);
    Optional<CustodyRecord> custody = object.required("custody", CustodyTree::custody);
    return object.make(() -> new CustodyRequest(element.orElseThrow(), custody.orElseThrow()));
  }

  private static Optional<CustodyRecord> custody(JsonCursor at) {
    ObjectCursor object = at.object();
    Optional<Moment> taken = object.optional("taken", CustodyTree::taken);
    CustodyRecordBuilder record =
        CustodyRecord.builder(taken.orElse(Moment.on(MarkedDate.unknown())));
    known(object, "leftAsFound").ifPresent(record::leftAsFound);
    known(object, "leftUncleaned").ifPresent(record::leftUncleaned);
    known(object, "storedProtected").ifPresent(record::storedProtected);
    known(object, "accessLimited").ifPresent(record::accessLimited);
    object.optional("custodian", CustodyTree::name).ifPresent(record::custodian);
    object
        .optional("handovers", value -> value.distinctOrNone(CustodyTree::handover))
        .ifPresent(all -> all.forEach(record::handover));
    object
        .optional("photographed", value -> value.distinctOrNone(CustodyTree::deed))
        .ifPresent(all -> all.forEach(record::photographed));
    object
        .optional("examined", value -> value.distinctOrNone(CustodyTree::deed))
        .ifPresent(all -> all.forEach(record::examined));
    object.optional("released", CustodyTree::deed).ifPresent(record::released);
    return object.make(record::build);
  }

  private static Optional<YesNoUnknown> known(ObjectCursor object, String name) {
    return object.optional(name, value -> value.enumOf(YesNoUnknown.class));
  }

  private static Optional<String> name(JsonCursor at) {
    return at.parsed(text -> CustodyRecord.requireName("name", text));
  }

  private static Optional<Moment> taken(JsonCursor at) {
    ObjectCursor object = at.object();
    Optional<Moment> when = WhenJson.read(object);
    return object.make(when::orElseThrow);
  }

  private static Optional<Handover> handover(JsonCursor at) {
    ObjectCursor object = at.object();
    Optional<Moment> when = WhenJson.read(object);
    Optional<String> from = object.required("from", CustodyTree::name);
    Optional<String> to = object.required("to", CustodyTree::name);
    return object.make(
        () -> new Handover(when.orElseThrow(), from.orElseThrow(), to.orElseThrow()));
  }

  private static Optional<CustodyRecord.Deed> deed(JsonCursor at) {
    ObjectCursor object = at.object();
    Optional<MarkedDate> on = object.required("on", ValueReaders::markedDate);
    Optional<String> by = object.required("by", CustodyTree::name);
    return object.make(() -> new CustodyRecord.Deed(on.orElseThrow(), by.orElseThrow()));
  }

  /** Writes the answer. */
  public static JsonNode write(
      CustodyRequest request, Map<CustodyStep, CustodyAnswer> answers, LocalDate asOf) {
    return new Fields()
        .put("element", ElementJson.named(request.element()).node())
        .put("asOf", asOf)
        .list("steps", answers.entrySet(), step -> write(step.getKey(), step.getValue()))
        .node();
  }

  private static JsonNode write(CustodyStep step, CustodyAnswer answer) {
    Fields fields = new Fields().put("step", step);
    if (answer instanceof CustodyAnswer.Missing missing) {
      return fields
          .put("answer", "MISSING")
          .list("what", missing.what())
          .put("row", RowJson.write(missing.row()))
          .node();
    } else if (answer instanceof CustodyAnswer.StillHeld held) {
      return fields.put("answer", "STILL_HELD").put("row", RowJson.write(held.row())).node();
    }
    return fields
        .put("answer", "SHOWN")
        .put("row", RowJson.write(((CustodyAnswer.Shown) answer).row()))
        .node();
  }
}
