package org.ensemblerules.retirement;

import com.google.common.collect.Sets;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.Use;
import org.ensemblerules.source.ComparableRow;
import org.ensemblerules.source.ComparedFields;
import org.ensemblerules.source.Comparison;
import org.ensemblerules.source.Provenance;

/**
 * Says that a route is open to what was retired for a reason, and on what conditions.
 *
 * @param provenance where the row comes from; not null
 * @param element the kind of element; not null
 * @param use its use; not null
 * @param reason why it was retired; not null
 * @param route the route; not null
 * @param conditions what must be so before; not null
 * @since 0.1
 */
public record DisposalRouteRow(
    Provenance provenance,
    ElementKind element,
    Use use,
    RetirementReason reason,
    DisposalRoute route,
    Set<RouteCondition> conditions)
    implements ComparableRow<DisposalRouteRow> {
  /** Copies the conditions. */
  public DisposalRouteRow {
    Objects.requireNonNull(provenance, "provenance");
    Objects.requireNonNull(element, "element");
    Objects.requireNonNull(use, "use");
    Objects.requireNonNull(reason, "reason");
    Objects.requireNonNull(route, "route");
    conditions = Sets.immutableEnumSet(conditions);
  }

  @Override
  public List<String> canonical() {
    return List.of(
        element.name(),
        use.name(),
        reason.name(),
        route.name(),
        conditions.stream().map(Enum::name).collect(Collectors.joining(" ")));
  }

  @Override
  public List<String> topic() {
    return List.of(element.name(), use.name(), reason.name(), route.name());
  }

  @Override
  public ComparedFields compareFields(DisposalRouteRow other) {
    return ComparedFields.on(topic().equals(other.topic()))
        .with("conditions", Comparison.moreAreStricter(conditions, other.conditions));
  }

  @Override
  public Comparison asOneMore() {
    return Comparison.MILDER;
  }
}
