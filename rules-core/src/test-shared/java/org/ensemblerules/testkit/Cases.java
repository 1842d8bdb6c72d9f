package org.ensemblerules.testkit;

import net.jqwik.api.Arbitrary;
import net.jqwik.api.Provide;
import net.jqwik.api.domains.DomainContextBase;

/** Lets a property ask for cases by their type. */
public final class Cases extends DomainContextBase {
  /**
   * Returns the cases.
   *
   * @return cases of which some are in service and more are not
   */
  @Provide
  public Arbitrary<GearCase> cases() {
    return ArbitrariesOfCases.cases();
  }
}
