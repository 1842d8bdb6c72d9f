package org.ensemblerules.schedule;

import java.util.Objects;
import org.ensemblerules.care.Exposure;
import org.ensemblerules.effect.CleaningKind;
import org.ensemblerules.effect.PermissionTable;
import org.ensemblerules.effect.Task;
import org.ensemblerules.gear.Element;
import org.ensemblerules.history.Event;

/**
 * Decides which cleanings count as done. Exposure reduction never counts, nor what was done by
 * somebody not permitted, nor a wash outside its limits.
 */
public final class Cleanings {
  /** Whether a wash kept its limits. */
  @FunctionalInterface
  public interface Limits {
    /**
     * Tells whether a cleaning is shown to have kept its limits.
     *
     * @param element what was cleaned; not null
     * @param cleaned the cleaning; not null
     * @return true only if it is; what is not known is not kept
     */
    boolean kept(Element element, Event.Cleaned cleaned);
  }

  /** Whether an ordinary wash follows an exposure. */
  @FunctionalInterface
  public interface Washes {
    /**
     * Tells whether an ordinary wash is among what is done after an exposure.
     *
     * @param element what met it; not null
     * @param exposure what it met; not null
     * @return false only if other care is laid down, and no such wash with it
     */
    boolean follow(Element element, Exposure exposure);
  }

  private final PermissionTable permissions;
  private final Limits limits;
  private final Washes washes;

  /**
   * Makes the decision, where an ordinary wash follows whatever was met.
   *
   * @param permissions who may clean; not null
   * @param limits whether a wash kept its limits; not null
   */
  public Cleanings(PermissionTable permissions, Limits limits) {
    this(permissions, limits, (element, exposure) -> true);
  }

  /**
   * Makes the decision.
   *
   * @param permissions who may clean; not null
   * @param limits whether a wash kept its limits; not null
   * @param washes whether an ordinary wash follows an exposure; not null
   */
  public Cleanings(PermissionTable permissions, Limits limits, Washes washes) {
    this.permissions = Objects.requireNonNull(permissions, "permissions");
    this.limits = Objects.requireNonNull(limits, "limits");
    this.washes = Objects.requireNonNull(washes, "washes");
  }

  /**
   * Tells whether what an element met calls for an ordinary wash.
   *
   * @param element what met it; not null
   * @param exposure what it met; not null
   * @return false if it is cared for in another way
   */
  public boolean follow(Element element, Exposure exposure) {
    return washes.follow(element, exposure);
  }

  /**
   * Tells whether a cleaning counts.
   *
   * @param element what was cleaned; not null
   * @param cleaned the cleaning; not null
   * @return true if nothing speaks against it
   */
  public boolean count(Element element, Event.Cleaned cleaned) {
    return cleaned.kind() != CleaningKind.EXPOSURE_REDUCTION
        && permissions
            .mayPerform(cleaned.by(), Task.of(cleaned.kind()), element, cleaned.when().date())
            .granted()
        && limits.kept(element, cleaned);
  }
}
