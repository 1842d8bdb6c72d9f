package org.ensemblerules.example.department.demo;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.ensemblerules.defect.FindingId;
import org.ensemblerules.effect.Check;
import org.ensemblerules.effect.CleaningKind;
import org.ensemblerules.effect.Doer;
import org.ensemblerules.effect.RepairClass;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.history.CheckResult;
import org.ensemblerules.history.Event;
import org.ensemblerules.history.LookEvent;
import org.ensemblerules.history.Moment;
import org.ensemblerules.history.WorkEvent;

/** What was done about one finding. Whether it settles the finding is not ours to say. */
final class Mending {
  private final List<Event> events;
  private final Set<FindingId> finding;

  Mending(List<Event> events, FindingId finding) {
    this.events = events;
    this.finding = Set.of(finding);
  }

  Mending cleaned(String day, CleaningKind kind, Doer by) {
    events.add(WorkEvent.Cleaned.whole(at(day), kind, by, finding));
    return this;
  }

  Mending repaired(String day, RepairClass repairClass, Doer by) {
    events.add(new WorkEvent.Repaired(at(day), repairClass, false, by, finding));
    return this;
  }

  Mending replaced(String day, RepairClass repairClass, Doer by) {
    events.add(new WorkEvent.Repaired(at(day), repairClass, true, by, finding));
    return this;
  }

  Mending passed(String day, Check check, Doer by) {
    events.add(
        new LookEvent.Checked(
            at(day),
            check,
            CheckResult.PASSED,
            by,
            finding,
            false,
            KeptConditions.of(check),
            Optional.empty()));
    return this;
  }

  Mending failed(String day, Check check, Doer by) {
    events.add(new LookEvent.Checked(at(day), check, CheckResult.FAILED, by, finding));
    return this;
  }

  private static Moment at(String day) {
    return Moment.on(MarkedDate.parse(day));
  }
}
