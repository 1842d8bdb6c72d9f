package org.ensemblerules.ruleset;

import java.util.List;
import org.ensemblerules.strength.DiscardRow;
import org.ensemblerules.strength.HydrostaticRow;
import org.ensemblerules.strength.HydrostaticTable;
import org.ensemblerules.strength.MethodRow;
import org.ensemblerules.strength.MethodTable;
import org.ensemblerules.strength.RequirementRow;
import org.ensemblerules.strength.RequirementTable;
import org.ensemblerules.strength.SmallSampleRow;
import org.ensemblerules.strength.SmallSampleTable;
import org.ensemblerules.strength.UsedGearRow;

/**
 * The kinds of tables by which test reports and the strength of used gear are judged.
 *
 * @since 0.1
 */
public final class StrengthKinds {
  /** What test methods need. */
  public static final TableKind<MethodRow, MethodTable> METHODS =
      TableKind.named("strength-methods", Subject.PRODUCT, HeldBy.TRADE)
          .rows(MethodRow.class, MethodTable::rows)
          .by(rows -> MethodTable.of(rows, List.of()))
          .readWhen((row, file) -> file.testedBy(row.method()));

  /** Which specimens test methods let be discarded. */
  public static final TableKind<DiscardRow, MethodTable> DISCARDS =
      TableKind.named("strength-discards", Subject.PRODUCT, HeldBy.TRADE)
          .rows(DiscardRow.class, MethodTable::discardRows)
          .into(METHODS, (rows, tables) -> MethodTable.of(tables.of(METHODS).rows(), rows))
          .readWhen((row, file) -> file.testedBy(row.method()));

  /** What product editions require of new material. */
  public static final TableKind<RequirementRow, RequirementTable> REQUIREMENTS =
      TableKind.named("strength-requirements", Subject.PRODUCT, HeldBy.PRODUCTS)
          .rows(RequirementRow.class, RequirementTable::rows)
          .by(METHODS, RequirementTable::of)
          .readWhen((row, file) -> file.tested(row.property()));

  /** Ranks and exponents of the small-sample bound. */
  public static final TableKind<SmallSampleRow, SmallSampleTable> SMALL_SAMPLES =
      TableKind.named("small-sample-factors", Subject.PRODUCT, HeldBy.TRADE)
          .rows(SmallSampleRow.class, SmallSampleTable::rows)
          .by(SmallSampleTable::of)
          .readWhen((row, file) -> file.tested());

  /** What moisture barriers must hold at fixed pressure. */
  public static final TableKind<HydrostaticRow, HydrostaticTable> HYDROSTATIC =
      TableKind.named("hydrostatic", Subject.PRODUCT, HeldBy.TRADE)
          .rows(HydrostaticRow.class, HydrostaticTable::rows)
          .by(HydrostaticTable::of)
          .notForVerdicts();

  /** Policies on the strength of used gear; each applies. */
  public static final TableKind<UsedGearRow, List<UsedGearRow>> USED_GEAR =
      TableKind.named("used-gear", Subject.PRODUCT, HeldBy.OVERLAYS)
          .listOf(UsedGearRow.class)
          .alwaysRead();

  private StrengthKinds() {}
}
