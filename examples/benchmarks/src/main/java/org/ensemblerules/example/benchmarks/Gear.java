package org.ensemblerules.example.benchmarks;

import java.util.List;
import org.ensemblerules.GearRules;
import org.ensemblerules.example.department.demo.DemoDepartment;
import org.ensemblerules.tables.ShippedRules;
import org.ensemblerules.verdict.Assessment;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;

/** The invented department's gear and the shipped rules, one element after another. */
@State(Scope.Thread)
public class Gear {
  final GearRules rules = ShippedRules.standard();
  final List<Assessment> all = DemoDepartment.assessments(rules);
  private int next;

  /** Made by the harness. */
  public Gear() {}

  Assessment one() {
    return all.get(turn());
  }

  int turn() {
    int turn = next;
    next = turn + 1 == all.size() ? 0 : turn + 1;
    return turn;
  }
}
