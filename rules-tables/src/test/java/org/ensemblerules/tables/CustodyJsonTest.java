package org.ensemblerules.tables;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.time.LocalDate;
import java.util.Map;
import java.util.TreeMap;
import org.ensemblerules.ruleset.RuleSet;
import org.ensemblerules.source.Checked;
import org.ensemblerules.source.OriginId;
import org.ensemblerules.tables.message.CustodyRequest;
import org.ensemblerules.tables.message.JsonFault;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Records of custody as they are read and answered in JSON, by the shipped tables. */
class CustodyJsonTest {
  private static final ObjectMapper MAPPER = new ObjectMapper();
  private static final LocalDate DAY = LocalDate.of(2026, 11, 25);
  private static final String COAT = "{'element':{'id':'E-1','kind':'COAT','use':'STRUCTURAL'},";
  private static final String WHOLE =
      "'custody':{'taken':{'on':'2026-10-02','orderInDay':1},'leftAsFound':'YES',"
          + "'leftUncleaned':'YES','storedProtected':'YES','accessLimited':'YES',"
          + "'custodian':'Captain 2','handovers':[{'on':'2026-10-02','orderInDay':2,"
          + "'from':'Captain 2','to':'Evidence room'}],"
          + "'photographed':[{'on':'2026-10-03','by':'Captain 2'}],"
          + "'examined':[{'on':'2026-10-20','by':'Laboratory A (invented)'}]";

  private static String quoted(String json) {
    return json.replace('\'', '"');
  }

  private static JsonNode answer(RuleSet rules, String text) throws IOException {
    assertThat(TableSchemas.objections("custody-request", text)).as(text).isEmpty();
    CustodyRequest request = CustodyJson.read("custody record", text).orElseThrow();
    String answer =
        CustodyJson.write(
            request, rules.tables().records().custodySteps().check(request.custody(), DAY), DAY);
    assertThat(TableSchemas.objections("custody-answer", answer)).as(answer).isEmpty();
    return MAPPER.readTree(answer);
  }

  private static Map<String, String> steps(JsonNode tree) {
    Map<String, String> steps = new TreeMap<>();
    tree.get("steps")
        .forEach(step -> steps.put(step.get("step").textValue(), step.get("answer").textValue()));
    return steps;
  }

  @ParameterizedTest
  @ValueSource(strings = {"NFPA_1851_2008", "NFPA_1851_2014", "NFPA_1851_2020", "NFPA_1850_2026"})
  void whatIsRecordedIsShownAndWhatIsNotIsMissing(String edition) throws IOException {
    RuleSet rules = ShippedRules.of(new OriginId(edition)).orElseThrow().rules();
    Map<String, String> whole = steps(answer(rules, quoted(COAT + WHOLE + "}}")));
    assertThat(whole).hasSize(10).containsEntry("RECORDED_RELEASE", "STILL_HELD");
    whole.remove("RECORDED_RELEASE");
    assertThat(whole.values()).containsOnly("SHOWN");
    assertThat(
            steps(
                answer(
                    rules,
                    quoted(COAT + WHOLE + ",'released':{'on':'2026-11-20','by':'Chief 1'}}}"))))
        .containsEntry("RECORDED_RELEASE", "SHOWN");
    JsonNode nothing = answer(rules, quoted(COAT + "'custody':{}}"));
    assertThat(steps(nothing)).hasSize(10).doesNotContainValue("SHOWN");
    assertThat(nothing.at("/steps/0/what/0").textValue())
        .isEqualTo("when it was taken out of service");
    assertThat(nothing.at("/steps/0/row/basis").isObject()).isTrue();
  }

  @Test
  void aGapInTheChainIsNamed() throws IOException {
    JsonNode tree =
        answer(
            ShippedRules.standard().rules(),
            quoted(COAT + WHOLE.replace("'from':'Captain 2'", "'from':'Captain 3'") + "}}"));
    assertThat(tree.toString())
        .contains("handed over 2026-10-02")
        .contains("by Captain 3 to Evidence room: Captain 2 had it");
    assertThat(steps(tree)).containsEntry("CHAIN_OF_CUSTODY", "MISSING");
  }

  @Test
  void allFaultsAreNamedAtOnceWithTheirPlaces() {
    Checked<CustodyRequest, JsonFault> loaded =
        CustodyJson.read(
            "asked",
            quoted(
                COAT
                    + "'custody':{'taken':{'on':'2026-02-30'},'leftAsFound':'yes','custodian':' ',"
                    + "'handovers':[{'on':'2026-10-02','from':'A'}],"
                    + "'photographed':[{'by':'A'}],'held':'YES'}}"));
    assertThat(loaded).isInstanceOf(Checked.Refused.class);
    assertThat(((Checked.Refused<CustodyRequest, JsonFault>) loaded).faults())
        .extracting(JsonFault::toString)
        .hasSize(6)
        .anyMatch(fault -> fault.contains("#/custody/taken/on: found \"2026-02-30\""))
        .anyMatch(fault -> fault.contains("#/custody/leftAsFound: found \"yes\""))
        .anyMatch(fault -> fault.contains("#/custody/custodian: found \" \""))
        .anyMatch(fault -> fault.contains("#/custody/handovers/0: found no field \"to\""))
        .anyMatch(fault -> fault.contains("#/custody/photographed/0: found no field \"on\""))
        .anyMatch(fault -> fault.contains("#/custody/held: found unknown field"));
  }
}
