package org.ensemblerules.audit;

import com.google.common.collect.ImmutableMap;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.ensemblerules.care.CareLimitRow;
import org.ensemblerules.care.CareRouteRow;
import org.ensemblerules.care.CleaningResultRow;
import org.ensemblerules.defect.DefectRow;
import org.ensemblerules.effect.CheckRow;
import org.ensemblerules.effect.ForbidRow;
import org.ensemblerules.effect.PermissionRow;
import org.ensemblerules.fieldcheck.CheckLimitRow;
import org.ensemblerules.fieldcheck.ConditionRow;
import org.ensemblerules.fieldcheck.StrongerRow;
import org.ensemblerules.gear.AnatomyRow;
import org.ensemblerules.inspection.CriterionRow;
import org.ensemblerules.inspection.IntervalRow;
import org.ensemblerules.record.PfasLawRow;
import org.ensemblerules.record.RecordItemRow;
import org.ensemblerules.record.RetentionRow;
import org.ensemblerules.repair.RepairLimitRow;
import org.ensemblerules.retirement.AgeLimitRow;
import org.ensemblerules.retirement.CustodyStepRow;
import org.ensemblerules.retirement.DisposalRouteRow;
import org.ensemblerules.ruleset.CautionRow;
import org.ensemblerules.schedule.TaskRow;
import org.ensemblerules.source.InvalidValueException;
import org.ensemblerules.source.Row;
import org.ensemblerules.strength.DiscardRow;
import org.ensemblerules.strength.HydrostaticRow;
import org.ensemblerules.strength.MethodRow;
import org.ensemblerules.strength.RequirementRow;
import org.ensemblerules.strength.SmallSampleRow;
import org.ensemblerules.strength.UsedGearRow;

/**
 * What a row speaks of, apart from what it says of that and in which words. Rows of two sets are
 * held against each other by what they speak of, since a key is only a name.
 *
 * @param table the kind of row
 * @param about what it speaks of
 * @param says what it says of that
 */
record Meaning(Class<? extends Row> table, List<String> about, List<String> says) {
  /** Where in a row's canonical texts stands what it speaks of, and where its words. */
  private record Shape(List<Integer> about, List<Integer> words) {
    static Shape first(int count, Integer... words) {
      List<Integer> about = new ArrayList<>();
      for (int i = 0; i < count; i++) {
        about.add(i);
      }
      return new Shape(about, List.of(words));
    }
  }

  private static final Map<Class<? extends Row>, Shape> SHAPES =
      ImmutableMap.<Class<? extends Row>, Shape>builder()
          .put(AnatomyRow.class, Shape.first(3))
          .put(CheckRow.class, Shape.first(1, 3))
          .put(PermissionRow.class, Shape.first(2))
          .put(DefectRow.class, Shape.first(5, 9))
          .put(CriterionRow.class, new Shape(List.of(1, 2, 4), List.of(3, 8)))
          .put(IntervalRow.class, Shape.first(3))
          .put(AgeLimitRow.class, Shape.first(3))
          .put(CautionRow.class, new Shape(List.of(3), List.of()))
          .put(ConditionRow.class, Shape.first(2))
          .put(StrongerRow.class, Shape.first(2))
          .put(CheckLimitRow.class, Shape.first(1))
          .put(RequirementRow.class, Shape.first(8, 14))
          .put(MethodRow.class, Shape.first(1, 1))
          .put(DiscardRow.class, Shape.first(1))
          .put(HydrostaticRow.class, Shape.first(2, 6))
          .put(SmallSampleRow.class, Shape.first(3))
          .put(CareLimitRow.class, Shape.first(4))
          .put(CareRouteRow.class, Shape.first(4, 6))
          .put(CleaningResultRow.class, Shape.first(1))
          .put(RepairLimitRow.class, Shape.first(4, 7))
          .put(TaskRow.class, Shape.first(4))
          .put(RecordItemRow.class, Shape.first(3))
          .put(DisposalRouteRow.class, Shape.first(4))
          .put(CustodyStepRow.class, Shape.first(1))
          .put(PfasLawRow.class, Shape.first(1))
          .put(ForbidRow.class, Shape.first(3))
          .put(UsedGearRow.class, Shape.first(0))
          .put(RetentionRow.class, new Shape(List.of(1), List.of()))
          .buildOrThrow();

  /** The kinds of row that rule sets have. */
  static Set<Class<? extends Row>> kinds() {
    return SHAPES.keySet();
  }

  static Meaning of(Row row) {
    Shape shape = SHAPES.get(row.getClass());
    if (shape == null) {
      throw new InvalidValueException(
          "Meaning.row", row.getClass().getName(), "a row of a rule set");
    }
    List<String> texts = row.canonical();
    List<String> about = shape.about().stream().map(texts::get).toList();
    List<String> says = new ArrayList<>();
    for (int i = 0; i < texts.size(); i++) {
      if (!shape.about().contains(i) && !shape.words().contains(i)) {
        says.add(texts.get(i));
      }
    }
    return new Meaning(row.getClass(), about, List.copyOf(says));
  }
}
