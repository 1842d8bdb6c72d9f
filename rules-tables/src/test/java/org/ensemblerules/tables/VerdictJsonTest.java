package org.ensemblerules.tables;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.ensemblerules.GearRules;
import org.ensemblerules.ruleset.RuleSet;
import org.ensemblerules.source.Edition;
import org.ensemblerules.source.Row;
import org.ensemblerules.testkit.InventedRules;
import org.ensemblerules.verdict.Assessment;
import org.ensemblerules.verdict.Verdict;
import org.junit.jupiter.api.Test;

class VerdictJsonTest {
  private static final LocalDate DAY = LocalDate.of(2025, 6, 1);
  private static final ObjectMapper MAPPER = new ObjectMapper();

  private static Assessment assessment(String name) throws IOException {
    return AssessmentJson.read(name, text("assessments/sound/" + name + ".json")).orElseThrow();
  }

  private static String text(String path) throws IOException {
    try (InputStream stream = VerdictJsonTest.class.getResourceAsStream(path)) {
      return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
    }
  }

  private static Verdict verdict(String name) throws IOException {
    return GearRules.of(InventedRules.rules()).assess(assessment(name), DAY);
  }

  /** Each kind of part once, byte by byte, worked out by hand from the invented rules. */
  @Test
  void partsAreWrittenByteByByte() throws IOException {
    assertThat(VerdictJson.write(verdict("everything")))
        .startsWith(
            quoted(
                "{'element':{'id':'C-1','kind':'COAT','use':'STRUCTURAL'},'asOf':'2025-06-01',"
                    + "'service':'OUT','headline':'RETIRE','goesTo':{'destination':'AWAY'},"
                    + "'outBecause':['CONDITION','OVERDUE','PAPER'],"))
        .contains(
            quoted(
                "'actions':[{'effect':{'kind':'RETIRE','scope':'ELEMENT'},'target':'WHOLE_ELEMENT',"
                    + "'by':[{'entity':'ORGANIZATION','needs':'INSPECT'},"
                    + "{'entity':'VERIFIED_INDEPENDENT_SERVICE_PROVIDER'}],"
                    + "'goesTo':{'destination':'DISPOSAL'},'afterward':[]},"),
            quoted(
                "{'kind':'RULE','site':'FABRIC@OUTER_SHELL','finding':'F1',"
                    + "'seen':'TEAR at FABRIC@OUTER_SHELL (left elbow), 0.50 in',"
                    + "'effect':{'kind':'NOTE'},"
                    + "'row':{'key':'invented/COAT/STRUCTURAL/FABRIC@OUTER_SHELL/TEAR/short',"
                    + "'origin':'INVENTED_2015','basis':{'kind':'PUBLISHED',"
                    + "'source':'invented-book','seen':'RESTATED'},"
                    + "'basisText':'PUBLISHED, RESTATED, invented-book, clause not seen',"
                    + "'wording':'Invented: TEAR at FABRIC@OUTER_SHELL.','open':false,"
                    + "'reviewedThrough':'2025-12-31','note':'Invented.'},"
                    + "'caution':'Seen restated elsewhere, not read in the source itself.'}"),
            quoted(
                "{'finding':{'id':'F4','site':'FABRIC@OUTER_SHELL','defect':'BURN_HOLE',"
                    + "'extent':{'area':{'value':'150','unit':'mm2'}},'seen':'2025'},"
                    + "'site':'FABRIC@OUTER_SHELL',"
                    + "'effect':{'kind':'EVALUATE','check':'EXPERT_EVALUATION','scope':'PART'},"
                    + "'closedBy':['EVALUATE by EXPERT_EVALUATION on PART'],'attempts':[]}"),
            quoted("'wayBack':{'kind':'NONE','why':'the whole element leaves service for good'}"),
            quoted(
                "{'layer':'OUTER_SHELL','manufactured':'2018-03','answer':'LEAVES_ON',"
                    + "'firstDayOut':'2028-03-01','lastDay':'2028-02-29','limitYears':10,"
                    + "'row':{'key':'invented/age/COAT/STRUCTURAL/OUTER_SHELL',"),
            quoted(
                "'cautions':[{'row':'invented/caution',"
                    + "'text':'Invented: computed from reports.'}],"
                    + "'rules':{'editions':{'PRODUCT':'INVENTED_2015',"
                    + "'INSPECTION':'INVENTED_2015','AGE':'INVENTED_2015'},"
                    + "'overlays':[],"
                    + "'revisions':{'invented/ages.json':1,'invented/defects.json':3},"
                    + "'form':2,'fingerprint':'"));
  }

  private static String quoted(String json) {
    return json.replace('\'', '"');
  }

  @Test
  void fieldsStandInTheOrderOfTheContract() throws IOException {
    JsonNode tree = MAPPER.readTree(VerdictJson.write(verdict("everything")));

    assertThat(tree.properties().stream().map(Map.Entry::getKey))
        .containsExactly(
            "element",
            "asOf",
            "service",
            "headline",
            "goesTo",
            "outBecause",
            "actions",
            "handling",
            "reasons",
            "checksNotDone",
            "openFindings",
            "wayBack",
            "ages",
            "inspections",
            "due",
            "authority",
            "cautions",
            "rules");
  }

  @Test
  void saysWhatTheVerdictSays() throws IOException {
    Verdict verdict = verdict("everything");
    JsonNode tree = MAPPER.readTree(VerdictJson.write(verdict));

    assertThat(tree.at("/element/id").textValue()).isEqualTo("C-1");
    assertThat(tree.at("/asOf").textValue()).isEqualTo("2025-06-01");
    assertThat(tree.at("/service").textValue()).isEqualTo(verdict.service().name());
    assertThat(tree.at("/headline").textValue()).isEqualTo(verdict.headline().name());
    assertThat(tree.at("/actions")).hasSameSizeAs(verdict.actions());
    assertThat(tree.at("/reasons")).hasSameSizeAs(verdict.reasons());
    assertThat(tree.at("/openFindings")).hasSameSizeAs(verdict.openFindings());
    assertThat(tree.at("/ages")).hasSameSizeAs(verdict.ages());
    assertThat(tree.at("/due")).hasSameSizeAs(verdict.due());
    assertThat(tree.at("/cautions")).hasSameSizeAs(verdict.cautions());
    assertThat(tree.at("/rules/fingerprint").textValue())
        .isEqualTo(InventedRules.rules().identity().fingerprint());
    assertThat(tree.at("/rules/editions/INSPECTION").textValue()).isEqualTo("INVENTED_2015");
    assertThat(tree.at("/rules/revisions/invented~1defects.json").intValue()).isEqualTo(3);
  }

  /** Whatever the shipped tables say, of any edition, can be written as the schema has it. */
  @Test
  void verdictsOfEveryShippedEditionAreValid() throws IOException {
    List<Edition> editions = ShippedRules.editions();
    assertThat(editions).isNotEmpty();
    for (Edition edition : editions) {
      Verdict verdict =
          ShippedRules.of(edition.id()).orElseThrow().assess(assessment("everything"), DAY);

      assertThat(TableSchemas.objections("verdict", VerdictJson.write(verdict)))
          .as(edition.id().value())
          .isEmpty();
    }
  }

  @Test
  void theTraceIsWrittenWhereItIsAskedFor() throws IOException {
    for (Edition edition : ShippedRules.editions()) {
      RuleSet rules = ShippedRules.of(edition.id()).orElseThrow().rules();
      Verdict verdict = GearRules.of(rules).assess(assessment("everything"), DAY);
      List<Row> trace = GearRules.of(rules).trace(assessment("everything"), DAY);
      String text = VerdictJson.writeWithTrace(verdict, trace);

      assertThat(TableSchemas.objections("verdict", text)).as(edition.id().value()).isEmpty();
      assertThat(text).startsWith(VerdictJson.write(verdict).replaceFirst("}$", ",\"trace\":["));
      assertThat(MAPPER.readTree(text).at("/trace")).hasSameSizeAs(trace);
    }
    assertThat(
            VerdictJson.writeWithTrace(
                verdict("everything"),
                GearRules.of(InventedRules.rules()).trace(assessment("everything"), DAY)))
        .contains(
            quoted(
                "{'key':'invented/COAT/STRUCTURAL/FABRIC@OUTER_SHELL/TEAR/short',"
                    + "'origin':'INVENTED_2015','basis':{'kind':'PUBLISHED',"
                    + "'source':'invented-book','seen':'RESTATED'}}"));
  }
}
