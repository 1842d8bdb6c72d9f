package org.ensemblerules.defect;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.Site;
import org.ensemblerules.gear.Use;

/**
 * The rows of a table of defects, laid out for answering. It is made of the rows when the table is
 * and holds nothing else. Its arrays are short and lie together, as an answer out of many thousand
 * rows takes as long as the memory that it must go through.
 */
final class RulingIndex {
  private static final int DEFECTS = DefectKind.values().length;
  private static final int USES = Use.values().length;
  private static final int PLACES = ElementKind.values().length * USES * Site.count();

  private static final Ruling NO_RULE = new Ruling.NoRule();

  // Of each place the first of its cells, one for each defect; places without rows share theirs.
  private final int[] places;
  // Of each cell its bands, and where its answers begin: what must be measured, then each band's.
  private final JoinedBands[] bands;
  private final int[] first;
  private final Ruling[] answers;

  private RulingIndex(int[] places, List<JoinedBands> bands, int[] first, List<Ruling> answers) {
    this.places = places;
    this.bands = bands.toArray(JoinedBands[]::new);
    this.first = first;
    this.answers = answers.toArray(Ruling[]::new);
  }

  /** Returns the number of the cell that a row is in, in the order of the index. */
  static int cell(DefectRow row) {
    return place(row.element(), row.use(), row.site()) * DEFECTS + row.defect().ordinal();
  }

  private static int place(ElementKind element, Use use, Site site) {
    return (element.ordinal() * USES + use.ordinal()) * Site.count() + site.index();
  }

  /** Lays out the rows of each cell by its number; their bands join. */
  static RulingIndex of(SortedMap<Integer, List<DefectRow>> cells) {
    int[] places = new int[PLACES];
    int used = DEFECTS;
    for (int cell : cells.keySet()) {
      if (places[cell / DEFECTS] == 0) {
        places[cell / DEFECTS] = used;
        used += DEFECTS;
      }
    }
    List<JoinedBands> bands = new ArrayList<>(Collections.nCopies(used, JoinedBands.NONE));
    int[] first = new int[used];
    List<Ruling> answers = new ArrayList<>(List.of(NO_RULE));
    Map<List<Band>, JoinedBands> alike = new HashMap<>();
    cells.forEach(
        (cell, rows) -> {
          List<DefectRow> inOrder = BandJoints.inOrder(rows);
          int at = places[cell / DEFECTS] + cell % DEFECTS;
          first[at] = answers.size();
          bands.set(
              at,
              alike.computeIfAbsent(
                  inOrder.stream().map(DefectRow::band).toList(), JoinedBands::new));
          answers.add(new Ruling.MustMeasure(inOrder.get(0).band().kind(), inOrder));
          inOrder.forEach(row -> answers.add(new Ruling.Covered(row)));
        });
    return new RulingIndex(places, bands, first, answers);
  }

  Ruling ruling(ElementKind element, Use use, Site site, DefectKind defect, Extent extent) {
    int cell = places[place(element, use, site)] + defect.ordinal();
    return answers[first[cell] + bands[cell].number(extent)];
  }

  /** Returns the rows of a cell in the order of their bands. */
  List<DefectRow> rows(ElementKind element, Use use, Site site, DefectKind defect) {
    return answers[first[places[place(element, use, site)] + defect.ordinal()]]
            instanceof Ruling.MustMeasure all
        ? all.rows()
        : List.of();
  }
}
