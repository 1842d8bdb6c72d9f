package org.ensemblerules.tables.load;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.ensemblerules.defect.DefectKind;
import org.ensemblerules.effect.Check;
import org.ensemblerules.effect.CleaningKind;
import org.ensemblerules.effect.EntityKind;
import org.ensemblerules.gear.Site;
import org.ensemblerules.inspection.InspectionKind;
import org.ensemblerules.ruleset.InspectionKinds;
import org.ensemblerules.schedule.Discharge;
import org.ensemblerules.schedule.FoundWhat;
import org.ensemblerules.schedule.Start;
import org.ensemblerules.schedule.TaskKey;
import org.ensemblerules.schedule.TaskRow;
import org.ensemblerules.schedule.Timing;
import org.ensemblerules.schedule.Trigger;
import org.ensemblerules.tables.json.JsonCursor;
import org.ensemblerules.tables.json.ObjectCursor;
import org.ensemblerules.tables.json.ValueReaders;

/** Readers of the table that says which tasks are due when. */
final class ScheduleReaders {
  private enum DoneKind {
    INSPECTED,
    INSPECTED_BY,
    CLEANED,
    CLEANED_AS,
    CHECKED
  }

  private enum TimingKind {
    EVERY,
    BY_INTERVAL,
    AFTER
  }

  /** The tables whose rows are read here. */
  static final List<TableType<?>> TYPES =
      List.of(new TableType<>(InspectionKinds.TASKS, ScheduleReaders::tasks));

  private ScheduleReaders() {}

  static Optional<List<TaskRow>> tasks(FamilyHead head, ObjectCursor row) {
    Optional<TaskKey> task = row.required("task", at -> at.parsed(TaskKey::new));
    Combinations gear = Combinations.read(row);
    Optional<Discharge> doneBy = row.required("doneBy", ScheduleReaders::doneBy);
    Optional<Timing> timing = row.required("timing", ScheduleReaders::timing);
    Optional<Boolean> exempt = row.optional("exemptInReserve", JsonCursor::bool);
    return row.make(
        () ->
            gear.rows(
                (element, use) ->
                    Stream.of(
                        new TaskRow(
                            head.provenance(element, use),
                            task.orElseThrow(),
                            element,
                            use,
                            doneBy.orElseThrow(),
                            timing.orElseThrow(),
                            exempt.orElse(false)))));
  }

  private static Optional<Discharge> doneBy(JsonCursor at) {
    ObjectCursor done = at.object();
    Optional<DoneKind> kind = done.required("kind", value -> value.enumOf(DoneKind.class));
    if (kind.isEmpty()) {
      return Optional.empty();
    }
    return switch (kind.get()) {
      case INSPECTED -> {
        Optional<InspectionKind> inspection =
            done.required("inspection", value -> value.enumOf(InspectionKind.class));
        yield done.make(() -> new Discharge.Inspected(inspection.orElseThrow()));
      }
      case INSPECTED_BY -> {
        Optional<Set<InspectionKind>> kinds =
            done.required("inspections", value -> value.setOf(InspectionKind.class));
        Optional<Set<EntityKind>> by = done.required("by", value -> value.setOf(EntityKind.class));
        yield done.make(() -> new Discharge.InspectedBy(kinds.orElseThrow(), by.orElseThrow()));
      }
      case CLEANED_AS -> {
        Optional<Set<CleaningKind>> kinds =
            done.required("cleanings", value -> value.setOf(CleaningKind.class));
        yield done.make(() -> new Discharge.CleanedAs(kinds.orElseThrow()));
      }
      case CLEANED -> {
        Optional<CleaningKind> cleaning =
            done.required("cleaning", value -> value.enumOf(CleaningKind.class));
        yield done.make(() -> new Discharge.Cleaned(cleaning.orElseThrow()));
      }
      case CHECKED -> {
        Optional<Check> check = done.required("check", value -> value.enumOf(Check.class));
        yield done.make(() -> new Discharge.Checked(check.orElseThrow()));
      }
    };
  }

  private static Optional<Timing> timing(JsonCursor at) {
    ObjectCursor timing = at.object();
    Optional<TimingKind> kind = timing.required("kind", value -> value.enumOf(TimingKind.class));
    if (kind.isEmpty()) {
      return Optional.empty();
    }
    return switch (kind.get()) {
      case EVERY -> {
        Optional<Start> start = timing.required("start", value -> value.enumOf(Start.class));
        Optional<Integer> first = timing.required("firstMonths", ScheduleReaders::number);
        Optional<Integer> times =
            timing.required("times", value -> value.integer(1, Timing.MOST_TIMES));
        Optional<Integer> within = timing.required("withinMonths", ScheduleReaders::number);
        yield timing.make(
            () ->
                new Timing.Every(
                    start.orElseThrow(),
                    first.orElseThrow(),
                    times.orElseThrow(),
                    within.orElseThrow()));
      }
      case BY_INTERVAL -> timing.make(Timing.ByInterval::new);
      case AFTER -> {
        Optional<Trigger> trigger =
            timing.required("trigger", value -> value.enumOf(Trigger.class));
        Optional<Integer> within =
            timing.optional("withinDays", value -> value.integer(0, Timing.MOST_DAYS));
        Optional<FoundWhat> found = timing.optional("found", ScheduleReaders::found);
        yield timing.make(
            () ->
                new Timing.After(trigger.orElseThrow(), within, found.orElse(FoundWhat.ANYTHING)));
      }
    };
  }

  private static Optional<FoundWhat> found(JsonCursor at) {
    ObjectCursor found = at.object();
    Optional<List<Site>> sites = found.optional("at", value -> value.distinct(ValueReaders::site));
    Optional<Set<DefectKind>> butFor =
        found.optional("butFor", value -> value.setOf(DefectKind.class));
    Optional<Set<DefectKind>> reaching =
        found.optional("reaching", value -> value.setOf(DefectKind.class));
    return found.make(
        () ->
            new FoundWhat(
                Set.copyOf(sites.orElse(List.of())),
                butFor.orElse(Set.of()),
                reaching.orElse(Set.of())));
  }

  private static Optional<Integer> number(JsonCursor at) {
    return at.integer(1, Timing.MOST_MONTHS);
  }
}
