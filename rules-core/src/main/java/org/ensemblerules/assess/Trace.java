package org.ensemblerules.assess;

import com.google.common.collect.ImmutableList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import org.ensemblerules.care.Exposure;
import org.ensemblerules.defect.DefectKind;
import org.ensemblerules.effect.Check;
import org.ensemblerules.effect.EntityKind;
import org.ensemblerules.effect.Task;
import org.ensemblerules.gear.Element;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.Site;
import org.ensemblerules.gear.Use;
import org.ensemblerules.history.Transfer;
import org.ensemblerules.inspection.InspectionKind;
import org.ensemblerules.ruleset.TracedCase;
import org.ensemblerules.source.Row;
import org.ensemblerules.source.RowKey;
import org.ensemblerules.strength.Property;
import org.ensemblerules.strength.TestMethod;
import org.ensemblerules.verdict.Verdict;

/**
 * Finds the rows that a verdict was reached with: those that speak of the element and of what is on
 * its record. Each kind of table says for itself when one of its rows is read.
 */
final class Trace implements TracedCase {
  private static final Comparator<Row> ORDER =
      Comparator.comparing(Row::key)
          .thenComparing(row -> row.provenance().origin().value())
          .thenComparing(row -> String.join("\n", row.canonical()));

  private final Element element;
  private final TracedRecord record;
  private final TracedAnswer answer;

  private Trace(CaseFile file, Verdict verdict) {
    this.element = file.element();
    this.record = new TracedRecord(file);
    this.answer = new TracedAnswer(file, verdict, record);
  }

  static List<Row> of(CaseFile file, Verdict verdict) {
    return file.tables().read(new Trace(file, verdict)).stream()
        .sorted(ORDER)
        .collect(ImmutableList.toImmutableList());
  }

  @Override
  public boolean isOf(ElementKind kind, Use use) {
    return kind == element.kind() && use == element.use();
  }

  @Override
  public boolean inspects(Set<InspectionKind> kinds) {
    return record.inspects(kinds);
  }

  @Override
  public boolean found(Site site, DefectKind defect) {
    return record.found(site, defect);
  }

  @Override
  public boolean met(Exposure exposure) {
    return record.met(exposure);
  }

  @Override
  public boolean comesBack(Transfer back) {
    return record.comesBack(back);
  }

  @Override
  public boolean washed() {
    return record.washed();
  }

  @Override
  public boolean asksWho(Task task) {
    return answer.asksWho(task);
  }

  @Override
  public boolean did(Task task, EntityKind by) {
    return record.did(task, by);
  }

  @Override
  public boolean names(Check check) {
    return answer.names(check);
  }

  @Override
  public boolean checked(Check check) {
    return record.checked(check);
  }

  @Override
  public boolean followsOn(Check check) {
    return record.followsOn(check);
  }

  @Override
  public boolean warns(RowKey caution) {
    return answer.warns(caution);
  }

  @Override
  public boolean tested() {
    return record.tested();
  }

  @Override
  public boolean tested(Property property) {
    return record.tested(property);
  }

  @Override
  public boolean testedBy(TestMethod method) {
    return record.testedBy(method);
  }
}
