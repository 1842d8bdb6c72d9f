package org.ensemblerules.tables.codec;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Arrays;
import java.util.List;
import org.ensemblerules.catalog.Catalog;
import org.ensemblerules.catalog.CheckForm;
import org.ensemblerules.catalog.DefectForm;
import org.ensemblerules.catalog.ElementForm;
import org.ensemblerules.catalog.SiteForm;
import org.ensemblerules.fieldcheck.ConditionRow;
import org.ensemblerules.inspection.CriterionRow;
import org.ensemblerules.measure.Dimension;
import org.ensemblerules.measure.Unit;
import org.ensemblerules.tables.message.AskedCriterion;
import org.ensemblerules.words.GearCodeSet;
import org.ensemblerules.words.Words;

/** The JSON form of what can be entered, with the words for it. */
public final class CatalogTree {
  private CatalogTree() {}

  /** Writes a catalog. */
  public static JsonNode write(Catalog catalog, Words words) {
    Fields doers = new Fields();
    catalog
        .doers()
        .forEach(
            (task, by) -> doers.put(task.name(), EffectJson.by(new Fields(), by).node().get("by")));
    return new Fields()
        .put("language", words.language())
        .put("words", WordsTree.terms(words, List.of(GearCodeSet.values())))
        .put("units", units())
        .list("elements", catalog.elements(), CatalogTree::write)
        .list("checks", catalog.checks(), CatalogTree::write)
        .put("doers", doers.node())
        .put("rules", IdentityJson.write(catalog.rules()))
        .node();
  }

  /** The symbols that a quantity of each dimension may be written with. */
  private static JsonNode units() {
    Fields units = new Fields();
    for (Dimension dimension : Dimension.values()) {
      units.list(
          dimension.name(),
          Arrays.stream(Unit.values())
              .filter(unit -> unit.dimension() == dimension)
              .map(Unit::symbol)
              .toList());
    }
    return units.node();
  }

  private static JsonNode write(ElementForm element) {
    ObjectNode inspections = JsonNodeFactory.instance.objectNode();
    element
        .criteria()
        .forEach(
            (kind, criteria) ->
                inspections.set(
                    kind.name(),
                    new Fields()
                        .list("criteria", criteria, CatalogTree::write)
                        .node()
                        .get("criteria")));
    return new Fields()
        .put("kind", element.kind())
        .put("use", element.use())
        .list("layers", element.layers())
        .list("sites", element.sites(), CatalogTree::write)
        .put("inspections", inspections)
        .node();
  }

  private static JsonNode write(SiteForm site) {
    return new Fields()
        .put("site", site.site())
        .put("presence", site.presence())
        .list("defects", site.defects(), CatalogTree::write)
        .node();
  }

  private static JsonNode write(DefectForm defect) {
    return new Fields()
        .put("defect", defect.defect())
        .put("measured", defect.measured())
        .some("grades", defect.grades())
        .node();
  }

  private static JsonNode write(CriterionRow criterion) {
    return CriteriaTree.fields(AskedCriterion.of(criterion)).node();
  }

  private static JsonNode write(CheckForm check) {
    return new Fields()
        .put("check", check.row().check())
        .put("task", check.row().task())
        .put("shown", check.row().shown())
        .some("conditions", check.conditions(), CatalogTree::write)
        .known("measured", check.limit().map(row -> row.limit().value().unit().dimension()))
        .known("limit", check.limit().map(row -> row.limit()))
        .node();
  }

  private static JsonNode write(ConditionRow row) {
    return new Fields()
        .put("condition", row.condition())
        .put("form", row.condition().form())
        .known("dimension", row.condition().dimension())
        .put("expected", row.expected())
        .node();
  }
}
