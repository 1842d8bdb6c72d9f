package org.ensemblerules.tables;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import org.junit.jupiter.api.Test;

/** The shipped tables are sound. */
class ShippedTablesTest {
  @Test
  void theShippedTablesLoadWithoutAFault() throws IOException {
    assumeTrue(ShippedTables.files().read("index.json").isPresent(), "no tables shipped yet");
    assertThat(ShippedTables.load().orElseThrow().editions()).isNotEmpty();
  }

  @Test
  void shippedFilesAreFoundThroughTheirModule() throws IOException {
    assertThat(ShippedTables.files().read("trade/edition.json")).isPresent();
    assertThat(ShippedTables.files().read("trade/no-such-file.json")).isEmpty();
  }
}
