package org.ensemblerules.tables;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.ensemblerules.source.Checked;
import org.ensemblerules.strength.TestCase;
import org.ensemblerules.testkit.ArbitrariesOfMeasures;

/** Laboratory reports in JSON: nothing is lost, and the schema allows what is written. */
class TestCaseJsonProperties {
  @Provide
  static Arbitrary<TestCase> cases() {
    return ArbitrariesOfMeasures.testCases();
  }

  @Property(tries = 500)
  void whatIsWrittenReadsAsTheSame(@ForAll("cases") TestCase given) {
    assertThat(TestCaseJson.read("case", TestCaseJson.write(given)))
        .isEqualTo(new Checked.Sound<>(given));
  }

  /** A fabric of no strength would excuse any seam. */
  @Property(tries = 50)
  void aFabricOfNoStrengthIsRefusedInItsPlace(@ForAll("cases") TestCase given) {
    for (String value : List.of("0", "-5")) {
      String json =
          TestCaseJson.write(given)
              .replaceAll("\"fabricStrength\":\\{[^}]*\\},", "")
              .replace(
                  "\"property\":",
                  "\"fabricStrength\":{\"value\":\"" + value + "\",\"unit\":\"N\"},\"property\":");
      assertThat(TestCaseJson.read("case", json))
          .isInstanceOfSatisfying(
              Checked.Refused.class,
              refused ->
                  assertThat(refused.faults().toString())
                      .contains("/report/fabricStrength")
                      .contains("above zero"));
    }
  }

  @Property(tries = 200)
  void theSchemaAllowsWhatIsWritten(@ForAll("cases") TestCase given) throws Exception {
    assertThat(TableSchemas.objections("test-case", TestCaseJson.write(given))).isEmpty();
  }
}
