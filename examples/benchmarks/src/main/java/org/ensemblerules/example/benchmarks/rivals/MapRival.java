package org.ensemblerules.example.benchmarks.rivals;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** A hash map from place and defect to lines. */
public final class MapRival implements Rival<MapRival.Input> {
  private final Map<Cell, List<Line>> cells = new HashMap<>();

  /**
   * A place and a defect.
   *
   * @param place the number of the place
   * @param defect the number of the defect
   */
  public record Cell(int place, int defect) {}

  /**
   * What the map is handed.
   *
   * @param cell the key; not null
   * @param by the number of that by which the size is told
   * @param size the size
   */
  public record Input(Cell cell, int by, long size) {}

  /**
   * Fills the map.
   *
   * @param table the lines; not null
   */
  public MapRival(NeutralTable table) {
    for (Line line : table.lines()) {
      cells
          .computeIfAbsent(
              new Cell(line.placeNumber(), line.defect().ordinal()), cell -> new ArrayList<>(1))
          .add(line);
    }
  }

  @Override
  public Input input(Asked asked) {
    return new Input(
        new Cell(asked.placeNumber(), asked.defect().ordinal()),
        asked.told().by().ordinal(),
        asked.told().whole());
  }

  @Override
  public String answer(Input input) {
    List<Line> lines = cells.get(input.cell());
    if (lines != null) {
      for (Line line : lines) {
        if (line.by().ordinal() == input.by()
            && input.size() > line.over()
            && input.size() <= line.upTo()) {
          return line.row();
        }
      }
    }
    return "";
  }
}
