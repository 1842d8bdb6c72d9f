package org.ensemblerules.tables;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.util.Arrays;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.ensemblerules.measure.Bound;
import org.ensemblerules.measure.Limit;
import org.ensemblerules.measure.Quantity;
import org.ensemblerules.measure.Unit;
import org.ensemblerules.tables.set.TableRevision;
import org.ensemblerules.testkit.ShippedLoad;
import org.junit.jupiter.api.Test;

/**
 * Every number of the shipped files that is printed in two units against its own second unit: both
 * can be roundings of one value. Read from the files, as bands of defects keep only the first.
 */
class PrintedNumbersTest {
  private static final ObjectMapper MAPPER = new ObjectMapper();

  private final Map<String, Boolean> agree = new TreeMap<>();

  /**
   * Those that cannot, each noted at its row: 8.8 lbf is 39.14 N and 13.2 lbf is 58.72 N; the older
   * edition reckoned 4.5 N to the pound-force.
   */
  @Test
  void theTwoNumbersOfARowAgreeButForThoseKnown() throws IOException {
    for (TableRevision file : ShippedLoad.tables().revisions()) {
      JsonNode text = MAPPER.readTree(ShippedTables.files().read(file.file()).orElseThrow());
      for (JsonNode row : text.path("rows")) {
        for (JsonNode printed : row.findParents("alsoPrinted")) {
          String place = file.file().split("/", 2)[0] + " " + row.path("key").asText();
          agree.merge(place, limit(printed).printedNumbersAgree(), Boolean::logicalAnd);
        }
      }
    }
    assertThat(agree.entrySet().stream().filter(each -> !each.getValue()).map(Map.Entry::getKey))
        .containsExactly(
            "nfpa-1971-2000 footwear-puncture",
            "nfpa-1971-2000 glove-puncture",
            "nfpa-1971-2000 seam-major-a",
            "nfpa-1971-2000 seam-major-b",
            "nfpa-1971-2007 footwear-puncture",
            "nfpa-1971-2007 glove-puncture",
            "nfpa-1971-2013 footwear-puncture",
            "nfpa-1971-2013 glove-puncture",
            "nfpa-1971-2018 footwear-puncture",
            "nfpa-1971-2018 glove-puncture");
    assertThat(agree).hasSizeGreaterThan(70);
  }

  /** A limit, or the upper end of a band. */
  private static Limit limit(JsonNode printed) {
    JsonNode first = printed.has("upTo") ? printed.get("upTo") : printed;
    return new Limit(
        Bound.MAXIMUM, quantity(first), Optional.of(quantity(printed.get("alsoPrinted"))));
  }

  private static Quantity quantity(JsonNode node) {
    Unit unit =
        Arrays.stream(Unit.values())
            .filter(each -> each.symbol().equals(node.get("unit").textValue()))
            .findFirst()
            .orElseThrow();
    return Quantity.of(node.get("value").asText(), unit);
  }
}
