package org.ensemblerules.shipped;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.ensemblerules.care.CareRouteRow;
import org.ensemblerules.repair.RepairLimitRow;
import org.ensemblerules.ruleset.CareKinds;
import org.ensemblerules.shipped.Facts.Fact;
import org.ensemblerules.source.OriginId;
import org.ensemblerules.source.Row;
import org.ensemblerules.tables.set.EditionTables;
import org.junit.jupiter.api.Test;

/**
 * Writes the table of all that care and repair were checked against outside: {@code
 * target/outside-checks-care-repair.csv}, source by source, with how each was seen.
 */
class OutsideCareChecksTest {
  private static final Set<String> TABLES = Set.of("care-routes", "repair-limits");

  @Test
  void everyCheckIsListedWithItsSource() throws IOException {
    List<String> lines = new ArrayList<>(List.of("source;what;known as;edition;published;ours"));
    for (Fact fact : Facts.all()) {
      if (!TABLES.contains(fact.table())) {
        continue;
      }
      for (OriginId edition : fact.editions()) {
        String ours = ours(fact, ShippedEditions.loaded().tables(edition));
        lines.add(
            String.join(
                ";",
                fact.source(),
                fact.words(),
                fact.certainty(),
                edition.value(),
                fact.value(),
                ours));
        assertThat(ours).as("%s of %s", fact, edition).contains(fact.value());
      }
    }
    Path file =
        Path.of(System.getProperty("basedir", ""), "target", "outside-checks-care-repair.csv");
    Files.createDirectories(file.getParent());
    Files.write(file, lines);
    assertThat(lines).hasSizeGreaterThan(50);
  }

  private static String ours(Fact fact, EditionTables tables) {
    List<? extends Row> rows =
        fact.table().equals("care-routes")
            ? tables.find(CareKinds.CARE_ROUTES).orElseThrow().rows()
            : tables.find(CareKinds.REPAIR_LIMITS).orElseThrow().rows();
    Row row =
        rows.stream()
            .filter(each -> each.key().value().startsWith(fact.rows() + "/"))
            .findFirst()
            .orElseThrow();
    assertThat(row).isInstanceOfAny(CareRouteRow.class, RepairLimitRow.class);
    return RowFields.of(row, fact.field().replace("~", ""));
  }
}
