package org.ensemblerules.care;

import com.google.common.collect.Sets;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.ensemblerules.effect.HandlingDuty;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.LayerKind;
import org.ensemblerules.gear.Use;
import org.ensemblerules.source.CitedRow;
import org.ensemblerules.source.ComparableRow;
import org.ensemblerules.source.ComparedFields;
import org.ensemblerules.source.Comparison;
import org.ensemblerules.source.InvalidValueException;
import org.ensemblerules.source.Provenance;

/**
 * Says what is done to a kind of element, or one layer of it, after it met something.
 *
 * @param provenance where the row comes from; not null
 * @param exposure what it met; not null
 * @param element the kind of element; not null
 * @param use its use; not null
 * @param layer the layer; empty if the element has no separable layers
 * @param steps what is done, at least one step, each action once, in the order of the actions; not
 *     null
 * @param handling how it must be handled besides being isolated, which is a step; not null
 * @param wording what the row says, in words, 1 to 500 characters; not null
 * @since 0.1
 */
public record CareRouteRow(
    Provenance provenance,
    Exposure exposure,
    ElementKind element,
    Use use,
    Optional<LayerKind> layer,
    List<RouteStep> steps,
    Set<HandlingDuty> handling,
    String wording)
    implements ComparableRow<CareRouteRow> {
  /**
   * Checks the order of the steps and the text.
   *
   * @throws InvalidValueException if there is no step, one out of order or twice, isolation is
   *     named as handling, or the wording is blank or too long
   */
  public CareRouteRow {
    Objects.requireNonNull(provenance, "provenance");
    Objects.requireNonNull(exposure, "exposure");
    Objects.requireNonNull(element, "element");
    Objects.requireNonNull(use, "use");
    Objects.requireNonNull(layer, "layer");
    steps = List.copyOf(steps);
    handling = Sets.immutableEnumSet(Objects.requireNonNull(handling, "handling"));
    InvalidValueException.requireText("CareRouteRow.wording", wording, 500);
    InvalidValueException.require(
        !steps.isEmpty() && inOrder(steps),
        "CareRouteRow.steps",
        steps.stream().map(RouteStep::action).toList(),
        "at least one step, each action once, in the order of the actions");
    InvalidValueException.require(
        !handling.contains(HandlingDuty.ISOLATE),
        "CareRouteRow.handling",
        handling,
        "any but ISOLATE, which is a step");
  }

  private static boolean inOrder(List<RouteStep> steps) {
    for (int i = 1; i < steps.size(); i++) {
      if (steps.get(i - 1).action().compareTo(steps.get(i).action()) >= 0) {
        return false;
      }
    }
    return true;
  }

  /**
   * Tells whether the row asks for a step.
   *
   * @param action the action; not null
   * @return true if one of its steps is that
   */
  public boolean asks(CareAction action) {
    return step(action).isPresent();
  }

  /** The step of an action. */
  Optional<RouteStep> step(CareAction action) {
    for (RouteStep step : steps) {
      if (step.action() == action) {
        return Optional.of(step);
      }
    }
    return Optional.empty();
  }

  @Override
  public CitedRow cited() {
    return new CitedRow(provenance, Optional.of(wording), false);
  }

  @Override
  public List<String> canonical() {
    return List.of(
        exposure.name(),
        element.name(),
        use.name(),
        layer.map(LayerKind::name).orElse(""),
        steps.toString(),
        handling.toString(),
        wording);
  }

  @Override
  public List<String> topic() {
    return List.of(
        exposure.name(), element.name(), use.name(), layer.map(LayerKind::name).orElse(""));
  }

  @Override
  public List<String> words() {
    return List.of(wording);
  }

  @Override
  public ComparedFields compareFields(CareRouteRow other) {
    return ComparedFields.on(topic().equals(other.topic()))
        .with("handling", Comparison.moreAreStricter(handling, other.handling))
        .with(
            "steps",
            Comparison.of(asksForStepsOf(steps, other.steps), asksForStepsOf(other.steps, steps)));
  }

  private static boolean asksForStepsOf(List<RouteStep> steps, List<RouteStep> others) {
    return others.stream()
        .allMatch(
            other ->
                steps.stream().anyMatch(step -> step.compareStrictness(other).isAtLeastAsStrict()));
  }
}
