package org.ensemblerules.care;

import com.google.common.collect.ImmutableList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import org.ensemblerules.gear.AnatomyTable;
import org.ensemblerules.gear.Element;
import org.ensemblerules.gear.LayerKind;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.gear.YesNoUnknown;
import org.ensemblerules.source.TableFault;

/**
 * The limits of manufacturers' instructions, and which row each is put in place of. One that is the
 * looser holds only for what is certainly of its model; any other for what may be of it.
 */
final class ModelLimits {
  /** A limit, and the stricter row in whose place it is put; empty if it stands beside. */
  record Held(ModelCareLimitRow row, Optional<CareLimitRow> inPlaceOf) {}

  private final ImmutableList<Held> held;
  private final AnatomyTable anatomy;

  private ModelLimits(List<Held> held, AnatomyTable anatomy) {
    this.held = ImmutableList.copyOf(held);
    this.anatomy = anatomy;
  }

  static ModelLimits none() {
    return new ModelLimits(List.of(), AnatomyTable.of(List.of()).orElseThrow());
  }

  /** Finds the rows replaced among a table's own; each that is not there is a fault. */
  static ModelLimits of(
      List<ModelCareLimitRow> rows,
      List<CareLimitRow> own,
      AnatomyTable anatomy,
      Consumer<TableFault> faults) {
    ImmutableList.Builder<Held> held = ImmutableList.builder();
    for (ModelCareLimitRow row : rows) {
      Optional<CareLimitRow> same =
          own.stream().filter(other -> sameLimit(row.limit(), other)).findFirst();
      row.replaces()
          .filter(key -> !same.map(CareLimitRow::key).equals(Optional.of(key)))
          .ifPresent(
              key ->
                  faults.accept(
                      new TableFault(
                          row.key(),
                          "replaces",
                          key.value(),
                          same.map(other -> "row " + other.key() + ", which limits the same")
                              .orElse("nothing, since no row limits the same"))));
      held.add(
          new Held(
              row,
              same.filter(
                  other ->
                      row.replaces().isPresent()
                          && row.limit().demand().letsMoreCount(other.demand()))));
    }
    return new ModelLimits(held.build(), anatomy);
  }

  private static boolean sameLimit(CareLimitRow one, CareLimitRow other) {
    return one.demand() instanceof CareDemand.Within limit
        && other.demand() instanceof CareDemand.Within than
        && limit.measure() == than.measure()
        && limit.limit().bound() == than.limit().bound()
        && one.element() == other.element()
        && one.use() == other.use()
        && one.layer().equals(other.layer());
  }

  List<ModelCareLimitRow> rows() {
    return held.stream().map(Held::row).collect(ImmutableList.toImmutableList());
  }

  /** Lists the limits that a wash is held to. */
  List<Held> of(Element element, Set<LayerKind> layers, MarkedDate washed) {
    return held.isEmpty()
        ? held
        : held.stream()
            .filter(each -> each.row().limit().holdsFor(element, layers))
            .filter(each -> holds(each, element, layers, washed))
            .toList();
  }

  private boolean holds(Held each, Element element, Set<LayerKind> layers, MarkedDate washed) {
    YesNoUnknown itsModel =
        each.row()
            .model()
            .isOf(element, each.row().limit().layer().map(Set::of).orElse(layers), anatomy);
    return each.inPlaceOf().isEmpty()
        ? itsModel != YesNoUnknown.NO
        : itsModel == YesNoUnknown.YES
            && each.row()
                .from()
                .map(from -> washed.certainlyNotBefore(MarkedDate.of(from)))
                .orElse(true);
  }
}
