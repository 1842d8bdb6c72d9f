package org.ensemblerules.care;

import com.google.common.collect.Sets;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.ensemblerules.effect.HandlingDuty;
import org.ensemblerules.effect.PermissionRow;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.LayerKind;
import org.ensemblerules.gear.Use;

/**
 * How an element must be cared for after what it met. It speaks of gear, never of people.
 *
 * @since 0.1
 */
public sealed interface CareRoute {
  /**
   * These steps, in this order.
   *
   * @param steps the steps, at least one; not null
   * @param handling how it must be handled until all are done, besides being isolated; not null
   */
  record Steps(List<CareStep> steps, Set<HandlingDuty> handling) implements CareRoute {
    /** Copies the collections. */
    public Steps {
      steps = List.copyOf(steps);
      handling = Sets.immutableEnumSet(handling);
    }

    @Override
    public boolean mayReturn() {
      return steps.stream().noneMatch(step -> step.action() == CareAction.NO_RETURN);
    }

    /**
     * Tells whether this route is at least as strict as another: it has every step of the other, on
     * the same layers, none in a milder manner, standing or record, and every duty of handling.
     *
     * @param other the other; not null
     * @return true if nothing that the other asks for is missing or milder here
     */
    public boolean isAtLeastAsStrictAs(Steps other) {
      return handling.containsAll(other.handling)
          && other.steps.stream()
              .allMatch(
                  step ->
                      layersOf(step)
                          .allMatch(
                              layer -> steps.stream().anyMatch(own -> own.holdsOn(layer, step))));
    }

    private static Stream<Optional<LayerKind>> layersOf(CareStep step) {
      return step.layers().isEmpty()
          ? Stream.of(Optional.empty())
          : step.layers().stream().map(Optional::of);
    }
  }

  /**
   * No row speaks of such elements: it is isolated, and an expert evaluates it. It is not cleaned
   * and sent back.
   *
   * @param element the kind of element; not null
   * @param use its use; not null
   * @param exposures what it met; not null
   * @param by who may evaluate it; empty if nobody is named
   */
  record NoRule(ElementKind element, Use use, Set<Exposure> exposures, List<PermissionRow> by)
      implements CareRoute {
    /** Checks for nulls and copies the collections. */
    public NoRule {
      Objects.requireNonNull(element, "element");
      Objects.requireNonNull(use, "use");
      exposures = Sets.immutableEnumSet(exposures);
      by = List.copyOf(by);
    }

    @Override
    public boolean mayReturn() {
      return false;
    }
  }

  /**
   * Tells whether the element can go back into service once the whole route is done.
   *
   * @return false if it does not return, or if no rule covers it
   */
  boolean mayReturn();
}
