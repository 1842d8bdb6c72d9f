package org.ensemblerules.tables.codec;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.ensemblerules.gear.Element;
import org.ensemblerules.gear.YesNoUnknown;
import org.ensemblerules.retirement.RetiredGear;
import org.ensemblerules.retirement.RetirementCause;
import org.ensemblerules.retirement.RouteAnswer;
import org.ensemblerules.tables.json.JsonCursor;
import org.ensemblerules.tables.json.ObjectCursor;
import org.ensemblerules.tables.message.DisposalRequest;

/** The JSON form of what is known of a retired element, and of what may become of it. */
public final class DisposalTree {
  private DisposalTree() {}

  /** Reads what is asked. */
  public static Optional<DisposalRequest> read(JsonCursor at) {
    ObjectCursor object = at.object();
    Optional<Element> element = object.required("element", ElementJson::read);
    Optional<List<RetirementCause>> causes =
        object.required("causes", value -> value.distinct(RetirementCauseJson::read));
    YesNoUnknown underCustody = known(object, "underCustody");
    YesNoUnknown markedForTraining = known(object, "markedForTraining");
    YesNoUnknown damaged = known(object, "damaged");
    YesNoUnknown contaminated = known(object, "contaminated");
    return object.make(
        () ->
            new DisposalRequest(
                element.orElseThrow(),
                new RetiredGear(
                    element.orElseThrow().kind(),
                    element.orElseThrow().use(),
                    Set.copyOf(causes.orElseThrow()),
                    underCustody,
                    markedForTraining,
                    damaged,
                    contaminated)));
  }

  private static YesNoUnknown known(ObjectCursor object, String name) {
    return object
        .optional(name, value -> value.enumOf(YesNoUnknown.class))
        .orElse(YesNoUnknown.UNKNOWN);
  }

  /** Writes the answer. */
  public static JsonNode write(DisposalRequest request, List<RouteAnswer> answers) {
    return new Fields()
        .put("element", ElementJson.named(request.element()).node())
        .list("routes", answers, DisposalTree::write)
        .node();
  }

  private static JsonNode write(RouteAnswer answer) {
    Fields fields = new Fields().put("route", answer.route());
    if (answer instanceof RouteAnswer.Open open) {
      return fields.put("answer", "OPEN").list("rows", open.rows(), RowJson::write).node();
    } else if (answer instanceof RouteAnswer.Closed closed) {
      return fields.put("answer", "CLOSED").list("whyNot", closed.whyNot()).node();
    }
    return fields.put("answer", "NO_RULE").node();
  }
}
