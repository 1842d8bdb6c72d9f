package org.ensemblerules.tables.codec;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.ensemblerules.defect.DefectKind;
import org.ensemblerules.effect.Check;
import org.ensemblerules.effect.PermittedDoer;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.Site;
import org.ensemblerules.gear.Use;
import org.ensemblerules.inspection.Equipment;
import org.ensemblerules.inspection.InspectionKind;
import org.ensemblerules.ruleset.Identity;
import org.ensemblerules.source.CitedRow;
import org.ensemblerules.source.RowKey;
import org.ensemblerules.tables.json.JsonCursor;
import org.ensemblerules.tables.json.ObjectCursor;
import org.ensemblerules.tables.json.ValueReaders;
import org.ensemblerules.tables.message.AskedCriterion;
import org.ensemblerules.tables.message.CriteriaAnswer;

/** The JSON form of what an inspection looks at. */
public final class CriteriaTree {
  private static final String CRITERION = "criterion";

  private CriteriaTree() {}

  /** Writes the answer. */
  public static JsonNode write(CriteriaAnswer answer) {
    Fields fields =
        new Fields()
            .put("inspection", answer.inspection())
            .put("kind", answer.kind())
            .put("use", answer.use());
    return EffectJson.by(fields, answer.by())
        .list(
            "criteria",
            answer.criteria(),
            each -> fields(each).put("row", RowJson.write(each.row())).node())
        .put("rules", IdentityJson.write(answer.rules()))
        .node();
  }

  /** What a criterion looks at, and how. */
  static Fields fields(AskedCriterion criterion) {
    return new Fields()
        .put(CRITERION, criterion.row().key())
        .list("sites", criterion.sites())
        .list("lookFor", criterion.lookFor())
        .some("atHand", criterion.atHand())
        .some("check", criterion.check())
        .put("way", criterion.way());
  }

  /** Reads the answer. */
  public static Optional<CriteriaAnswer> read(JsonCursor at) {
    ObjectCursor object = at.object();
    Optional<InspectionKind> inspection =
        object.required("inspection", value -> value.enumOf(InspectionKind.class));
    Optional<ElementKind> kind = object.required("kind", value -> value.enumOf(ElementKind.class));
    Optional<Use> use = object.required("use", value -> value.enumOf(Use.class));
    Optional<List<PermittedDoer>> by = object.required("by", list -> list.list(EffectJson::doer));
    Optional<List<AskedCriterion>> criteria =
        object.required("criteria", list -> list.list(CriteriaTree::criterion));
    Optional<Identity> rules = object.required("rules", IdentityJson::read);
    return object.make(
        () ->
            new CriteriaAnswer(
                inspection.orElseThrow(),
                kind.orElseThrow(),
                use.orElseThrow(),
                by.orElseThrow(),
                criteria.orElseThrow(),
                rules.orElseThrow()));
  }

  private static Optional<AskedCriterion> criterion(JsonCursor at) {
    ObjectCursor object = at.object();
    Optional<List<Site>> sites =
        object.required("sites", list -> list.distinct(ValueReaders::site));
    Optional<Set<DefectKind>> lookFor =
        object.required("lookFor", list -> list.setOf(DefectKind.class));
    Optional<Set<Equipment>> atHand =
        object.optional("atHand", list -> list.setOf(Equipment.class));
    Optional<Set<Check>> check = object.optional("check", list -> list.setOf(Check.class));
    Optional<String> way = object.required("way", JsonCursor::text);
    Optional<CitedRow> row = object.required("row", RowJson::read);
    Derived.text(object, CRITERION, row.map(CitedRow::key).map(RowKey::value));
    return object.make(
        () ->
            new AskedCriterion(
                sites.orElseThrow(),
                lookFor.orElseThrow(),
                atHand.orElse(Set.of()),
                check.orElse(Set.of()),
                way.orElseThrow(),
                row.orElseThrow()));
  }
}
