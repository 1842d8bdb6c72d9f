package org.ensemblerules.ruleset;

import com.google.common.collect.ImmutableList;
import java.util.Collections;
import java.util.List;
import java.util.Set;
import org.ensemblerules.effect.EffectKind;
import org.ensemblerules.gear.Element;
import org.ensemblerules.source.Checked;
import org.ensemblerules.source.TableFault;
import org.ensemblerules.source.cells.Cells;

/**
 * The cautions that verdicts carry.
 *
 * @since 0.1
 */
public final class CautionTable {
  private final ImmutableList<CautionRow> rows;

  private CautionTable(List<CautionRow> rows) {
    this.rows = ImmutableList.copyOf(rows);
  }

  /**
   * Compiles rows.
   *
   * @param rows the rows; not null
   * @return the table, or a fault for each key used twice
   */
  public static Checked<CautionTable, TableFault> of(List<CautionRow> rows) {
    return Checked.of(Cells.byKey(rows).faults(), () -> new CautionTable(rows));
  }

  /**
   * Lists the cautions that go with a verdict.
   *
   * @param element the element; not null
   * @param effects the kinds of effect that the verdict calls for; not null
   * @return the rows in table order; never null
   */
  public List<CautionRow> with(Element element, Set<EffectKind> effects) {
    ImmutableList.Builder<CautionRow> found = ImmutableList.builder();
    for (CautionRow row : rows) {
      if ((row.elements().isEmpty() || row.elements().contains(element.kind()))
          && (row.uses().isEmpty() || row.uses().contains(element.use()))
          && (row.effects().isEmpty() || !Collections.disjoint(row.effects(), effects))) {
        found.add(row);
      }
    }
    return found.build();
  }

  /**
   * Returns all rows.
   *
   * @return the rows in table order; never null
   */
  public List<CautionRow> rows() {
    return rows;
  }
}
