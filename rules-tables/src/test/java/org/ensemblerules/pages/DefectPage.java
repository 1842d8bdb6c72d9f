package org.ensemblerules.pages;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.ensemblerules.defect.Band;
import org.ensemblerules.defect.DefectRow;
import org.ensemblerules.defect.Grade;
import org.ensemblerules.effect.Effect;
import org.ensemblerules.ruleset.InspectionKinds;
import org.ensemblerules.tables.set.LoadedTables;

/** The page of what defects call for, family by family. */
final class DefectPage {
  private static final List<String> HEAD =
      List.of("Where", "Defect", "Extent", "Calls for", "Why", "Editions; basis");

  private DefectPage() {}

  static Page page(LoadedTables tables) {
    Map<String, List<Family<DefectRow>>> groups = new LinkedHashMap<>();
    for (Family<DefectRow> family : Family.of(tables, InspectionKinds.DEFECTS)) {
      groups
          .computeIfAbsent(
              Elements.heading(family.all(DefectRow::element)), key -> new ArrayList<>())
          .add(family);
    }
    Markdown page =
        new Markdown("Defects")
            .paragraph(
                "What each defect calls for, by part and extent. One line stands for every"
                    + " combination of its elements, uses, parts and defects. Where an extent"
                    + " decides and nobody measured it, it must be measured. What no line covers"
                    + " goes to an expert. Lines marked DISPUTED are those on which practice"
                    + " differs: they ask for an evaluation, and the department may decide it by a"
                    + " written policy, laid over as an overlay, where answers are listed.")
            .paragraph(
                "Where grades tell how far damage goes, a length, an area or a count may be given"
                    + " instead: no source says which sizes a grade covers, so the strictest line"
                    + " short of retirement is asked for, and the answer says so. What grades"
                    + " mean:")
            .points(
                Arrays.stream(Grade.values())
                    .map(grade -> Words.of(List.of(grade)) + ": " + grade.meaning())
                    .toList())
            .points(
                groups.entrySet().stream()
                    .map(group -> group.getKey() + ": " + group.getValue().size() + " families")
                    .toList());
    groups.forEach(
        (heading, families) ->
            page.heading(heading).table(HEAD, families.stream().map(DefectPage::line).toList()));
    return page.page("defects.md");
  }

  private static List<String> line(Family<DefectRow> family) {
    DefectRow row = family.first();
    return List.of(
        Words.sites(family.all(DefectRow::site)) + only(family),
        Words.of(family.all(DefectRow::defect)),
        extent(row.band()),
        effect(row),
        row.wording(),
        Words.editions(family.editions())
            + "; "
            + Words.basis(row.provenance())
            + " "
            + Words.code(family.key()));
  }

  private static String only(Family<DefectRow> family) {
    String elements = Elements.only(family.all(DefectRow::element));
    String uses =
        family.all(DefectRow::use).size() == 1
                && !Elements.onlyProximity(family.all(DefectRow::element))
            ? Words.of(family.first().use())
            : "";
    String both =
        Stream.of(elements, uses).filter(text -> !text.isEmpty()).collect(Collectors.joining("; "));
    return both.isEmpty() ? "" : " (" + both + " only)";
  }

  private static String extent(Band band) {
    if (band instanceof Band.Grades grades) {
      return Words.of(grades.grades());
    }
    return band.toString();
  }

  private static String effect(DefectRow row) {
    List<String> parts = new ArrayList<>(List.of(effect(row.effect())));
    if (row.open()) {
      parts.add(
          row.admits().isEmpty()
              ? "DISPUTED, and no policy may decide"
              : "DISPUTED; a policy may decide: "
                  + row.admits().stream()
                      .map(
                          each ->
                              effect(each.effect())
                                  + (each.afterward().isEmpty()
                                      ? ""
                                      : ", then " + Words.of(each.afterward())))
                      .collect(Collectors.joining(" or ")));
    }
    if (!row.afterward().isEmpty()) {
      parts.add("afterward " + Words.of(row.afterward()));
    }
    if (!row.handling().isEmpty()) {
      parts.add("until then " + Words.of(row.handling()));
    }
    return String.join("; ", parts);
  }

  private static String effect(Effect effect) {
    if (effect instanceof Effect.Clean clean) {
      return "**clean**, " + Words.of(clean.kind()) + ", the " + Words.of(clean.scope());
    } else if (effect instanceof Effect.Repair repair) {
      return "**repair**, " + Words.of(repair.repairClass()) + ", the " + Words.of(repair.scope());
    } else if (effect instanceof Effect.ReplacePart replace) {
      return "**replace the part**, " + Words.of(replace.repairClass());
    } else if (effect instanceof Effect.Evaluate evaluate) {
      return "**evaluate** by "
          + Words.of(evaluate.check())
          + ", the "
          + Words.of(evaluate.scope());
    } else if (effect instanceof Effect.Retire retire) {
      return "**retire** the " + Words.of(retire.scope());
    }
    return "**note**";
  }
}
