package org.ensemblerules.tables;

import java.time.LocalDate;
import java.util.Objects;
import java.util.Optional;
import org.ensemblerules.record.PlaceCode;
import org.ensemblerules.ruleset.AdoptionTable;
import org.ensemblerules.tables.codec.AdoptionTree;
import org.ensemblerules.tables.json.JsonLine;

/**
 * Writes what the law of a place asks to go by, in the form of {@code rules-answer.schema.json} of
 * this package's {@code schema} folder. Safe for use by many threads.
 */
public final class AdoptionJson {
  private AdoptionJson() {}

  /**
   * Writes what holds, subject by subject.
   *
   * @param tables the editions there are; not null
   * @param adoptions what laws ask; not null
   * @param place the place; not null
   * @param day the day; not null
   * @param bought when the gear was bought; empty if not known; not null
   * @return one line of JSON without a line end, its fields in a fixed order; never null
   */
  public static String write(
      LoadedTables tables,
      AdoptionTable adoptions,
      PlaceCode place,
      LocalDate day,
      Optional<LocalDate> bought) {
    Objects.requireNonNull(tables, "tables");
    Objects.requireNonNull(adoptions, "adoptions");
    Objects.requireNonNull(bought, "bought");
    return JsonLine.of(AdoptionTree.write(tables, adoptions, place, day, bought));
  }
}
