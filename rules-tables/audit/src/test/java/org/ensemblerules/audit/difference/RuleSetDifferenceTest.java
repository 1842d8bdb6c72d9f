package org.ensemblerules.audit.difference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.ensemblerules.GearRules;
import org.ensemblerules.defect.Band;
import org.ensemblerules.defect.DefectKind;
import org.ensemblerules.defect.DefectRow;
import org.ensemblerules.effect.CleaningKind;
import org.ensemblerules.effect.Effect;
import org.ensemblerules.effect.EntityKind;
import org.ensemblerules.effect.PermissionRow;
import org.ensemblerules.effect.Task;
import org.ensemblerules.gear.AnatomyRow;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.GearModel;
import org.ensemblerules.gear.Presence;
import org.ensemblerules.gear.Site;
import org.ensemblerules.gear.Use;
import org.ensemblerules.retirement.AgeLimit;
import org.ensemblerules.retirement.AgeLimitRow;
import org.ensemblerules.ruleset.Overlay;
import org.ensemblerules.ruleset.RuleSet;
import org.ensemblerules.schedule.Discharge;
import org.ensemblerules.schedule.Start;
import org.ensemblerules.schedule.TaskKey;
import org.ensemblerules.schedule.TaskRow;
import org.ensemblerules.schedule.Timing;
import org.ensemblerules.schedule.Trigger;
import org.ensemblerules.source.Comparison;
import org.ensemblerules.source.InvalidValueException;
import org.ensemblerules.source.Row;
import org.ensemblerules.strength.UsedGearRow;
import org.ensemblerules.testkit.FitGear;
import org.ensemblerules.testkit.FrozenProvenance;
import org.ensemblerules.testkit.FrozenRules;
import org.ensemblerules.testkit.Layering;
import org.ensemblerules.testkit.OtherRules;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** What differs is told by what rows speak of, and which way it is stricter. */
class RuleSetDifferenceTest {
  private static final RuleSet FROZEN = FrozenRules.rules();

  private static Map<String, Map<ChangeKind, Integer>> counts(RuleSet other) {
    return RuleSetDifference.between(GearRules.of(FROZEN), GearRules.of(other)).counts();
  }

  /** A new kind of row fails here until it is said how it is compared. */
  @Test
  @Tag("slow")
  void everyKindOfRowIsRead() {
    Set<String> kinds =
        new ClassFileImporter()
            .importPackages("org.ensemblerules").stream()
                .filter(type -> type.isAssignableTo(Row.class) && !type.isInterface())
                .map(JavaClass::getName)
                .collect(Collectors.toSet());
    assertThat(kinds).hasSizeGreaterThan(20);
    assertThat(ComparedTable.ALL.stream().map(table -> table.type().getName()))
        .containsExactlyInAnyOrderElementsOf(kinds);
    assertThat(ComparedTable.ALL.stream().map(ComparedTable::name)).doesNotHaveDuplicates();
  }

  @Test
  void aShorterIntervalIsTightenedAndALongerOneLoosened() {
    assertThat(counts(OtherRules.intervals(row -> OtherRules.interval(row, 6, 6))))
        .isEqualTo(Map.of("intervals", Map.of(ChangeKind.TIGHTENED, 4)));
    assertThat(counts(OtherRules.intervals(row -> OtherRules.interval(row, 60, 60))))
        .isEqualTo(Map.of("intervals", Map.of(ChangeKind.LOOSENED, 4)));
    // Sooner at first and later after that: neither is the stricter.
    assertThat(counts(OtherRules.intervals(row -> OtherRules.interval(row, 6, 60))))
        .isEqualTo(Map.of("intervals", Map.of(ChangeKind.CHANGED, 4)));
  }

  @Test
  void fewerYearsAreTightenedAndALimitNotSeenIsMerelyChanged() {
    Map<ChangeKind, Integer> shorter =
        counts(
                OtherRules.ages(
                    row ->
                        row.element() == ElementKind.COAT
                            ? row
                            : OtherRules.age(row, new AgeLimit.Years(4))))
            .get("age-limits");
    assertThat(shorter).isEqualTo(Map.of(ChangeKind.TIGHTENED, 2));
    assertThat(
            counts(
                OtherRules.ages(
                    row ->
                        row.element() == ElementKind.HELMET
                            ? OtherRules.age(row, new AgeLimit.NoneSet())
                            : row)))
        .isEqualTo(Map.of("age-limits", Map.of(ChangeKind.LOOSENED, 1)));
    assertThat(
            counts(
                OtherRules.ages(
                    row ->
                        row.element() == ElementKind.HELMET
                            ? OtherRules.age(row, new AgeLimit.NotSeen())
                            : row)))
        .isEqualTo(Map.of("age-limits", Map.of(ChangeKind.CHANGED, 1)));
  }

  @Test
  void otherWordsOrAnotherBasisAreReworded() {
    int rows = FROZEN.tables().defects().rows().size();
    assertThat(counts(OtherRules.withDefects(row -> OtherRules.worded(row, "Other words."))))
        .isEqualTo(Map.of("defects", Map.of(ChangeKind.REWORDED, rows)));
    RuleSetDifference basis =
        RuleSetDifference.between(
            GearRules.of(FROZEN),
            GearRules.of(
                OtherRules.ages(
                    row ->
                        new AgeLimitRow(
                            OtherRules.commonPractice(row.provenance()),
                            row.element(),
                            row.use(),
                            row.layer(),
                            row.limit()))));
    assertThat(basis.changes())
        .isNotEmpty()
        .allMatch(change -> change.kind() == ChangeKind.REWORDED)
        .allMatch(change -> change.strictness() == Comparison.SAME);
  }

  @Test
  void aGraverEffectIsTightened() {
    DefectRow retires = row(DefectKind.CHARRING);
    RuleSetDifference difference =
        RuleSetDifference.between(
            GearRules.of(FROZEN),
            GearRules.of(
                OtherRules.withDefects(
                    row ->
                        row.effect() instanceof Effect.Note
                            ? OtherRules.effect(row, retires)
                            : row)));
    assertThat(difference.changes())
        .isNotEmpty()
        .allMatch(change -> change.kind() == ChangeKind.TIGHTENED)
        .allMatch(change -> change.strictness() == Comparison.STRICTER);
    assertThat(difference.changes(ChangeKind.LOOSENED)).isEmpty();
    assertThat(difference.changes().get(0).text()).startsWith("TIGHTENED defects: ");
    assertThat(difference.before()).isEqualTo(FROZEN.identity());
    assertThat(difference.after()).isNotEqualTo(FROZEN.identity());
  }

  private static DefectRow row(DefectKind defect) {
    return FROZEN.tables().defects().rows().stream()
        .filter(row -> row.defect() == defect)
        .findFirst()
        .orElseThrow();
  }

  /** The extents of a defect are apart: what is covered by another row now is told as such. */
  @Test
  void aRowForAnotherExtentIsChangedIfItsKeyStayed() {
    DefectRow charring = row(DefectKind.CHARRING);
    Band other =
        FROZEN.tables().defects().rows().stream()
            .map(DefectRow::band)
            .filter(band -> !band.equals(charring.band()))
            .findFirst()
            .orElseThrow();
    DefectRow moved =
        new DefectRow(
            charring.provenance(),
            charring.element(),
            charring.use(),
            charring.site(),
            charring.defect(),
            other,
            charring.effect(),
            charring.handling(),
            charring.afterward(),
            false,
            charring.wording());
    assertThat(matched(charring, moved))
        .singleElement()
        .satisfies(
            change -> {
              assertThat(change.kind()).isEqualTo(ChangeKind.CHANGED);
              assertThat(change.topic())
                  .containsExactly("COAT", "STRUCTURAL", "FABRIC@OUTER_SHELL", "CHARRING");
            });
    DefectRow renamed =
        new DefectRow(
            FrozenProvenance.of("renamed"),
            moved.element(),
            moved.use(),
            moved.site(),
            moved.defect(),
            moved.band(),
            moved.effect(),
            moved.handling(),
            moved.afterward(),
            false,
            moved.wording());
    assertThat(matched(charring, renamed))
        .extracting(RowChange::kind)
        .containsExactlyInAnyOrder(ChangeKind.REMOVED, ChangeKind.ADDED);
    // Of one extent, rows of different keys are one rule; here on another basis.
    assertThat(matched(moved, renamed))
        .extracting(RowChange::kind)
        .containsExactly(ChangeKind.REWORDED);
  }

  private static List<RowChange> matched(Row before, Row after) {
    return Matching.of(ComparedTable.of(before), List.of(before), List.of(after));
  }

  @Test
  void oneMoreDoerIsAddedAndMilder() {
    List<PermissionRow> rows = new ArrayList<>(FROZEN.tables().permissions().rows());
    PermissionRow more = notYet(rows);
    rows.add(more);
    RuleSetDifference there =
        RuleSetDifference.between(GearRules.of(FROZEN), GearRules.of(OtherRules.permissions(rows)));
    assertThat(there.changes())
        .containsExactly(
            new RowChange(
                ChangeKind.ADDED,
                "permissions",
                List.of(more.task().name(), more.entity().name()),
                Optional.empty(),
                Optional.of(more),
                Comparison.MILDER));
    assertThat(
            RuleSetDifference.between(
                    GearRules.of(OtherRules.permissions(rows)), GearRules.of(FROZEN))
                .changes())
        .containsExactly(there.changes().get(0).reversed());
  }

  private static PermissionRow notYet(List<PermissionRow> rows) {
    for (Task task : Task.values()) {
      for (EntityKind entity : EntityKind.values()) {
        if (rows.stream().noneMatch(row -> row.task() == task && row.entity() == entity)) {
          return new PermissionRow(FrozenProvenance.of("more"), task, entity, Optional.empty());
        }
      }
    }
    throw new AssertionError("everybody may do everything");
  }

  /** A further duty after each fire is no change of the one in intervals. */
  @Test
  void whatIsDueInIntervalsIsNotWhatFollowsATrigger() {
    TaskRow yearly = task("a", new Timing.Every(Start.ISSUE, 12, 1, 12));
    TaskRow twice = task("b", new Timing.Every(Start.ISSUE, 12, 2, 12));
    TaskRow after = task("a", new Timing.After(Trigger.values()[0], Optional.empty()));
    List<RowChange> changes =
        Matching.of(ComparedTable.of(yearly), List.of(yearly), List.of(after, twice));
    assertThat(changes)
        .extracting(RowChange::kind, change -> change.after().orElseThrow())
        .containsExactlyInAnyOrder(
            tuple(ChangeKind.TIGHTENED, twice), tuple(ChangeKind.ADDED, after));
  }

  private static TaskRow task(String key, Timing timing) {
    return new TaskRow(
        FrozenProvenance.of(key),
        new TaskKey("cleaning"),
        ElementKind.COAT,
        Use.STRUCTURAL,
        new Discharge.Cleaned(CleaningKind.ADVANCED),
        timing,
        false);
  }

  @Test
  void aChangeHasTheRowsThatItsKindHas() {
    Row row = row(DefectKind.CHARRING);
    assertThatThrownBy(
            () ->
                new RowChange(
                    ChangeKind.ADDED,
                    "defects",
                    List.of(),
                    Optional.of(row),
                    Optional.of(row),
                    Comparison.UNDECIDED))
        .isInstanceOf(InvalidValueException.class)
        .hasMessageContaining("RowChange.kind");
  }

  /** Which of the two lets more pass depends on the gear: neither is called the stricter. */
  @Test
  void aShareOfTheNewValueAndTheNewRequirementDoNotCompare() {
    UsedGearRow share =
        new UsedGearRow(FrozenProvenance.of("share"), Optional.of(new BigDecimal(90)));
    UsedGearRow asNew = new UsedGearRow(FrozenProvenance.of("as-new"), Optional.empty());
    assertThat(RuleSetDifference.changes(List.of(share), List.of(asNew)))
        .extracting(RowChange::kind, RowChange::strictness)
        .containsExactly(tuple(ChangeKind.CHANGED, Comparison.UNDECIDED));
  }

  @Test
  void anAnatomyRowSpeaksOfItsPlace() {
    assertThat(
            new AnatomyRow(
                    FrozenProvenance.of("a"),
                    ElementKind.HELMET,
                    Use.STRUCTURAL,
                    Site.parse("HELMET_SHELL"),
                    Presence.REQUIRED)
                .topic())
        .containsExactly("HELMET", "STRUCTURAL", "HELMET_SHELL");
  }

  /** Instructions for one model are rows like any other. */
  @Test
  void aMakersOtherLimitIsAddedTightenedOrLoosened() {
    RuleSet base = FrozenRules.rules();
    RuleSet fifty = madeFor("50");
    RuleSet warmer = madeFor("55");
    assertThat(
            RuleSetDifference.between(GearRules.of(base), GearRules.of(fifty))
                .changes(ChangeKind.ADDED))
        .hasSize(1);
    assertThat(
            RuleSetDifference.between(GearRules.of(fifty), GearRules.of(warmer))
                .changes(ChangeKind.LOOSENED))
        .hasSize(1);
    assertThat(
            RuleSetDifference.between(GearRules.of(warmer), GearRules.of(fifty))
                .changes(ChangeKind.TIGHTENED))
        .hasSize(1);
  }

  private static RuleSet madeFor(String celsius) {
    Layering maker = Layering.of("MAKER");
    GearModel model = new GearModel(FitGear.MAKER_NAME, "Model A");
    Overlay instructions =
        maker.instructions(Layering.inPlace(model, maker.water(ElementKind.COAT, celsius)));
    return FrozenRules.rules().with(List.of(instructions), FitGear.AS_OF).orElseThrow();
  }
}
