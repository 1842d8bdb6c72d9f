package org.ensemblerules.audit.difference;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.common.collect.HashMultiset;
import com.google.common.collect.Multiset;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.ensemblerules.GearRules;
import org.ensemblerules.ruleset.RuleSet;
import org.ensemblerules.source.Row;
import org.ensemblerules.testkit.FrozenRules;
import org.ensemblerules.testkit.OtherRules;

/** What holds of differences whatever the rules are. */
class RuleSetDifferenceProperties {
  @Property(tries = 200)
  void nothingDiffersFromItself(@ForAll Random random) {
    RuleSet rules = OtherRules.any(random);
    assertThat(RuleSetDifference.between(GearRules.of(rules), GearRules.of(rules)).isEmpty())
        .isTrue();
    assertThat(RuleSetDifference.between(GearRules.of(rules), GearRules.of(rules)).counts())
        .isEmpty();
  }

  @Property(tries = 200)
  void theOtherWayRoundIsTheMirrorImage(@ForAll Random random) {
    RuleSet one = OtherRules.any(random);
    RuleSet other = OtherRules.any(random);
    List<RowChange> there =
        RuleSetDifference.between(GearRules.of(one), GearRules.of(other)).changes();
    List<RowChange> back =
        RuleSetDifference.between(GearRules.of(other), GearRules.of(one)).changes();
    assertThat(back.stream().map(RowChange::reversed)).containsExactlyInAnyOrderElementsOf(there);
  }

  /** Each row of either set is in one change, or the other set has one that says the same. */
  @Property(tries = 200)
  void everyRowIsAccountedFor(@ForAll Random random) {
    RuleSet one = OtherRules.any(random);
    RuleSet other = OtherRules.any(random);
    RuleSetDifference difference =
        RuleSetDifference.between(GearRules.of(one), GearRules.of(other));
    Multiset<Row> before = HashMultiset.create(one.tables().rows());
    Multiset<Row> after = HashMultiset.create(other.tables().rows());
    for (RowChange change : difference.changes()) {
      change.before().ifPresent(row -> assertThat(before.remove(row)).isTrue());
      change.after().ifPresent(row -> assertThat(after.remove(row)).isTrue());
    }
    assertThat(said(after)).isEqualTo(said(before));
  }

  private static Multiset<List<String>> said(Multiset<Row> rows) {
    Multiset<List<String>> said = HashMultiset.create();
    rows.forEach(row -> said.add(row.canonical()));
    return said;
  }

  @Property(tries = 100)
  void theOrderOfRowsDoesNotMatter(@ForAll Random random) {
    long seed = random.nextLong();
    RuleSet one = OtherRules.any(new Random(seed));
    RuleSet again = OtherRules.any(new Random(seed));
    RuleSet frozen = FrozenRules.rules();
    assertThat(RuleSetDifference.between(GearRules.of(frozen), GearRules.of(one)).changes())
        .isEqualTo(RuleSetDifference.between(GearRules.of(frozen), GearRules.of(again)).changes());
  }
}
