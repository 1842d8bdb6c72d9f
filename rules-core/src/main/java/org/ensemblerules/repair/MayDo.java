package org.ensemblerules.repair;

import java.util.Objects;
import org.ensemblerules.effect.Permission;
import org.ensemblerules.effect.PermissionRow;
import org.ensemblerules.effect.Task;

/**
 * Whether the one who is to do the work may do it.
 *
 * @since 0.1
 */
public sealed interface MayDo {
  /** Nobody was named who is to do it. */
  record NotAsked() implements MayDo {
    @Override
    public String text() {
      return "nobody is named who is to do it";
    }
  }

  /**
   * Nothing is repaired now, so that nobody may repair it.
   *
   * @param level what becomes of the damage instead; not null
   */
  record NoRepair(RepairLevel level) implements MayDo {
    /** Checks for null. */
    public NoRepair {
      Objects.requireNonNull(level, "level");
    }

    @Override
    public String text() {
      return "nothing is repaired now: " + level;
    }
  }

  /**
   * They may.
   *
   * @param task what they do; not null
   * @param row the row that says so; not null
   */
  record Yes(Task task, PermissionRow row) implements MayDo {
    /** Checks for nulls. */
    public Yes {
      Objects.requireNonNull(task, "task");
      Objects.requireNonNull(row, "row");
    }

    @Override
    public String text() {
      return "may do " + task;
    }
  }

  /**
   * They may not.
   *
   * @param task what they were to do; not null
   * @param why why not; never a permission that is granted; not null
   */
  record WhyNot(Task task, Permission why) implements MayDo {
    /** Checks for nulls. */
    public WhyNot {
      Objects.requireNonNull(task, "task");
      Objects.requireNonNull(why, "why");
    }

    @Override
    public String text() {
      return "may not do " + task + ": " + why.text();
    }
  }

  /**
   * Returns the answer in words.
   *
   * @return the text; never null
   */
  String text();

  /**
   * Tells whether they may.
   *
   * @return true only if they may
   */
  default boolean granted() {
    return this instanceof Yes;
  }
}
