package org.ensemblerules.example.benchmarks.rivals;

import java.util.Arrays;
import org.ensemblerules.defect.DefectKind;

/** A bare array, indexed by place and defect: about as fast as it gets. */
public final class ArrayRival implements Rival<Whole> {
  private static final int DEFECTS = DefectKind.values().length;

  private static final Line[] NONE = {};

  private final Line[][] cells = new Line[Asked.placeNumbers() * DEFECTS][];

  /**
   * Lays out the lines.
   *
   * @param table the lines; not null
   */
  public ArrayRival(NeutralTable table) {
    Arrays.fill(cells, NONE);
    for (Line line : table.lines()) {
      int cell = line.placeNumber() * DEFECTS + line.defect().ordinal();
      Line[] longer = Arrays.copyOf(cells[cell], cells[cell].length + 1);
      longer[cells[cell].length] = line;
      cells[cell] = longer;
    }
  }

  @Override
  public Whole input(Asked asked) {
    return Whole.of(asked);
  }

  @Override
  public String answer(Whole input) {
    for (Line line : cells[input.place() * DEFECTS + input.defect()]) {
      if (line.by().ordinal() == input.by()
          && input.size() > line.over()
          && input.size() <= line.upTo()) {
        return line.row();
      }
    }
    return "";
  }
}
