package org.ensemblerules.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.ensemblerules.effect.Check;
import org.ensemblerules.effect.Effect;
import org.ensemblerules.effect.RepairClass;
import org.ensemblerules.effect.Scope;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.Use;
import org.ensemblerules.inspection.InspectionKind;
import org.ensemblerules.inspection.IntervalRow;
import org.ensemblerules.retirement.AgeLimit;
import org.ensemblerules.retirement.AgeLimitRow;
import org.ensemblerules.source.Basis;
import org.ensemblerules.source.Confidence;
import org.ensemblerules.source.Edition;
import org.ensemblerules.source.InvalidValueException;
import org.ensemblerules.source.Provenance;
import org.ensemblerules.source.Row;
import org.ensemblerules.source.RowKey;
import org.ensemblerules.testkit.FrozenProvenance;
import org.ensemblerules.testkit.FrozenRules;
import org.junit.jupiter.api.Test;

class RuleSetDifferenceTest {
  private static final List<Row> ROWS = FrozenRules.tables().rows();

  private static IntervalRow interval(String key, int months) {
    return new IntervalRow(
        FrozenProvenance.of(key),
        InspectionKind.ADVANCED,
        ElementKind.COAT,
        Use.STRUCTURAL,
        months,
        months,
        months);
  }

  private static AgeLimitRow age(AgeLimit limit) {
    return new AgeLimitRow(
        FrozenProvenance.of("age"), ElementKind.COAT, Use.STRUCTURAL, Optional.empty(), limit);
  }

  private static ChangeKind only(Row before, Row after) {
    List<RowChange> changes = RuleSetDifference.between(List.of(before), List.of(after)).changes();
    assertThat(changes).hasSize(1);
    return changes.get(0).kind();
  }

  @Test
  void aSetDiffersInNothingFromItself() {
    assertThat(RuleSetDifference.between(FrozenRules.rules(), FrozenRules.rules()).changes())
        .isEmpty();
    List<Row> reversed = new ArrayList<>(ROWS);
    Collections.reverse(reversed);
    assertThat(RuleSetDifference.between(ROWS, reversed).changes()).isEmpty();
  }

  @Test
  void againstNothingEveryRowIsAddedOrRemoved() {
    assertThat(RuleSetDifference.between(List.of(), ROWS).of(ChangeKind.ADDED)).hasSameSizeAs(ROWS);
    assertThat(RuleSetDifference.between(ROWS, List.of()).of(ChangeKind.REMOVED))
        .hasSameSizeAs(ROWS);
  }

  @Test
  void monthsAreTightenedAndLoosened() {
    assertThat(only(interval("a", 12), interval("b", 6))).isEqualTo(ChangeKind.TIGHTENED);
    assertThat(only(interval("a", 6), interval("b", 12))).isEqualTo(ChangeKind.LOOSENED);
    IntervalRow mixed =
        new IntervalRow(
            FrozenProvenance.of("m"),
            InspectionKind.ADVANCED,
            ElementKind.COAT,
            Use.STRUCTURAL,
            24,
            24,
            6);
    assertThat(only(interval("a", 12), mixed)).isEqualTo(ChangeKind.CHANGED);
  }

  @Test
  void anUnseenLimitOfAgeIsTheStrictest() {
    AgeLimitRow ten = age(new AgeLimit.Years(10));
    assertThat(only(ten, age(new AgeLimit.Years(5)))).isEqualTo(ChangeKind.TIGHTENED);
    assertThat(only(ten, age(new AgeLimit.NotSeen()))).isEqualTo(ChangeKind.TIGHTENED);
    assertThat(only(ten, age(new AgeLimit.NoneSet()))).isEqualTo(ChangeKind.LOOSENED);
  }

  @Test
  void anotherBasisIsAnotherWord() {
    AgeLimitRow row = age(new AgeLimit.Years(10));
    Provenance here = row.provenance();
    AgeLimitRow carried =
        new AgeLimitRow(
            new Provenance(
                new RowKey("other"),
                here.origin(),
                new Basis.Memory(Confidence.LOW, Optional.empty()),
                here.reviewedThrough(),
                here.note()),
            row.element(),
            row.use(),
            row.layer(),
            row.limit());
    assertThat(only(row, carried)).isEqualTo(ChangeKind.REWORDED);
  }

  @Test
  void aChangeHasTheRowsThatItsKindHas() {
    assertThatThrownBy(
            () -> new RowChange(ChangeKind.ADDED, Optional.of(ROWS.get(0)), Optional.empty()))
        .isInstanceOf(InvalidValueException.class);
    assertThatThrownBy(
            () ->
                new RowChange(
                    ChangeKind.REMOVED, Optional.of(ROWS.get(0)), Optional.of(ROWS.get(0))))
        .isInstanceOf(InvalidValueException.class);
  }

  /** A new kind of row must say what it speaks of. */
  @Test
  void everyKindOfRowHasAMeaning() {
    Set<Class<?>> kinds =
        new ClassFileImporter()
                .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
                .importPackages("org.ensemblerules")
                .stream()
                .filter(type -> type.isAssignableTo(Row.class) && !type.isInterface())
                .map(type -> (Class<?>) type.reflect())
                .filter(type -> type != Edition.class)
                .collect(Collectors.toSet());
    assertThat(Set.<Class<?>>copyOf(Meaning.kinds())).containsExactlyInAnyOrderElementsOf(kinds);
    assertThat(kinds).hasSizeGreaterThan(20);
  }

  @Test
  void effectsAreOnlyPartlyInOrder() {
    Effect basic = new Effect.Repair(RepairClass.BASIC, Scope.PART);
    Effect advanced = new Effect.Repair(RepairClass.ADVANCED, Scope.PART);
    Effect look = new Effect.Evaluate(Check.EXPERT_EVALUATION, Scope.ELEMENT);
    Effect retire = new Effect.Retire(Scope.ELEMENT);
    Effect layer = new Effect.Retire(Scope.LAYER);
    assertThat(advanced.isAtLeastAsStrictAs(basic)).isTrue();
    assertThat(basic.isAtLeastAsStrictAs(advanced)).isFalse();
    assertThat(look.isAtLeastAsStrictAs(basic)).isFalse();
    assertThat(basic.isAtLeastAsStrictAs(look)).isFalse();
    assertThat(basic.isAtLeastAsStrictAs(new Effect.Note())).isTrue();
    assertThat(new Effect.Note().isAtLeastAsStrictAs(basic)).isFalse();
    assertThat(List.of(basic, advanced, look, layer)).allMatch(retire::isAtLeastAsStrictAs);
    assertThat(layer.isAtLeastAsStrictAs(look)).isFalse();
    assertThat(layer.isAtLeastAsStrictAs(advanced)).isTrue();
    assertThat(new Effect.ReplacePart(RepairClass.BASIC).isAtLeastAsStrictAs(basic)).isTrue();
    assertThat(List.of(basic, advanced, look, layer, retire))
        .allMatch(effect -> effect.isAtLeastAsStrictAs(effect));
  }
}
