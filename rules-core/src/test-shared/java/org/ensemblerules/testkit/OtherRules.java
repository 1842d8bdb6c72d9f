package org.ensemblerules.testkit;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.function.Function;
import org.ensemblerules.defect.DefectRow;
import org.ensemblerules.defect.DefectTable;
import org.ensemblerules.effect.PermissionRow;
import org.ensemblerules.effect.PermissionTable;
import org.ensemblerules.inspection.IntervalRow;
import org.ensemblerules.inspection.IntervalTable;
import org.ensemblerules.retirement.AgeLimit;
import org.ensemblerules.retirement.AgeLimitRow;
import org.ensemblerules.retirement.AgeLimitTable;
import org.ensemblerules.ruleset.CautionRow;
import org.ensemblerules.ruleset.CautionTable;
import org.ensemblerules.ruleset.InspectionKinds;
import org.ensemblerules.ruleset.RuleSet;
import org.ensemblerules.ruleset.TableKind;
import org.ensemblerules.ruleset.Tables;
import org.ensemblerules.source.Basis;
import org.ensemblerules.source.Checked;
import org.ensemblerules.source.Provenance;
import org.ensemblerules.source.TableFault;

/** The frozen rules with some rows replaced, taken away or put elsewhere in their table. */
public final class OtherRules {
  private OtherRules() {}

  /** Rules in which chance has changed rows of several tables. */
  public static RuleSet any(Random random) {
    Tables frozen = FrozenRules.tables();
    List<CautionRow> cautions = new ArrayList<>(frozen.cautions().rows());
    cautions.removeIf(row -> random.nextInt(4) == 0);
    return FrozenRules.of(
        Tables.of(
            frozen
                .map()
                .with(
                    InspectionKinds.INTERVALS,
                    IntervalTable.of(
                            changed(frozen.intervals().rows(), row -> any(row, random), random))
                        .orElseThrow())
                .with(
                    InspectionKinds.AGE_LIMITS,
                    AgeLimitTable.of(
                            changed(frozen.ageLimits().rows(), row -> any(row, random), random))
                        .orElseThrow())
                .with(InspectionKinds.DEFECTS, defects(row -> any(row, random)))
                .with(
                    InspectionKinds.CAUTIONS,
                    CautionTable.of(changed(cautions, row -> any(row, random), random))
                        .orElseThrow())));
  }

  private static <R> List<R> changed(List<R> rows, Function<R, R> change, Random random) {
    List<R> changed = new ArrayList<>();
    rows.forEach(row -> changed.add(random.nextInt(3) == 0 ? change.apply(row) : row));
    Collections.shuffle(changed, random);
    return changed;
  }

  private static IntervalRow any(IntervalRow row, Random random) {
    int first = 12 + random.nextInt(24);
    return interval(row, first, 6 + random.nextInt(24));
  }

  private static AgeLimitRow any(AgeLimitRow row, Random random) {
    return switch (random.nextInt(3)) {
      case 0 -> age(row, new AgeLimit.NoneSet());
      case 1 -> age(row, new AgeLimit.NotSeen());
      default -> age(row, new AgeLimit.Years(1 + random.nextInt(12)));
    };
  }

  private static DefectRow any(DefectRow row, Random random) {
    if (row.open() || random.nextInt(6) != 0) {
      return row;
    }
    List<DefectRow> all = FrozenRules.rules().tables().defects().rows();
    DefectRow other = all.get(random.nextInt(all.size()));
    return random.nextBoolean() ? worded(row, "Other words.") : effect(row, other);
  }

  private static CautionRow any(CautionRow row, Random random) {
    return new CautionRow(
        random.nextBoolean() ? commonPractice(row.provenance()) : row.provenance(),
        row.elements(),
        row.uses(),
        row.effects(),
        random.nextBoolean() ? "Other words." : row.text());
  }

  /** The frozen rules with intervals changed. */
  public static RuleSet intervals(Function<IntervalRow, IntervalRow> change) {
    List<IntervalRow> rows = FrozenRules.tables().intervals().rows();
    return with(InspectionKinds.INTERVALS, IntervalTable.of(rows.stream().map(change).toList()));
  }

  /** The frozen rules with age limits changed. */
  public static RuleSet ages(Function<AgeLimitRow, AgeLimitRow> change) {
    List<AgeLimitRow> rows = FrozenRules.tables().ageLimits().rows();
    return with(InspectionKinds.AGE_LIMITS, AgeLimitTable.of(rows.stream().map(change).toList()));
  }

  /** The frozen rules with other permissions. */
  public static RuleSet permissions(List<PermissionRow> rows) {
    return with(InspectionKinds.PERMISSIONS, PermissionTable.of(rows));
  }

  /** The frozen rules with defect rows changed. */
  public static RuleSet withDefects(Function<DefectRow, DefectRow> change) {
    return with(InspectionKinds.DEFECTS, new Checked.Sound<>(defects(change)));
  }

  private static <T> RuleSet with(TableKind<?, T> kind, Checked<T, TableFault> table) {
    return FrozenRules.of(Tables.of(FrozenRules.tables().map().with(kind, table.orElseThrow())));
  }

  private static DefectTable defects(Function<DefectRow, DefectRow> change) {
    Tables frozen = FrozenRules.tables();
    return DefectTable.of(frozen.defects().rows().stream().map(change).toList(), frozen.anatomy())
        .orElseThrow();
  }

  /** The row with another time. */
  public static IntervalRow interval(IntervalRow row, int first, int repeat) {
    return new IntervalRow(
        row.provenance(), row.inspection(), row.element(), row.use(), first, first, repeat);
  }

  /** The row with another limit. */
  public static AgeLimitRow age(AgeLimitRow row, AgeLimit limit) {
    return new AgeLimitRow(row.provenance(), row.element(), row.use(), row.layer(), limit);
  }

  public static DefectRow worded(DefectRow row, String wording) {
    return new DefectRow(
        row.provenance(),
        row.element(),
        row.use(),
        row.site(),
        row.defect(),
        row.band(),
        row.effect(),
        row.handling(),
        row.afterward(),
        row.open(),
        wording);
  }

  public static DefectRow effect(DefectRow row, DefectRow from) {
    return new DefectRow(
        row.provenance(),
        row.element(),
        row.use(),
        row.site(),
        row.defect(),
        row.band(),
        from.effect(),
        from.handling(),
        from.afterward(),
        false,
        row.wording());
  }

  public static Provenance commonPractice(Provenance from) {
    return new Provenance(
        from.key(),
        from.origin(),
        new Basis.CommonPractice(),
        from.reviewedThrough(),
        Optional.of("Noted."));
  }
}
