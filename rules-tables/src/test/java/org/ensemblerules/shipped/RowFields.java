package org.ensemblerules.shipped;

import java.time.LocalDate;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;
import org.ensemblerules.care.CareRouteRow;
import org.ensemblerules.defect.DefectRow;
import org.ensemblerules.effect.CheckRow;
import org.ensemblerules.effect.PermissionRow;
import org.ensemblerules.inspection.CriterionRow;
import org.ensemblerules.inspection.IntervalRow;
import org.ensemblerules.repair.RepairLimitRow;
import org.ensemblerules.retirement.AgeLimitRow;
import org.ensemblerules.ruleset.CautionRow;
import org.ensemblerules.source.Basis;
import org.ensemblerules.source.Edition;
import org.ensemblerules.source.Row;

/** The fields of rows by name, as text. */
final class RowFields {
  private static final Map<String, Function<Row, String>> FIELDS =
      Map.ofEntries(
          Map.entry("limit", row -> ((AgeLimitRow) row).limit().toString()),
          Map.entry("first", row -> "" + ((IntervalRow) row).firstMonths()),
          Map.entry("firstWithCbrn", row -> "" + ((IntervalRow) row).firstMonthsWithCbrnOption()),
          Map.entry("repeat", row -> "" + ((IntervalRow) row).repeatMonths()),
          Map.entry("needs", row -> ((PermissionRow) row).needs().map(Enum::name).orElse("none")),
          Map.entry("effect", row -> ((DefectRow) row).effect().text()),
          Map.entry("band", row -> ((DefectRow) row).band().toString()),
          Map.entry("open", row -> "" + ((DefectRow) row).open()),
          Map.entry("afterward", row -> ((DefectRow) row).afterward().toString()),
          Map.entry("way", row -> ((CriterionRow) row).way()),
          Map.entry("atHand", row -> ((CriterionRow) row).atHand().toString()),
          Map.entry("steps", row -> ((CareRouteRow) row).steps().toString()),
          Map.entry("least", row -> ((RepairLimitRow) row).least().name()),
          Map.entry("before", row -> ((RepairLimitRow) row).before().toString()),
          Map.entry("after", row -> ((RepairLimitRow) row).afterward().toString()),
          Map.entry("passCloses", row -> "" + ((CheckRow) row).passCloses()),
          Map.entry("text", row -> ((CautionRow) row).text()),
          Map.entry(
              "effective", row -> ((Edition) row).effective().map(LocalDate::toString).orElse("")));

  private RowFields() {}

  static String of(Row row, String field) {
    return Objects.requireNonNull(FIELDS.get(field), field).apply(row);
  }

  /** How a basis was come by, in one word. */
  static String certainty(Basis basis) {
    if (basis instanceof Basis.Published published) {
      return published.seen().name();
    }
    return basis instanceof Basis.Memory memory
        ? "MEMORY_" + memory.confidence()
        : "COMMON_PRACTICE";
  }
}
