package org.ensemblerules.shipped;

import java.util.List;
import java.util.stream.Stream;
import org.ensemblerules.ruleset.CareKinds;
import org.ensemblerules.ruleset.InspectionKinds;
import org.ensemblerules.ruleset.RuleSet;
import org.ensemblerules.ruleset.Tables;
import org.ensemblerules.source.Checked;
import org.ensemblerules.source.OriginId;
import org.ensemblerules.source.Row;
import org.ensemblerules.tables.ShippedRules;
import org.ensemblerules.tables.set.LoadedTables;
import org.ensemblerules.testkit.ShippedLoad;

/** The shipped rule sets that the tests of this package go over. */
final class ShippedEditions {
  static final OriginId EDITION_2001 = new OriginId("NFPA_1851_2001");
  static final OriginId EDITION_2008 = new OriginId("NFPA_1851_2008");
  static final OriginId EDITION_2014 = new OriginId("NFPA_1851_2014");
  static final OriginId EDITION_2020 = new OriginId("NFPA_1851_2020");
  static final OriginId EDITION_2026 = new OriginId("NFPA_1850_2026");
  static final List<OriginId> WITH_INSPECTION =
      List.of(EDITION_2008, EDITION_2014, EDITION_2020, EDITION_2026);

  private ShippedEditions() {}

  private static final class Checked {
    static final LoadedTables TABLES = ShippedLoad.tables();
  }

  static LoadedTables loaded() {
    return Checked.TABLES;
  }

  static RuleSet rules(OriginId edition) {
    return ShippedRules.of(edition).orElseThrow().rules();
  }

  /** Every row: of each edition with rules, of care routes and repair, and the ages of 2001. */
  static List<Row> rows() {
    return Stream.concat(
            WITH_INSPECTION.stream().map(edition -> rules(edition).tables()).map(Tables::rows),
            Stream.concat(
                Stream.of(
                    loaded()
                        .tables(EDITION_2001)
                        .find(InspectionKinds.AGE_LIMITS)
                        .orElseThrow()
                        .rows()),
                Stream.of(EDITION_2001, EDITION_2008, EDITION_2014, EDITION_2020)
                    .map(edition -> loaded().tables(edition))
                    .flatMap(
                        tables ->
                            Stream.<List<? extends Row>>of(
                                tables.find(CareKinds.CARE_ROUTES).orElseThrow().rows(),
                                tables.find(CareKinds.REPAIR_LIMITS).orElseThrow().rows()))))
        .<Row>flatMap(List::stream)
        .distinct()
        .toList();
  }
}
