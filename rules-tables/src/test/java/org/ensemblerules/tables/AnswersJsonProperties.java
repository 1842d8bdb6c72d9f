package org.ensemblerules.tables;

import static org.assertj.core.api.Assertions.assertThat;
import static org.ensemblerules.tables.AnswersJsonTest.valid;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.ensemblerules.fleet.FleetDifference;
import org.ensemblerules.record.RecordFile;
import org.ensemblerules.ruleset.RuleSet;
import org.ensemblerules.source.OriginId;
import org.ensemblerules.testkit.ArbitrariesOfAssessments;
import org.ensemblerules.testkit.InventedRules;
import org.ensemblerules.verdict.Assessment;

/** What is asked of a record is answered in the form of the schemas, whatever the record is. */
class AnswersJsonProperties {
  private static final RuleSet RULES = ShippedRules.standard();
  private static final LocalDate DAY = LocalDate.of(2026, 11, 25);

  @Provide
  Arbitrary<Assessment> assessments() {
    return ArbitrariesOfAssessments.assessments(InventedRules.criteria());
  }

  @Property(tries = 200, edgeCases = EdgeCasesMode.NONE)
  void whatFallsDueIsAsTheSchemaHasIt(@ForAll("assessments") Assessment given) throws IOException {
    String text =
        DueJson.write(
            DueJson.Answer.of(RULES.schedule(), given.serviceRecord(), DAY, DAY, DAY.plusYears(2)));
    JsonNode tree = valid("due-answer", text);
    assertThat(tree.get("due")).hasSize(RULES.schedule().due(given.serviceRecord(), DAY).size());
  }

  @Property(tries = 200, edgeCases = EdgeCasesMode.NONE)
  void whatTheFileOfAnElementLacksIsAsTheSchemaHasIt(@ForAll("assessments") Assessment given)
      throws IOException {
    RecordFile file = RecordFile.builder(given.element(), given.history()).build();
    valid(
        "file-answer",
        FileAnswerJson.write(FileAnswerJson.Answer.of(RULES, file, DAY, Optional.empty())));
  }

  @Property(tries = 50, edgeCases = EdgeCasesMode.NONE)
  void whatItChangesForGear(@ForAll("assessments") Assessment given) throws IOException {
    RuleSet then = ShippedRules.of(new OriginId("NFPA_1851_2014")).orElseThrow();
    List<String> lines = new ArrayList<>();
    lines.add(
        DifferenceJson.write(
            FleetDifference.between(
                RULES, then, List.of(given), DAY, each -> lines.add(DifferenceJson.write(each)))));
    assertThat(lines).hasSize(2);
    for (String line : lines) {
      valid("difference-answer", line);
    }
  }
}
