package org.ensemblerules.tables.codec;

import com.fasterxml.jackson.databind.JsonNode;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.Use;
import org.ensemblerules.inspection.InspectionKind;
import org.ensemblerules.ruleset.RuleSet;

/** The JSON form of what an inspection looks at. */
public final class CriteriaTree {
  private CriteriaTree() {}

  /** Writes the answer. */
  public static JsonNode write(
      RuleSet rules, InspectionKind inspection, ElementKind kind, Use use) {
    Fields fields = new Fields().put("inspection", inspection).put("kind", kind).put("use", use);
    return EffectJson.doers(fields, rules.tables().permissions().permitted(inspection.task()))
        .list(
            "criteria",
            rules.tables().criteria().required(inspection, kind, use),
            row -> CatalogTree.fields(row).put("row", RowJson.write(row)).node())
        .put("rules", IdentityJson.write(rules.identity()))
        .node();
  }
}
