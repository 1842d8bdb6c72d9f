package org.ensemblerules.leftout;

import java.util.Random;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.PropertyDefaults;
import net.jqwik.api.Provide;
import net.jqwik.api.ShrinkingMode;
import org.ensemblerules.GearRules;
import org.ensemblerules.example.department.demo.DemoDepartment;
import org.ensemblerules.tables.ShippedRules;
import org.ensemblerules.verdict.Assessment;

/** What is left out of the invented department's records never turns OUT into IN either. */
@PropertyDefaults(edgeCases = EdgeCasesMode.NONE, shrinking = ShrinkingMode.OFF)
class DemoLeftOutProperties {
  private static final GearRules RULES = ShippedRules.standard();
  private static final LeftOutLaw LAW = new LeftOutLaw(RULES.rules(), DemoDepartment.AS_OF);

  /** How many things are left out of each record, one at a time; these records are long. */
  private static final int OF_EACH = 5;

  @Provide
  Arbitrary<Assessment> records() {
    return Arbitraries.of(DemoDepartment.assessments(RULES));
  }

  @Property(tries = 100)
  void whatIsLeftOutIsNeverMilder(@ForAll("records") Assessment given, @ForAll Random random) {
    LAW.holds(given, LAW.verdict(given), OF_EACH, random);
  }

  @Property(tries = 10)
  void aWholeGroundTakesOnlyWhatRestsOnIt(@ForAll("records") Assessment given) {
    LAW.holdsOfWholes(given, LAW.verdict(given));
  }
}
