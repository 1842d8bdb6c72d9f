package org.ensemblerules.assess;

import com.google.common.collect.Sets;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.ensemblerules.care.Exposure;
import org.ensemblerules.defect.DefectKind;
import org.ensemblerules.defect.Finding;
import org.ensemblerules.effect.Check;
import org.ensemblerules.effect.Doer;
import org.ensemblerules.effect.EntityKind;
import org.ensemblerules.effect.Task;
import org.ensemblerules.fieldcheck.StrongerRow;
import org.ensemblerules.gear.Site;
import org.ensemblerules.history.Event;
import org.ensemblerules.history.ExposureEvent;
import org.ensemblerules.history.LookEvent;
import org.ensemblerules.history.Transfer;
import org.ensemblerules.history.UseEvent;
import org.ensemblerules.history.WorkEvent;
import org.ensemblerules.inspection.InspectionKind;
import org.ensemblerules.schedule.Discharge;
import org.ensemblerules.schedule.TaskRow;
import org.ensemblerules.strength.Property;
import org.ensemblerules.strength.TestMethod;

/** What is on the record of an element that rows can speak of. */
final class TracedRecord {
  private record Found(Site site, DefectKind defect) {}

  private record Did(Task task, EntityKind by) {}

  private final Set<InspectionKind> inspections =
      EnumSet.of(InspectionKind.ADVANCED, InspectionKind.COMPLETE_LINER);
  private final Set<Found> found = new HashSet<>();
  private final Set<Exposure> met = EnumSet.noneOf(Exposure.class);
  private final Set<Transfer> back = EnumSet.noneOf(Transfer.class);
  private final Set<Check> checked = EnumSet.noneOf(Check.class);
  private final Set<Check> chain = EnumSet.noneOf(Check.class);
  private final Set<Did> done = new HashSet<>();
  private final Set<Property> properties = EnumSet.noneOf(Property.class);
  private final Set<TestMethod> methods = new HashSet<>();
  private boolean washed;

  TracedRecord(CaseFile file) {
    for (TaskRow row : file.tables().tasks().rows(file.element())) {
      if (row.doneBy() instanceof Discharge.Inspected inspected) {
        inspections.add(inspected.kind());
      }
    }
    for (Finding finding : file.findings()) {
      Exposure.of(finding.defect()).ifPresent(met::add);
      for (Site site :
          file.tables()
              .anatomy()
              .meant(file.element().kind(), file.element().use(), finding.site())) {
        found.add(new Found(site, finding.defect()));
      }
    }
    file.history().events().forEach(event -> read(file, event));
    checked.forEach(check -> follow(file, check));
  }

  private void read(CaseFile file, Event event) {
    file.rules()
        .evidenceTables()
        .task(event)
        .ifPresent(task -> event.doer().ifPresent(doer -> did(task, doer)));
    if (event instanceof LookEvent.Inspected inspected) {
      inspections.add(inspected.inspection().kind());
    } else if (event instanceof ExposureEvent.Exposed exposed) {
      met.add(exposed.to());
    } else if (event instanceof ExposureEvent.ExposureIdentified identified) {
      met.add(identified.as());
    } else if (event instanceof UseEvent.Moved moved) {
      back.add(moved.transfer());
      moved.transfer().endedBy().ifPresent(back::add);
    } else if (event instanceof WorkEvent.Cleaned) {
      washed = true;
    } else if (event instanceof LookEvent.Checked check) {
      checked.add(check.check());
    } else if (event instanceof LookEvent.Tested tested) {
      properties.add(tested.report().property());
      methods.add(tested.report().method());
    }
  }

  private void did(Task task, Doer by) {
    done.add(new Did(task, by.kind()));
    if (by.kind() == EntityKind.MEMBER) {
      // A trained member may do what the organization may.
      done.add(new Did(task, EntityKind.ORGANIZATION));
    }
  }

  private void follow(CaseFile file, Check failed) {
    Optional<StrongerRow> next =
        chain.add(failed) ? file.rules().validity().stronger().next(failed) : Optional.empty();
    next.ifPresent(row -> follow(file, row.stronger()));
  }

  boolean inspects(Set<InspectionKind> kinds) {
    return !Sets.intersection(kinds, inspections).isEmpty();
  }

  boolean found(Site site, DefectKind defect) {
    return found.contains(new Found(site, defect));
  }

  boolean met(Exposure exposure) {
    return met.contains(exposure);
  }

  boolean comesBack(Transfer transfer) {
    return back.contains(transfer);
  }

  boolean washed() {
    return washed;
  }

  boolean checked(Check check) {
    return checked.contains(check);
  }

  /** The checks made, for a list of all that they name. */
  List<Check> checks() {
    return List.copyOf(checked);
  }

  /** Whether a check was made, or is one that a failure of one made leads to. */
  boolean followsOn(Check check) {
    return chain.contains(check);
  }

  boolean did(Task task, EntityKind by) {
    return done.contains(new Did(task, by));
  }

  boolean tested() {
    return !properties.isEmpty();
  }

  boolean tested(Property property) {
    return properties.contains(property);
  }

  boolean testedBy(TestMethod method) {
    return methods.contains(method);
  }
}
