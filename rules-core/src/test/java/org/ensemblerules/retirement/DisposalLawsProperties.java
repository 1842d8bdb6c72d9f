package org.ensemblerules.retirement;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.Set;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.ensemblerules.gear.YesNoUnknown;

/** What holds of every retired element. */
class DisposalLawsProperties {
  @Provide
  Arbitrary<Set<RetirementCause>> causes() {
    return Arbitraries.of(
            DisposalTableTest.OLD,
            DisposalTableTest.TORN,
            DisposalTableTest.SOILED,
            new RetirementCause.OriginNotShown())
        .set()
        .ofMinSize(1);
  }

  @Provide
  Arbitrary<RetiredGear> retired() {
    Arbitrary<YesNoUnknown> known = Arbitraries.of(YesNoUnknown.class);
    return Combinators.combine(causes(), known, known, known, known).as(DisposalTableTest::gear);
  }

  @Property
  void anotherCauseOrAnUnknownOpensNoRouteThatEndsIt(
      @ForAll("retired") RetiredGear gear, @ForAll("causes") Set<RetirementCause> more) {
    Set<RetirementCause> causes = new HashSet<>(gear.causes());
    causes.addAll(more);
    RetiredGear with =
        DisposalTableTest.gear(
            causes,
            gear.underCustody(),
            gear.markedForTraining(),
            gear.damaged(),
            gear.contaminated());
    assertThat(DisposalTableTest.open(gear)).containsAll(DisposalTableTest.open(with));
    RetiredGear unknown =
        DisposalTableTest.gear(
            gear.causes(),
            YesNoUnknown.UNKNOWN,
            YesNoUnknown.UNKNOWN,
            YesNoUnknown.UNKNOWN,
            YesNoUnknown.UNKNOWN);
    assertThat(DisposalTableTest.open(unknown)).isSubsetOf(DisposalRoute.CUSTODY);
  }
}
