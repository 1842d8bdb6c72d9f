package org.ensemblerules.tables;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import org.ensemblerules.GearRules;
import org.ensemblerules.ruleset.Identity;
import org.ensemblerules.ruleset.RuleSet;
import org.ensemblerules.source.Checked;
import org.ensemblerules.tables.message.JsonFault;
import org.ensemblerules.verdict.Assessment;
import org.ensemblerules.verdict.Mismatch;
import org.ensemblerules.verdict.Recompute;
import org.ensemblerules.verdict.Verdict;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Verdicts that were stored are read back and computed again. {@code first-form.json} was written
 * before fingerprints named their form, with its assessment, and is kept as it was.
 */
class StoredVerdictsTest {
  private static final String OLD = text("first-form.json");

  private static String text(String name) {
    try (InputStream stream = StoredVerdictsTest.class.getResourceAsStream("verdicts/" + name)) {
      return new String(stream.readAllBytes(), StandardCharsets.UTF_8).strip();
    } catch (IOException e) {
      throw new AssertionError(name, e);
    }
  }

  private static Assessment assessment() {
    return AssessmentJson.read("assessment", text("first-form-assessment.json")).orElseThrow();
  }

  private static Verdict judged() {
    return ShippedRules.standard().assess(assessment(), LocalDate.of(2026, 11, 25));
  }

  @Test
  void aVerdictOfTheFirstFormIsReadAsItWasWritten() {
    Verdict old = VerdictJson.read("verdict", OLD).orElseThrow();
    assertThat(old.identity().form()).isEqualTo(1);
    assertThat(VerdictJson.write(old)).isEqualTo(OLD);
    assertThat(TableSchemas.objections("verdict", OLD)).isEmpty();
    assertThat(old.element()).hasToString("3-02-SHROUD SHROUD PROXIMITY");
    assertThat(old.toString())
        .startsWith("Verdict[3-02-SHROUD SHROUD PROXIMITY as of 2026-11-25: OUT");
  }

  @Test
  void computedAgainTheFirstFormIsNamedWithTheReason() {
    RuleSet rules = ShippedRules.standard().rules();
    Verdict old = VerdictJson.read("verdict", OLD).orElseThrow();
    Recompute again = GearRules.of(rules).recompute(assessment(), old);
    assertThat(again).isInstanceOf(Recompute.RulesDiffer.class);
    assertThat(((Recompute.RulesDiffer) again).mismatches())
        .contains(new Mismatch.OtherForm(1, rules.identity().form()));
    assertThat(again.text()).contains("nobody can tell from it whether the rows are the same");
  }

  @Test
  void aVerdictOfTodayIsReadBackAndIsTheSameComputedAgain() {
    String line = VerdictJson.write(judged());
    Verdict stored = VerdictJson.read("verdict", line).orElseThrow();
    assertThat(stored).isEqualTo(judged());
    assertThat(VerdictJson.write(stored)).isEqualTo(line);
    assertThat(ShippedRules.standard().recompute(assessment(), stored))
        .isEqualTo(new Recompute.Same(judged()));
  }

  /** The stored text was changed by a hand that kept its parts in agreement. */
  @Test
  void aStoredTextThatWasChangedIsAnotherVerdict() {
    String line = VerdictJson.write(judged());
    String seen = judged().reasons().get(0).seen();
    Verdict changed =
        VerdictJson.read("verdict", line.replace(seen, "nothing to speak of")).orElseThrow();
    assertThat(ShippedRules.standard().recompute(assessment(), changed))
        .isInstanceOf(Recompute.OtherVerdict.class);
  }

  @Test
  void theIdentityIsReadBackWhole() {
    Identity rules = ShippedRules.standard().identity();
    assertThat(VerdictJson.read("verdict", VerdictJson.write(judged())).orElseThrow().identity())
        .isEqualTo(rules);
    assertThat(rules.form()).isGreaterThan(1);
  }

  /** What the fields say again must be what follows; each fault is told with its place. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "\"service\":\"OUT\" | \"service\":\"IN\" | /service",
        "\"headline\":\"REPLACE_PART\" | \"headline\":\"SERVICEABLE\" | /headline",
        "\"handling\":[],\"reasons\" | \"handling\":[\"ISOLATE\"],\"reasons\" | /handling",
        "\"checksNotDone\":[] | \"checksNotDone\":[\"a/row\"] | /checksNotDone",
        "\"checksNotDone\":[] | \"checksNotDone\":null | /checksNotDone",
        "\"asOf\":\"2026-11-25\" | \"asOf\":\"2026-11-31\" | /asOf",
        "\"asOf\":\"2026-11-25\" | \"asof\":\"2026-11-25\" | /asof",
        "\"basisText\":\" | \"basisText\":\"PUBLISHED, READ, | /reasons/0/row/basisText",
        "\"revisions\":{ | \"revisions\":{\"x\":\"1\", | /rules/revisions/x",
        "\"fingerprint\":\" | \"form\":1,\"fingerprint\":\" | /rules/form",
        "\"fingerprint\":\" | \"fingerprint\":\"x | /rules/fingerprint",
      })
  void whatDoesNotFollowIsRefused(String from, String to, String pointer) {
    assertThat(OLD).contains(from);
    Checked<Verdict, JsonFault> read =
        VerdictJson.read(
            "stored.jsonl:1",
            OLD.replaceFirst(
                java.util.regex.Pattern.quote(from), java.util.regex.Matcher.quoteReplacement(to)));
    assertThat(read).isInstanceOf(Checked.Refused.class);
    assertThat(((Checked.Refused<Verdict, JsonFault>) read).faults())
        .allSatisfy(fault -> assertThat(fault.source()).isEqualTo("stored.jsonl:1"))
        .extracting(JsonFault::pointer)
        .contains(pointer);
  }

  /** A spoiled line must never pass for fit: reasons that keep it out need their actions. */
  @Test
  void aVerdictWithoutItsActionsIsRefused() {
    String spoiled =
        OLD.replaceFirst("\"actions\":\\[.*?\\],\"handling\"", "\"actions\":[],\"handling\"")
            .replaceFirst("\"service\":\"OUT\"", "\"service\":\"IN\"")
            .replaceFirst("\"headline\":\"REPLACE_PART\"", "\"headline\":\"SERVICEABLE\"")
            .replaceFirst(
                "\"wayBack\":\\{.*?\\},\"ages\"", "\"wayBack\":{\"kind\":\"NOT_NEEDED\"},\"ages\"");
    assertThat(spoiled).contains("\"service\":\"IN\"", "\"actions\":[]", "NOT_NEEDED");
    Checked<Verdict, JsonFault> read = VerdictJson.read("verdict", spoiled);
    assertThat(((Checked.Refused<Verdict, JsonFault>) read).faults())
        .singleElement()
        .satisfies(
            fault ->
                assertThat(fault.toString())
                    .contains("an action for each effect of a reason that keeps it out"));
  }

  @Test
  void allFaultsAreToldAtOnce() {
    String spoiled =
        OLD.replace("\"kind\":\"RULE\"", "\"kind\":\"RULES\"")
            .replace("\"open\":false", "\"open\":0");
    List<JsonFault> faults =
        ((Checked.Refused<Verdict, JsonFault>) VerdictJson.read("verdict", spoiled)).faults();
    assertThat(faults).hasSizeGreaterThan(3);
    assertThat(faults.stream().map(JsonFault::pointer))
        .contains("/reasons/0/kind", "/reasons/0/row/open", "/ages/0/row/open");
  }
}
