package org.ensemblerules.catalog;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.Sets;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.ensemblerules.defect.Band;
import org.ensemblerules.defect.DefectKind;
import org.ensemblerules.defect.DefectRow;
import org.ensemblerules.defect.ExtentKind;
import org.ensemblerules.defect.Grade;

/**
 * How a defect at a part is told.
 *
 * @param defect what is wrong; not null
 * @param measured by what its extent is told: nothing, a length, an area, a count or a grade; not
 *     null
 * @param grades the grades to choose from; none unless it is told by a grade; not null
 * @param rows the rows that decide it, one for each band of extents; at least one
 * @since 0.1
 */
public record DefectForm(
    DefectKind defect, ExtentKind measured, Set<Grade> grades, List<DefectRow> rows) {
  /** Copies the collections. */
  public DefectForm {
    Objects.requireNonNull(defect, "defect");
    Objects.requireNonNull(measured, "measured");
    grades = Sets.immutableEnumSet(grades);
    rows = ImmutableList.copyOf(rows);
  }

  static DefectForm of(DefectKind defect, List<DefectRow> rows) {
    return new DefectForm(
        defect,
        rows.get(0).band().kind(),
        rows.stream()
            .map(DefectRow::band)
            .filter(Band.Grades.class::isInstance)
            .flatMap(band -> ((Band.Grades) band).grades().stream())
            .collect(Sets.toImmutableEnumSet()),
        rows);
  }
}
