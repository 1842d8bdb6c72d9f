package org.ensemblerules.example.benchmarks.rivals;

import org.ensemblerules.defect.DefectKind;
import org.ensemblerules.defect.DefectTable;
import org.ensemblerules.defect.Extent;
import org.ensemblerules.defect.Grade;
import org.ensemblerules.defect.Ruling;
import org.ensemblerules.gear.AnatomyTable;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.Site;
import org.ensemblerules.gear.Use;
import org.ensemblerules.measure.Quantity;

/** The library's own table of defects. */
public final class LibraryRival implements Rival<LibraryRival.Input> {
  private final DefectTable table;

  /**
   * What the library is handed.
   *
   * @param element the kind of element; not null
   * @param use its use; not null
   * @param site where; not null
   * @param defect what is wrong; not null
   * @param extent how large the defect is; not null
   */
  public record Input(ElementKind element, Use use, Site site, DefectKind defect, Extent extent) {}

  /**
   * Compiles the rows.
   *
   * @param rows the rows; not null
   * @param anatomy which parts exist; not null
   */
  public LibraryRival(NeutralTable rows, AnatomyTable anatomy) {
    table = DefectTable.of(rows.rows(), anatomy).orElseThrow();
  }

  @Override
  public Input input(Asked asked) {
    return new Input(
        asked.element(), asked.use(), asked.site(), asked.defect(), extent(asked.told()));
  }

  private static Extent extent(Told told) {
    return switch (told.by()) {
      case PRESENCE -> new Extent.NotMeasured();
      case LENGTH -> new Extent.Length(new Quantity(told.number(), told.unit()));
      case AREA -> new Extent.Area(new Quantity(told.number(), told.unit()));
      case COUNT -> new Extent.Count(told.number().intValueExact());
      case GRADE -> new Extent.Graded(Grade.values()[told.number().intValueExact()]);
    };
  }

  @Override
  public String answer(Input input) {
    return table.ruling(input.element(), input.use(), input.site(), input.defect(), input.extent())
            instanceof Ruling.Covered covered
        ? covered.row().key().value()
        : "";
  }
}
