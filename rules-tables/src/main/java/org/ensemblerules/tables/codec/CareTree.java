package org.ensemblerules.tables.codec;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Optional;
import java.util.Set;
import org.ensemblerules.care.CareRoute;
import org.ensemblerules.care.CareStep;
import org.ensemblerules.care.Exposure;
import org.ensemblerules.gear.Element;
import org.ensemblerules.tables.json.JsonCursor;
import org.ensemblerules.tables.json.ObjectCursor;
import org.ensemblerules.tables.message.CareRequest;

/** The JSON form of what an element met, and of how it must be cared for. */
public final class CareTree {
  private CareTree() {}

  /** Reads what is asked. */
  public static Optional<CareRequest> read(JsonCursor at) {
    ObjectCursor object = at.object();
    Optional<Element> element = object.required("element", ElementJson::read);
    Optional<Set<Exposure>> exposures =
        object.required("exposures", value -> value.setOf(Exposure.class));
    return object.make(() -> new CareRequest(element.orElseThrow(), exposures.orElseThrow()));
  }

  /** Writes the answer. */
  public static JsonNode write(CareRequest request, CareRoute route) {
    Fields fields =
        new Fields()
            .put("element", ElementJson.named(request.element()).node())
            .list("exposures", request.exposures());
    if (route instanceof CareRoute.Steps way) {
      return fields
          .put("answer", "STEPS")
          .put("mayReturn", way.mayReturn())
          .list("handling", way.handling())
          .list("steps", way.steps(), CareTree::write)
          .node();
    }
    CareRoute.NoRule none = (CareRoute.NoRule) route;
    return EffectJson.doers(
            fields
                .put("answer", "NO_RULE")
                .put("mayReturn", none.mayReturn())
                .put(
                    "text",
                    "no rule covers "
                        + none.element()
                        + " "
                        + none.use()
                        + ": isolate it and have it evaluated"),
            none.by())
        .node();
  }

  private static JsonNode write(CareStep step) {
    Fields fields =
        new Fields()
            .put("action", step.action())
            .put("text", step.text())
            .some("layers", step.layers())
            .known("manner", step.manner())
            .put("standing", step.standing())
            .known("task", step.task());
    return EffectJson.doers(fields, step.by())
        .list("entries", step.entries())
        .list("rows", step.rows(), RowJson::write)
        .node();
  }
}
