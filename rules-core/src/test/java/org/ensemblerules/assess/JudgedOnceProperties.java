package org.ensemblerules.assess;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.PropertyDefaults;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.domains.DomainContext;
import org.ensemblerules.history.CountedEvidence;
import org.ensemblerules.history.Event;
import org.ensemblerules.history.Evidence;
import org.ensemblerules.ruleset.RuleSet;
import org.ensemblerules.testkit.Cases;
import org.ensemblerules.testkit.FrozenRules;
import org.ensemblerules.testkit.GearCase;
import org.ensemblerules.verdict.Assessment;
import org.ensemblerules.verdict.Verdict;

/** All questions of one verdict, what is due among them, share one judgment of each event. */
@Domain(Cases.class)
@Domain(DomainContext.Global.class)
@PropertyDefaults(tries = 1000, edgeCases = EdgeCasesMode.NONE)
class JudgedOnceProperties {
  private static final RuleSet RULES = FrozenRules.rules();

  @Property
  void noEventIsJudgedTwiceInOneVerdict(@ForAll GearCase given) {
    List<Event> judged = new ArrayList<>();
    CaseFile file = file(given.assessment(), given.asOf(), judged);
    Verdict verdict = Assess.assess(file);
    Trace.of(file, verdict);
    assertThat(judged).doesNotHaveDuplicates();
    assertThat(verdict.reasons()).isEqualTo(given.verdict().reasons());
  }

  @Property
  void whatIsDueIsTheSameAskedAlone(@ForAll GearCase given) {
    assertThat(given.verdict().due())
        .isEqualTo(
            RULES.schedule().due(given.assessment().serviceRecord(), given.asOf()).stream()
                .map(Conclusion::told)
                .toList());
  }

  @Property
  void eachOpenFindingIsLookedForOnce(@ForAll GearCase given) {
    CaseFile file = file(given.assessment(), given.asOf(), new ArrayList<>());
    file.findings()
        .forEach(
            finding ->
                assertThat(FindingQuestion.open(file, finding))
                    .isSameAs(FindingQuestion.open(file, finding)));
  }

  private static CaseFile file(Assessment assessment, LocalDate asOf, List<Event> judged) {
    Evidence evidence =
        CountedEvidence.of(
            RULES.evidenceTables(),
            assessment.element(),
            assessment.serviceRecord().history(),
            asOf,
            judged::add,
            event -> {});
    return new CaseFile(RULES, assessment, evidence);
  }
}
