package org.ensemblerules.example.department;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.ensemblerules.example.department.demo.DemoDepartment;
import org.ensemblerules.example.department.demo.DemoElement;
import org.ensemblerules.example.department.report.DepartmentReport;
import org.ensemblerules.example.department.report.Judged;
import org.ensemblerules.ruleset.RuleSet;
import org.ensemblerules.tables.ShippedRules;
import org.ensemblerules.verdict.Assess;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What a person reads is short: no screen is longer or wider than it must be. */
class ScreensTest {
  private static final RuleSet RULES = ShippedRules.standard();

  /** An address is not cut, or nobody could follow it. */
  private static boolean fits(String line) {
    return line.length() <= 120 || !line.strip().contains(" ");
  }

  /** Most on half a screen; nothing is longer than a tall one. */
  @Test
  void aPieceIsToldOnAScreen() {
    int some = 0;
    List<DemoElement> all = DemoDepartment.elements(RULES);
    for (DemoElement one : all) {
      Judged judged =
          new Judged(
              Optional.of(one.story()),
              Assess.assess(RULES, one.assessment(), DemoDepartment.AS_OF));
      String text = DepartmentReport.screen(judged, RULES.tables().cautions());
      String id = one.assessment().element().id().value();
      assertThat(text.lines()).as(id).hasSizeLessThanOrEqualTo(50).allMatch(ScreensTest::fits);
      assertThat(text.split(" trained for ", -1)).as(id).hasSizeLessThanOrEqualTo(12);
      assertThat(DepartmentReport.of(judged, ShippedRules.sources()).lines())
          .as(id)
          .hasSizeLessThanOrEqualTo(75)
          .allMatch(ScreensTest::fits);
      some += text.lines().count() <= 25 ? 1 : 0;
    }
    assertThat(some).isGreaterThan(all.size() * 3 / 4);
  }

  /** What several answers share is said once, below all of them. */
  @ParameterizedTest
  @ValueSource(strings = {"judge", "care", "repair"})
  void noSentenceIsSaidTwice(String command) {
    String text = ProgramRun.of(command).out();
    assertThat(text.lines()).allMatch(ScreensTest::fits);
    // What is numbered or has a label is part of an answer, and not a sentence.
    List<String> sentences =
        Arrays.stream(text.replaceAll("\\n {4,}", " ").split("\\n|(?<=\\.) ", -1))
            .map(String::strip)
            .filter(sentence -> sentence.matches("[A-Z(].*\\."))
            .toList();
    assertThat(sentences).hasSizeGreaterThan(5).doesNotHaveDuplicates();
    assertThat(text.split("verified independent service provider trained for cleaning", -1))
        .hasSizeLessThanOrEqualTo(3);
  }

  @Test
  void whatIsDueTakesALineAnElement() {
    String text = ProgramRun.of("due").out();
    assertThat(text.lines()).hasSizeLessThanOrEqualTo(110).allMatch(ScreensTest::fits);
  }
}
