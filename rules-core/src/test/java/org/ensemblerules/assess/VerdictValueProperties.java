package org.ensemblerules.assess;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.PropertyDefaults;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.domains.DomainContext;
import org.ensemblerules.gear.Element;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.Label;
import org.ensemblerules.history.Event;
import org.ensemblerules.history.History;
import org.ensemblerules.inspection.Inspection;
import org.ensemblerules.ruleset.RuleSet;
import org.ensemblerules.ruleset.Tables;
import org.ensemblerules.testkit.Cases;
import org.ensemblerules.testkit.FitGear;
import org.ensemblerules.testkit.FrozenRules;
import org.ensemblerules.testkit.GearCase;
import org.ensemblerules.testkit.VerdictContent;
import org.ensemblerules.verdict.Assessment;
import org.ensemblerules.verdict.Verdict;
import org.ensemblerules.verdict.VerdictPart;

/** A verdict is a value: it equals whatever says the same, and keeps nothing of the case. */
@Domain(Cases.class)
@Domain(DomainContext.Global.class)
@PropertyDefaults(tries = 200, edgeCases = EdgeCasesMode.NONE)
class VerdictValueProperties {
  private static final List<Class<?>> OF_THE_CASE =
      List.of(
          CaseFile.class,
          Assessment.class,
          Element.class,
          Label.class,
          History.class,
          Event.class,
          Inspection.class,
          RuleSet.class,
          Tables.class);

  @Property
  void whatIsJudgedTwiceIsEqual(@ForAll GearCase given) {
    Verdict one = given.verdict();
    Verdict other = given.verdict();
    assertThat(other).isNotSameAs(one).isEqualTo(one).hasSameHashCodeAs(one);
    assertThat(other).hasToString(one.toString());
  }

  @Property
  void equalIsWhatSaysTheSame(@ForAll GearCase given, @ForAll GearCase than) {
    Verdict one = given.verdict();
    Verdict other = than.with(given.element()).on(given.asOf()).verdict();
    boolean same = VerdictContent.of(one).equals(VerdictContent.of(other));
    assertThat(one.equals(other)).isEqualTo(same);
    assertThat(one.toString().equals(other.toString())).isEqualTo(same);
    assertThat(VerdictPart.differing(one, other).isEmpty()).isEqualTo(same);
  }

  @Property
  void nothingOfTheCaseIsKept(@ForAll GearCase given) {
    assertThat(ofTheCase(Reachable.from(given.verdict()))).isEmpty();
  }

  /** The law can fail: the same walk finds all of them from the case itself. */
  @Example
  void theWalkFindsWhatIsKept() {
    GearCase given = FitGear.fit(ElementKind.COAT);
    CaseFile file = new CaseFile(FrozenRules.rules(), given.assessment(), given.asOf());
    assertThat(ofTheCase(Reachable.from(file))).containsExactlyElementsOf(OF_THE_CASE);
  }

  private static List<Class<?>> ofTheCase(Set<Class<?>> reached) {
    return OF_THE_CASE.stream()
        .filter(type -> reached.stream().anyMatch(type::isAssignableFrom))
        .toList();
  }
}
