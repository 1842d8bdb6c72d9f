package org.ensemblerules.fieldcheck;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.ensemblerules.effect.Check;
import org.ensemblerules.gear.YesNoUnknown;
import org.ensemblerules.measure.Quantity;
import org.ensemblerules.measure.Unit;

class HandCheckProperties {
  private static final ConditionTable TABLE = Rows.conditionTable();

  /** Only such an answer shows that an item is sound. */
  private static boolean counts(CheckAnswer answer) {
    return answer instanceof CheckAnswer.PassCounts;
  }

  @Property
  void takingAStatementAwayNeverMakesAPassCount(
      @ForAll("checks") HandCheck check, @ForAll Condition condition) {
    Map<Condition, ConditionValue> fewer = new LinkedHashMap<>(check.conditions());
    fewer.remove(condition);
    CheckAnswer before = TABLE.judge(check);
    CheckAnswer after = TABLE.judge(new HandCheck(check.check(), check.observed(), fewer));
    if (counts(after)) {
      assertThat(counts(before)).isTrue();
    }
    assertThat(after.deviations().size()).isGreaterThanOrEqualTo(before.deviations().size());
  }

  @Property
  void oneDeviationMoreNeverTurnsAVoidPassIntoOneThatCounts(
      @ForAll("checks") HandCheck check,
      @ForAll("worse") Map.Entry<Condition, ConditionValue> worse) {
    Map<Condition, ConditionValue> changed = new LinkedHashMap<>(check.conditions());
    changed.put(worse.getKey(), worse.getValue());
    CheckAnswer before = TABLE.judge(check);
    CheckAnswer after = TABLE.judge(new HandCheck(check.check(), check.observed(), changed));
    if (!counts(before)) {
      assertThat(counts(after)).isFalse();
    }
  }

  @Property
  void theOrderOfConditionsDoesNotMatter(@ForAll("checks") HandCheck check, @ForAll Random random) {
    List<Map.Entry<Condition, ConditionValue>> entries =
        new ArrayList<>(check.conditions().entrySet());
    Collections.shuffle(entries, random);
    Map<Condition, ConditionValue> shuffled = new LinkedHashMap<>();
    entries.forEach(entry -> shuffled.put(entry.getKey(), entry.getValue()));
    HandCheck same = new HandCheck(check.check(), check.observed(), shuffled);
    assertThat(same).isEqualTo(check);
    assertThat(TABLE.judge(same)).isEqualTo(TABLE.judge(check));
  }

  @Property
  void aFailureIsNeverAPassAndIsDoubtfulOnlyIfTheDeviationCouldFailASoundItem(
      @ForAll("checks") HandCheck check) {
    CheckAnswer answer =
        TABLE.judge(new HandCheck(check.check(), Observed.FAILED, check.conditions()));
    boolean couldFailSound =
        answer.deviations().stream().anyMatch(deviation -> deviation.row().couldFailSound());
    assertThat(answer)
        .isInstanceOf(
            couldFailSound ? CheckAnswer.FailureDoubtful.class : CheckAnswer.FailureStands.class);
  }

  @Property
  void addingARowNeverMakesAPassCount(@ForAll("checks") HandCheck check) {
    List<ConditionRow> rows = new ArrayList<>(TABLE.rows());
    rows.add(Rows.yes("more", check.check(), Condition.MANUFACTURER_METHOD, false));
    ConditionTable more = ConditionTable.of(rows, Rows.strongerTable()).orElseThrow();
    if (counts(more.judge(check))) {
      assertThat(counts(TABLE.judge(check))).isTrue();
    }
  }

  @Provide
  Arbitrary<HandCheck> checks() {
    Arbitrary<HandCheck> sound =
        Arbitraries.of(Made.trimCheck(), Made.leakCheck(), Made.pressureCheck()).map(Made::passed);
    Arbitrary<Map<Condition, ConditionValue>> changes =
        Arbitraries.maps(Arbitraries.of(Condition.class), values()).ofMaxSize(4);
    return Combinators.combine(sound, changes, Arbitraries.of(Observed.class))
        .as(
            (check, change, observed) -> {
              Map<Condition, ConditionValue> all = new LinkedHashMap<>(check.conditions());
              all.putAll(change);
              return new HandCheck(check.check(), observed, all);
            });
  }

  /** Values that keep none of the conditions in the frozen rows. */
  @Provide
  Arbitrary<Map.Entry<Condition, ConditionValue>> worse() {
    return Arbitraries.of(Condition.class)
        .map(
            condition ->
                Map.entry(
                    condition,
                    switch (condition.form()) {
                      case ANSWERED -> new ConditionValue.Answered(YesNoUnknown.NO);
                      case COUNTED -> new ConditionValue.Counted(0);
                      case MEASURED ->
                          new ConditionValue.Measured(Quantity.of("0", base(condition)));
                    }));
  }

  private static Unit base(Condition condition) {
    for (Unit unit : Unit.values()) {
      if (unit.dimension() == condition.dimension().orElseThrow()) {
        return unit;
      }
    }
    throw new AssertionError(condition);
  }

  private static Arbitrary<ConditionValue> values() {
    Arbitrary<ConditionValue> measured =
        Combinators.combine(
                Arbitraries.bigDecimals()
                    .between(BigDecimal.ZERO, new BigDecimal("500"))
                    .ofScale(2),
                Arbitraries.of(Unit.class))
            .as((number, unit) -> new ConditionValue.Measured(new Quantity(number, unit)));
    Arbitrary<ConditionValue> answered =
        Arbitraries.of(YesNoUnknown.class).map(ConditionValue.Answered::new);
    Arbitrary<ConditionValue> counted =
        Arbitraries.integers().between(0, 6).map(ConditionValue.Counted::new);
    return Arbitraries.oneOf(measured, answered, counted);
  }

  @Property
  void noPassCountsWithoutRows(@ForAll Check check) {
    ConditionTable empty = Rows.conditionTable(new ConditionRow[0]);
    assertThat(counts(empty.judge(new HandCheck(check, Observed.PASSED, Map.of())))).isFalse();
  }
}
