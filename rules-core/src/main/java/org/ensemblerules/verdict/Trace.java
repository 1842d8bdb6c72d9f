package org.ensemblerules.verdict;

import com.google.common.collect.ImmutableList;
import java.util.Comparator;
import java.util.List;
import org.ensemblerules.care.CareLimitRow;
import org.ensemblerules.care.CareRouteRow;
import org.ensemblerules.care.CleaningResultRow;
import org.ensemblerules.care.ModelCareLimitRow;
import org.ensemblerules.defect.DefectRow;
import org.ensemblerules.effect.CheckRow;
import org.ensemblerules.effect.PermissionRow;
import org.ensemblerules.fieldcheck.CheckLimitRow;
import org.ensemblerules.fieldcheck.ConditionRow;
import org.ensemblerules.fieldcheck.StrongerRow;
import org.ensemblerules.gear.AnatomyRow;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.Use;
import org.ensemblerules.inspection.CriterionRow;
import org.ensemblerules.inspection.IntervalRow;
import org.ensemblerules.record.PfasLawRow;
import org.ensemblerules.record.RecordItemRow;
import org.ensemblerules.repair.RepairLimitRow;
import org.ensemblerules.retirement.AgeLimitRow;
import org.ensemblerules.retirement.CustodyStepRow;
import org.ensemblerules.retirement.DisposalRouteRow;
import org.ensemblerules.ruleset.CautionRow;
import org.ensemblerules.schedule.TaskRow;
import org.ensemblerules.source.Row;
import org.ensemblerules.strength.DiscardRow;
import org.ensemblerules.strength.HydrostaticRow;
import org.ensemblerules.strength.MethodRow;
import org.ensemblerules.strength.RequirementRow;
import org.ensemblerules.strength.SmallSampleRow;

/**
 * Finds the rows that a verdict was reached with: those that speak of the element and of what is on
 * its record. A kind of row that is not named here counts as read, so that none is passed over.
 */
final class Trace {
  private static final Comparator<Row> ORDER =
      Comparator.comparing(Row::key)
          .thenComparing(row -> row.provenance().origin().value())
          .thenComparing(row -> String.join("\n", row.canonical()));

  private final ElementKind element;
  private final Use use;
  private final TracedRecord record;
  private final TracedAnswer answer;

  private Trace(CaseFile file, Verdict verdict) {
    this.element = file.element().kind();
    this.use = file.element().use();
    this.record = new TracedRecord(file);
    this.answer = new TracedAnswer(file, verdict, record);
  }

  static List<Row> of(CaseFile file, Verdict verdict) {
    Trace trace = new Trace(file, verdict);
    return file.tables().rows().stream()
        .filter(trace::reads)
        .sorted(ORDER)
        .collect(ImmutableList.toImmutableList());
  }

  private boolean reads(Row row) {
    if (row instanceof AnatomyRow part) {
      return own(part.element(), part.use());
    } else if (row instanceof AgeLimitRow age) {
      return own(age.element(), age.use());
    } else if (row instanceof IntervalRow interval) {
      return own(interval.element(), interval.use());
    } else if (row instanceof TaskRow task) {
      return own(task.element(), task.use());
    } else if (row instanceof CriterionRow criterion) {
      return own(criterion.element(), criterion.use()) && record.inspects(criterion.kinds());
    } else if (row instanceof DefectRow defect) {
      return own(defect.element(), defect.use()) && record.found(defect.site(), defect.defect());
    } else if (row instanceof CareRouteRow route) {
      return own(route.element(), route.use()) && record.met(route.exposure());
    } else if (row instanceof CareLimitRow limit) {
      return own(limit.element(), limit.use()) && record.washed();
    } else if (row instanceof ModelCareLimitRow instructed) {
      return reads(instructed.limit());
    }
    return readsOfWork(row);
  }

  private boolean own(ElementKind kind, Use of) {
    return kind == element && of == use;
  }

  private boolean readsOfWork(Row row) {
    if (row instanceof PermissionRow permission) {
      return answer.asksWho(permission.task())
          || record.did(permission.task(), permission.entity());
    } else if (row instanceof CheckRow check) {
      return answer.names(check.check());
    } else if (row instanceof ConditionRow condition) {
      return record.checked(condition.check());
    } else if (row instanceof CheckLimitRow limit) {
      return record.checked(limit.check());
    } else if (row instanceof StrongerRow stronger) {
      return record.followsOn(stronger.check());
    } else if (row instanceof CautionRow caution) {
      return answer.warns(caution.key());
    }
    return readsOfTests(row);
  }

  private boolean readsOfTests(Row row) {
    if (row instanceof RequirementRow requirement) {
      return record.tested(requirement.property());
    } else if (row instanceof MethodRow method) {
      return record.testedBy(method.method());
    } else if (row instanceof DiscardRow discard) {
      return record.testedBy(discard.method());
    } else if (row instanceof SmallSampleRow) {
      return record.tested();
    }
    return !answersOtherQuestions(row);
  }

  /** Rows of questions that a verdict does not ask. */
  private static boolean answersOtherQuestions(Row row) {
    return row instanceof RepairLimitRow
        || row instanceof CleaningResultRow
        || row instanceof HydrostaticRow
        || row instanceof RecordItemRow
        || row instanceof DisposalRouteRow
        || row instanceof CustodyStepRow
        || row instanceof PfasLawRow;
  }
}
