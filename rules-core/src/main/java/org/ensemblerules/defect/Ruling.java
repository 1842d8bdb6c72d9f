package org.ensemblerules.defect;

import java.util.List;

/**
 * What the table of defects answers about one defect at one site.
 *
 * @since 0.1
 */
public sealed interface Ruling {
  /**
   * A row covers it.
   *
   * @param row the row; not null
   */
  record Covered(DefectRow row) implements Ruling {}

  /**
   * Rows exist, and the extent must be measured to choose one.
   *
   * @param by what must be measured; not null
   * @param rows the rows that could apply, at least one
   */
  record MustMeasure(ExtentKind by, List<DefectRow> rows) implements Ruling {
    /** Copies the rows. */
    public MustMeasure {
      rows = List.copyOf(rows);
    }
  }

  /** No row covers it. */
  record NoRule() implements Ruling {}
}
