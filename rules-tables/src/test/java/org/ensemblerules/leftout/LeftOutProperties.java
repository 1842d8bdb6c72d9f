package org.ensemblerules.leftout;

import java.util.Random;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.PropertyDefaults;
import net.jqwik.api.Provide;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.statistics.Statistics;
import org.ensemblerules.gates.FewestTries;
import org.ensemblerules.ruleset.RuleSet;
import org.ensemblerules.tables.ShippedRules;
import org.ensemblerules.testkit.ArbitrariesOfRecords;
import org.ensemblerules.verdict.Assessment;
import org.ensemblerules.verdict.Verdict;

/**
 * What is left out of a record never turns OUT into IN, under the shipped rules: 20,000 times one
 * thing is left out, 20 of each of 1,000 records. A longer search multiplies the records.
 */
@PropertyDefaults(edgeCases = EdgeCasesMode.NONE, shrinking = ShrinkingMode.OFF)
class LeftOutProperties {
  private static final RuleSet RULES = ShippedRules.standard().rules();
  private static final LeftOutLaw LAW = new LeftOutLaw(RULES, ArbitrariesOfRecords.AS_OF);

  /** How many things are left out of each record, one at a time. */
  private static final int OF_EACH = 20;

  @Provide
  Arbitrary<Assessment> records() {
    return ArbitrariesOfRecords.records(RULES);
  }

  @Provide
  Arbitrary<Assessment> things() {
    return ArbitrariesOfRecords.things(RULES);
  }

  @Provide
  Arbitrary<Assessment> findings() {
    return ArbitrariesOfRecords.findings(RULES);
  }

  @FewestTries(50)
  @Property(tries = 1000)
  void whatIsLeftOutIsNeverMilder(@ForAll("records") Assessment given, @ForAll Random random) {
    Verdict before = LAW.verdict(given);
    Statistics.label("before").collect(before.service());
    LAW.holds(given, before, OF_EACH, random);
  }

  /** Each event and each finding of a record, as most things drawn at random are fields. */
  @FewestTries(50)
  @Property(tries = 200)
  void aWholeGroundTakesOnlyWhatRestsOnIt(@ForAll("records") Assessment given) {
    Statistics.label("grounds")
        .collect(LAW.holdsOfWholes(given, LAW.verdict(given)) > 0)
        .coverage(coverage -> coverage.check(true).percentage(share -> share > 20));
  }

  /** Everything of one finding and of what was done about it, as most of a record is other care. */
  @FewestTries(100)
  @Property(tries = 500)
  void whatIsLeftOutOfAFindingIsNeverMilder(@ForAll("findings") Assessment given) {
    Verdict before = LAW.verdict(given);
    Statistics.label("before").collect(before.service());
    LAW.holdsOfFindings(given, before);
  }

  /** Everything of a record to which one thing happened. */
  @FewestTries(10)
  @Property(tries = 30)
  void whatIsLeftOutBesideOneThingIsNeverMilder(@ForAll("things") Assessment given) {
    LAW.holdsOfAll(given, LAW.verdict(given));
  }
}
