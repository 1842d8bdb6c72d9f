package org.ensemblerules.example.department;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.function.Function;
import org.ensemblerules.GearRules;
import org.ensemblerules.effect.DoerRegister;
import org.ensemblerules.example.department.demo.DemoDepartment;
import org.ensemblerules.tables.AssessmentJson;
import org.ensemblerules.tables.ShippedRules;
import org.ensemblerules.tables.message.UnknownDoer;
import org.ensemblerules.verdict.Assessment;
import org.ensemblerules.verdict.Verdict;
import org.junit.jupiter.api.Test;

/** What a record of the department takes in JSON, whole and trimmed, and that nothing is lost. */
class RecordSizeTest {
  private static final GearRules RULES = ShippedRules.standard();
  private static final List<Assessment> GEAR = DemoDepartment.assessments(RULES);
  private static final DoerRegister REGISTER =
      DoerRegister.of(
          GEAR.stream().flatMap(one -> one.history().doers().stream()).distinct().toList());

  private static long average(Function<Assessment, String> written) {
    return GEAR.stream()
            .mapToLong(one -> written.apply(one).getBytes(StandardCharsets.UTF_8).length)
            .sum()
        / GEAR.size();
  }

  private static Assessment part(Assessment whole) {
    return RULES.stillMatters(whole, DemoDepartment.AS_OF);
  }

  private static Assessment readBack(Assessment given) {
    return AssessmentJson.naming(REGISTER, UnknownDoer.REFUSED, RULES)
        .read(given.element().id().value(), AssessmentJson.write(given, REGISTER, RULES))
        .orElseThrow();
  }

  private static Verdict verdict(Assessment given) {
    return RULES.assess(given, DemoDepartment.AS_OF);
  }

  @Test
  void namesAndWhatStillMattersTakeAPartOfTheRoom() {
    long inFull = average(AssessmentJson::write);
    long named = average(one -> AssessmentJson.write(one, REGISTER, RULES));
    long trimmed = average(one -> AssessmentJson.write(part(one), REGISTER, RULES));
    assertThat(inFull).isGreaterThan(2 * named);
    assertThat(named).isLessThan(4 * 1024);
    assertThat(trimmed).isLessThan(5 * 512);
  }

  @Test
  void theAnswersAreTheSame() {
    for (Assessment whole : GEAR) {
      Verdict asWhole = verdict(whole);
      assertThat(readBack(whole)).isEqualTo(whole);
      Verdict asPart = verdict(readBack(part(whole)));
      String id = whole.element().id().value();
      assertThat(asPart.service()).as(id).isEqualTo(asWhole.service());
      assertThat(asPart.actions()).as(id).isEqualTo(asWhole.actions());
      assertThat(asPart.handling()).as(id).isEqualTo(asWhole.handling());
      assertThat(asPart.due()).as(id).isEqualTo(asWhole.due());
      assertThat(asPart.reasons()).as(id).isEqualTo(asWhole.reasons());
    }
  }
}
