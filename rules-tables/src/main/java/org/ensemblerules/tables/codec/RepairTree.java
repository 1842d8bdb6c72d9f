package org.ensemblerules.tables.codec;

import com.fasterxml.jackson.databind.JsonNode;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Optional;
import org.ensemblerules.defect.Demand;
import org.ensemblerules.effect.Doer;
import org.ensemblerules.gear.Element;
import org.ensemblerules.repair.CostPolicy;
import org.ensemblerules.repair.CostView;
import org.ensemblerules.repair.FollowUp;
import org.ensemblerules.repair.MayDo;
import org.ensemblerules.repair.RepairCost;
import org.ensemblerules.repair.RepairOrder;
import org.ensemblerules.repair.RepairPlan;
import org.ensemblerules.tables.json.JsonCursor;
import org.ensemblerules.tables.json.ObjectCursor;
import org.ensemblerules.tables.json.ValueReaders;
import org.ensemblerules.tables.message.RepairPrice;
import org.ensemblerules.tables.message.RepairRequest;
import org.ensemblerules.tables.message.RepairSubject;
import org.ensemblerules.tables.message.RepairWork;

/** The JSON form of a question about repair, and of its answer. */
public final class RepairTree {
  private RepairTree() {}

  /** Reads what is asked. */
  public static Optional<RepairRequest> read(JsonCursor at) {
    ObjectCursor object = at.object();
    Optional<Element> element = object.required("element", ElementJson::read);
    Optional<RepairSubject> subject = subject(object);
    Optional<Doer> doer = object.optional("doer", DoerJson::read);
    Optional<LocalDate> on = object.optional("on", ValueReaders::day);
    if (object.has("doer") != object.has("on")) {
      object.fault(
          object.has("doer") ? "doer" : "on",
          object.has("doer") ? "a doer without a day" : "a day without a doer",
          "doer and on together, or neither");
    }
    Optional<RepairPrice> cost = object.optional("cost", RepairTree::cost);
    return object.make(
        () ->
            new RepairRequest(
                element.orElseThrow(),
                subject.orElseThrow(),
                doer.map(who -> new RepairWork(who, on.orElseThrow())),
                cost));
  }

  private static Optional<RepairSubject> subject(ObjectCursor object) {
    Optional<RepairSubject> damage =
        object
            .optional("findings", value -> value.distinct(FindingJson::read))
            .map(RepairSubject.Damage::new);
    Optional<Boolean> linerOpened = object.optional("linerOpened", JsonCursor::bool);
    if (object.has("findings") == object.has("linerOpened")) {
      object.fault(
          "linerOpened",
          object.has("findings") ? "findings and a liner opened" : "neither findings nor a liner",
          "findings, or linerOpened, one of the two");
      return Optional.empty();
    }
    if (linerOpened.equals(Optional.of(false))) {
      object.fault("linerOpened", "false", "true, or no such field");
    }
    return damage.or(() -> linerOpened.map(opened -> new RepairSubject.LinerOpened()));
  }

  private static Optional<RepairPrice> cost(JsonCursor at) {
    ObjectCursor object = at.object();
    Optional<BigDecimal> repair = object.required("repair", JsonCursor::decimalOrText);
    Optional<BigDecimal> replacement = object.optional("replacement", JsonCursor::decimalOrText);
    Optional<BigDecimal> depreciated = object.optional("depreciated", JsonCursor::decimalOrText);
    Optional<CostPolicy.Against> against =
        object.required("against", value -> value.enumOf(CostPolicy.Against.class));
    Optional<BigDecimal> mostPercent = object.required("mostPercent", JsonCursor::decimalOrText);
    return object.make(
        () ->
            new RepairPrice(
                new CostPolicy(against.orElseThrow(), mostPercent.orElseThrow()),
                new RepairCost(repair.orElseThrow(), replacement, depreciated)));
  }

  /** Writes the answer. */
  public static JsonNode write(RepairRequest request, RepairPlan plan) {
    return new Fields()
        .put("element", ElementJson.named(plan.element()).node())
        .put("level", plan.level())
        .put("granted", plan.granted())
        .list("orders", plan.orders(), RepairTree::write)
        .known("cost", request.cost(), cost -> write(CostView.of(cost.policy(), cost.cost())))
        .node();
  }

  private static JsonNode write(RepairOrder order) {
    Fields fields =
        new Fields()
            .known("finding", order.finding(), FindingJson::write)
            .put("site", order.site())
            .put("level", order.level())
            .put("text", order.text())
            .known("demand", order.demand(), RepairTree::write)
            .list("limits", order.limits(), RowJson::write)
            .known("because", order.because())
            .known("decidedBy", order.decidedBy())
            .known("task", order.task());
    return EffectJson.doers(fields, order.by())
        .list("before", order.before(), RepairTree::write)
        .list("afterward", order.afterward(), RepairTree::write)
        .put("may", write(order.may()))
        .node();
  }

  private static JsonNode write(Demand demand) {
    return new Fields()
        .put("kind", demand.kind())
        .put("effect", EffectJson.write(demand.effect()))
        .known("mustMeasure", demand.mustMeasure())
        .known("row", demand.row(), RowJson::write)
        .node();
  }

  private static JsonNode write(FollowUp check) {
    return EffectJson.doers(
            new Fields().put("check", check.check()).put("shown", check.shown()), check.by())
        .node();
  }

  private static JsonNode write(MayDo may) {
    String answer;
    if (may instanceof MayDo.Yes) {
      answer = "YES";
    } else if (may instanceof MayDo.WhyNot) {
      answer = "WHY_NOT";
    } else {
      answer = may instanceof MayDo.NotAsked ? "NOT_ASKED" : "NO_REPAIR";
    }
    return new Fields().put("answer", answer).put("text", may.text()).node();
  }

  private static JsonNode write(CostView view) {
    String answer;
    if (view instanceof CostView.Within) {
      answer = "WITHIN";
    } else {
      answer = view instanceof CostView.Above ? "ABOVE" : "VALUE_UNKNOWN";
    }
    return new Fields().put("advisory", true).put("view", answer).put("text", view.text()).node();
  }
}
