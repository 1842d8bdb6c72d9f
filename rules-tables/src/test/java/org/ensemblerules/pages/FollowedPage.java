package org.ensemblerules.pages;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.ensemblerules.defect.DefectKind;
import org.ensemblerules.defect.Extent;
import org.ensemblerules.defect.Finding;
import org.ensemblerules.defect.FindingId;
import org.ensemblerules.defect.Grade;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.LayerKind;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.gear.Part;
import org.ensemblerules.gear.Site;
import org.ensemblerules.gear.Use;
import org.ensemblerules.measure.Quantity;
import org.ensemblerules.measure.Unit;
import org.ensemblerules.ruleset.RuleSet;
import org.ensemblerules.source.OriginId;
import org.ensemblerules.source.Provenance;
import org.ensemblerules.tables.ShippedRules;
import org.ensemblerules.tables.set.LoadedTables;
import org.ensemblerules.testkit.ShippedCase;
import org.ensemblerules.testkit.ShippedGear;
import org.ensemblerules.verdict.Reason;

/** Reasons of verdicts, each followed to the pages on which its row was seen. */
final class FollowedPage {
  private static final OriginId EDITION = new OriginId("NFPA_1851_2020");

  private FollowedPage() {}

  static Page page(LoadedTables tables) {
    List<List<String>> lines = new ArrayList<>();
    reasons()
        .forEach(
            (family, reason) -> {
              Provenance from = reason.row().orElseThrow().provenance();
              lines.add(
                  List.of(
                      reason.seen(),
                      reason.effect().text(),
                      Words.code(family),
                      Words.basis(from.basis()),
                      from.basis().pages().stream()
                          .map(id -> tables.sources().get(id).citation())
                          .collect(Collectors.joining("; "))));
            });
    return new Markdown("Reasons followed to their pages")
        .paragraph(
            "Reasons of verdicts on one coat, a helmet and a pair of boots under the edition of"
                + " 2020, each followed from its row to where that was seen. A reason names its row"
                + " and basis; [sources.md](sources.md) has the pages.")
        .table(List.of("Reason", "Calls for", "Row", "Stands on", "Seen at"), lines)
        .page("followed.md");
  }

  private static Map<String, Reason> reasons() {
    RuleSet rules = ShippedRules.of(EDITION).orElseThrow().rules();
    ShippedCase coat = fit(rules, ElementKind.COAT);
    Extent half = new Extent.Length(Quantity.of("0.5", Unit.INCH));
    Extent slight = new Extent.Graded(Grade.SLIGHT);
    List<ShippedCase> cases =
        List.of(
            found(coat, LayerKind.OUTER_SHELL, Part.FABRIC, DefectKind.SOILING),
            found(coat, LayerKind.OUTER_SHELL, Part.FABRIC, DefectKind.COMBUSTION_PRODUCTS),
            found(coat, LayerKind.OUTER_SHELL, Part.FABRIC, DefectKind.BODY_FLUIDS),
            found(coat, LayerKind.OUTER_SHELL, Part.FABRIC, DefectKind.TEAR, slight),
            found(
                coat, LayerKind.OUTER_SHELL, Part.SEAM_MAJOR_A, DefectKind.BROKEN_STITCHING, half),
            found(coat, LayerKind.OUTER_SHELL, Part.SNAPS, DefectKind.MISSING),
            found(coat, LayerKind.THERMAL_LINER, Part.FABRIC, DefectKind.BROKEN_STITCHING),
            found(coat, LayerKind.MOISTURE_BARRIER, Part.FABRIC, DefectKind.LEAK),
            found(coat, LayerKind.MOISTURE_BARRIER, Part.SEAM_TAPE, DefectKind.LIFTING_TAPE),
            whole(coat, DefectKind.OVERLAP_TOO_SMALL),
            at(
                fit(rules, ElementKind.HELMET),
                Site.of(Part.HELMET_SHELL),
                DefectKind.BEYOND_REPAIR),
            at(fit(rules, ElementKind.FOOTWEAR), Site.of(Part.SOLE), DefectKind.BEYOND_REPAIR),
            coat.on(ShippedGear.AS_OF.plusYears(2)),
            coat.on(ShippedGear.MADE.plusYears(11)));
    Map<String, Reason> byFamily = new LinkedHashMap<>();
    for (ShippedCase each : cases) {
      for (Reason reason : each.verdict().reasons()) {
        reason
            .row()
            .filter(row -> !row.provenance().basis().pages().isEmpty())
            .ifPresent(row -> byFamily.putIfAbsent(row.key().value().split("/", 2)[0], reason));
      }
    }
    return byFamily;
  }

  private static ShippedCase fit(RuleSet rules, ElementKind element) {
    return ShippedCase.fit(
        rules,
        ShippedGear.kinds(rules).stream()
            .filter(kind -> kind.element() == element && kind.use() == Use.STRUCTURAL)
            .findFirst()
            .orElseThrow());
  }

  private static ShippedCase found(ShippedCase fit, LayerKind layer, Part part, DefectKind defect) {
    return at(fit, Site.of(part, layer), defect);
  }

  private static ShippedCase whole(ShippedCase fit, DefectKind defect) {
    return at(fit, Site.of(Part.WHOLE_ELEMENT), defect);
  }

  private static ShippedCase at(ShippedCase fit, Site site, DefectKind defect) {
    return with(fit, site, defect, new Extent.NotMeasured());
  }

  private static ShippedCase found(
      ShippedCase fit, LayerKind layer, Part part, DefectKind defect, Extent extent) {
    return with(fit, Site.of(part, layer), defect, extent);
  }

  private static ShippedCase with(ShippedCase fit, Site site, DefectKind defect, Extent extent) {
    return fit.withFindings(
        List.of(
            new Finding(
                new FindingId("F1"),
                site,
                "",
                defect,
                extent,
                MarkedDate.of(ShippedGear.AS_OF.minusDays(1)))));
  }
}
