package org.ensemblerules.care;

import com.google.common.collect.Sets;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.ensemblerules.effect.PermissionRow;
import org.ensemblerules.effect.Task;
import org.ensemblerules.gear.LayerKind;

/**
 * One step of a care route.
 *
 * @param action what is done; not null
 * @param layers to which layers; empty if the element has no separable ones; not null
 * @param manner in what manner; given exactly for what cleans
 * @param standing whether it may be taken when its turn comes; not null
 * @param entries what must be written down; not null
 * @param task the task that its doer must be permitted to do; empty for what whoever handles the
 *     gear does
 * @param by who may do it; empty if there is no such task, or if nobody is named for it
 * @param rows the rows that ask for it, at least one; not null
 * @since 0.1
 */
public record CareStep(
    CareAction action,
    Set<LayerKind> layers,
    Optional<CareManner> manner,
    CareStanding standing,
    Set<CareEntry> entries,
    Optional<Task> task,
    List<PermissionRow> by,
    List<CareRouteRow> rows) {
  /** Checks for nulls and copies the collections. */
  public CareStep {
    Objects.requireNonNull(action, "action");
    layers = Sets.immutableEnumSet(layers);
    Objects.requireNonNull(manner, "manner");
    Objects.requireNonNull(standing, "standing");
    entries = Sets.immutableEnumSet(entries);
    Objects.requireNonNull(task, "task");
    by = List.copyOf(by);
    rows = List.copyOf(rows);
  }

  /**
   * Returns the step on one line.
   *
   * @return the text; never null
   */
  public String text() {
    String what =
        action.text()
            + manner.map(how -> ", " + how.text()).orElse("")
            + (layers.isEmpty()
                ? ""
                : " ("
                    + layers.stream().map(LayerKind::name).collect(Collectors.joining(", "))
                    + ")");
    return switch (standing) {
      case IN_TURN -> what;
      case IF_ALLOWED -> what + "; only if whoever found out what it met allows it";
      case BARRED -> "not done, because it does not return: " + what;
    };
  }

  /** Whether it asks for at least what another step does, on the layers of that. */
  boolean holdsOn(Optional<LayerKind> layer, CareStep other) {
    return action == other.action
        && (layer.isEmpty() || layers.contains(layer.get()))
        && standing.compareTo(other.standing) >= 0
        && entries.containsAll(other.entries)
        && (other.manner.isEmpty() || manner.orElseThrow().compareTo(other.manner.get()) >= 0);
  }
}
