package org.ensemblerules.testkit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumSet;
import java.util.List;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Tag;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.domains.DomainContext;
import net.jqwik.api.statistics.Statistics;
import org.ensemblerules.defect.Extent;
import org.ensemblerules.gates.FewestTries;
import org.ensemblerules.verdict.ReasonKind;
import org.ensemblerules.verdict.Service;
import org.ensemblerules.verdict.Verdict;

/** The generated cases reach both answers and every reason, so that the laws are tried hard. */
@Domain(Cases.class)
@Domain(DomainContext.Global.class)
class CasesAreHardProperties {
  /** What only overlays cause, or chance seldom reaches; examples hold it. */
  private static final EnumSet<ReasonKind> BY_EXAMPLES_ONLY =
      EnumSet.of(
          ReasonKind.LIMIT_LOOSENED,
          ReasonKind.LIMIT_TIGHTENED,
          ReasonKind.AWAY,
          ReasonKind.BACK_UNSEEN,
          ReasonKind.FOLLOW_UP_MISSING,
          ReasonKind.INSPECTOR_DECIDED,
          ReasonKind.INSPECTION_NOT_ITEMIZED);

  // The rarest reason comes 24 times in 10,000; that it never comes is rarer than 1 in 10 million.
  @Property(tries = 7000, edgeCases = EdgeCasesMode.NONE)
  @FewestTries(7000)
  @Tag("slow")
  void bothAnswersAndEveryReasonOccur(@ForAll GearCase given) {
    Verdict verdict = given.verdict();
    Statistics.label("service").collect(verdict.service());
    Statistics.label("service")
        .coverage(
            shares -> {
              shares.check(Service.IN).percentage(share -> share > 15);
              shares.check(Service.OUT).percentage(share -> share > 40);
            });
    for (ReasonKind kind : EnumSet.complementOf(BY_EXAMPLES_ONLY)) {
      Statistics.label(kind.name())
          .collect(verdict.reasons().stream().anyMatch(reason -> reason.kind() == kind));
      Statistics.label(kind.name())
          .coverage(shares -> shares.check(true).count(count -> count >= 1));
    }
  }

  @Property(tries = 3000, edgeCases = EdgeCasesMode.NONE)
  @FewestTries(3000)
  @Tag("slow")
  void hardInputsOccur(@ForAll GearCase given) {
    boolean unmeasured =
        given.findings().stream().anyMatch(found -> found.extent() instanceof Extent.NotMeasured);
    boolean layerUnknown =
        given.findings().stream().anyMatch(found -> found.site().layer().isEmpty());
    boolean undated =
        given.events().stream().anyMatch(event -> event.when().date().earliest().isEmpty());
    boolean settled = !given.findings().isEmpty() && given.verdict().service() == Service.IN;
    Statistics.label("unmeasured").collect(unmeasured);
    Statistics.label("layer unknown").collect(layerUnknown);
    Statistics.label("undated").collect(undated);
    Statistics.label("finding, yet in").collect(settled);
    for (String label : List.of("unmeasured", "layer unknown", "undated", "finding, yet in")) {
      Statistics.label(label)
          .coverage(shares -> shares.check(true).percentage(share -> share >= 2));
    }
  }

  @Example
  void theUnchangedCaseIsFit() {
    for (var kind : FrozenRules.KINDS) {
      assertThat(FitGear.fit(kind).verdict().reasons()).isEmpty();
    }
  }
}
