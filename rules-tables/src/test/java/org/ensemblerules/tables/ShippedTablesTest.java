package org.ensemblerules.tables;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import org.ensemblerules.ruleset.InspectionKinds;
import org.ensemblerules.ruleset.Subject;
import org.ensemblerules.source.SourceKind;
import org.ensemblerules.tables.set.LoadedTables;
import org.ensemblerules.testkit.ShippedLoad;
import org.junit.jupiter.api.Test;

/** The shipped tables are sound. */
class ShippedTablesTest {
  private final LoadedTables tables = ShippedLoad.tables();

  @Test
  void everyEditionOfTheStandardWithTablesIsFoundBySubject() {
    assertThat(tables.editions(Subject.AGE))
        .extracting(edition -> edition.id().value())
        .containsExactly(
            "NFPA_1851_2001",
            "NFPA_1851_2008",
            "NFPA_1851_2014",
            "NFPA_1851_2020",
            "NFPA_1850_2026");
    assertThat(tables.editions(Subject.INSPECTION))
        .extracting(edition -> edition.id().value())
        .containsExactly("NFPA_1851_2008", "NFPA_1851_2014", "NFPA_1851_2020", "NFPA_1850_2026");
    assertThat(tables.find(InspectionKinds.ANATOMY)).isPresent();
  }

  // The texts of these standards were not seen, so no row may claim to have been read there.
  @Test
  void noRowClaimsThatAStandardWasRead() {
    assertThat(tables.sources().values())
        .filteredOn(source -> source.kind() == SourceKind.STANDARD)
        .isNotEmpty()
        .allMatch(source -> source.seenAt().isEmpty());
  }

  @Test
  void shippedFilesAreFoundThroughTheirModule() throws IOException {
    assertThat(ShippedTables.files().read("trade/edition.json")).isPresent();
    assertThat(ShippedTables.files().read("trade/no-such-file.json")).isEmpty();
  }
}
