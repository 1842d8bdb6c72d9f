package org.ensemblerules.schedule;

import com.google.common.collect.Sets;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import org.ensemblerules.effect.Check;
import org.ensemblerules.effect.CleaningKind;
import org.ensemblerules.effect.EntityKind;
import org.ensemblerules.history.Event;
import org.ensemblerules.history.LookEvent;
import org.ensemblerules.history.WorkEvent;
import org.ensemblerules.inspection.InspectionKind;
import org.ensemblerules.source.InvalidValueException;

/**
 * What on record discharges a task.
 *
 * @since 0.1
 */
public sealed interface Discharge {
  /**
   * An inspection that counts.
   *
   * @param kind its kind; no other kind stands in for it; not null
   */
  record Inspected(InspectionKind kind) implements Discharge {
    /** Checks for null. */
    public Inspected {
      Objects.requireNonNull(kind, "kind");
    }

    @Override
    public boolean asksFor(Event event) {
      return event instanceof LookEvent.Inspected done && done.inspection().kind() == kind;
    }

    @Override
    public String text() {
      return kind + " inspection";
    }
  }

  /**
   * An inspection that counts, of any of several kinds, made by somebody of certain kinds: a duty
   * of its own beside the edition's, as laws of places ask for.
   *
   * @param kinds the kinds, at least one; not null
   * @param by who must have made it, at least one kind; not null
   */
  record InspectedBy(Set<InspectionKind> kinds, Set<EntityKind> by) implements Discharge {
    /**
     * Checks that something can discharge it.
     *
     * @throws InvalidValueException if a set is empty
     */
    public InspectedBy {
      kinds = Sets.immutableEnumSet(kinds);
      by = Sets.immutableEnumSet(by);
      InvalidValueException.require(
          !kinds.isEmpty(), "Discharge.inspections", kinds, "at least one kind");
      InvalidValueException.require(!by.isEmpty(), "Discharge.by", by, "at least one kind of doer");
    }

    /**
     * Returns the kind that asks for least.
     *
     * @return the first of the kinds in the order of their names' list; never null
     */
    public InspectionKind least() {
      return kinds.iterator().next();
    }

    @Override
    public boolean asksFor(Event event) {
      return event instanceof LookEvent.Inspected done
          && kinds.contains(done.inspection().kind())
          && done.inspection().by().filter(who -> by.contains(who.kind())).isPresent();
    }

    @Override
    public String text() {
      return joined(kinds) + " inspection by " + joined(by);
    }
  }

  /**
   * A cleaning that counts, of any of several kinds.
   *
   * @param kinds the kinds, at least one; not null
   */
  record CleanedAs(Set<CleaningKind> kinds) implements Discharge {
    /**
     * Checks that something can discharge it.
     *
     * @throws InvalidValueException if the set is empty
     */
    public CleanedAs {
      kinds = Sets.immutableEnumSet(kinds);
      InvalidValueException.require(
          !kinds.isEmpty(), "Discharge.cleanings", kinds, "at least one kind");
    }

    /**
     * Returns the kind that asks for least.
     *
     * @return the first of the kinds in the order of their names' list; never null
     */
    public CleaningKind least() {
      return kinds.iterator().next();
    }

    @Override
    public boolean asksFor(Event event) {
      return event instanceof WorkEvent.Cleaned done && kinds.contains(done.kind());
    }

    @Override
    public String text() {
      return joined(kinds) + " cleaning";
    }
  }

  /**
   * A cleaning that counts.
   *
   * @param kind its kind; no other kind stands in for it; not null
   */
  record Cleaned(CleaningKind kind) implements Discharge {
    /** Checks for null. */
    public Cleaned {
      Objects.requireNonNull(kind, "kind");
    }

    @Override
    public boolean asksFor(Event event) {
      return event instanceof WorkEvent.Cleaned done && done.kind() == kind;
    }

    @Override
    public String text() {
      return kind + " cleaning";
    }
  }

  /**
   * A check passed by somebody permitted.
   *
   * @param check which; not null
   */
  record Checked(Check check) implements Discharge {
    /** Checks for null. */
    public Checked {
      Objects.requireNonNull(check, "check");
    }

    @Override
    public boolean asksFor(Event event) {
      return event instanceof LookEvent.Checked done && done.check() == check;
    }

    @Override
    public String text() {
      return check + " passed";
    }
  }

  /**
   * Tells whether an event is of the sort that discharges the task, if it counts.
   *
   * @param event the event; not null
   * @return true if it is
   */
  boolean asksFor(Event event);

  /**
   * Returns what is done, in words.
   *
   * @return the text; never null
   */
  String text();

  private static String joined(Set<? extends Enum<?>> names) {
    return names.stream().map(Enum::name).collect(Collectors.joining(" or "));
  }
}
