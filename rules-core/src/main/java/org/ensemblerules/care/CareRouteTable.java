package org.ensemblerules.care;

import com.google.common.collect.ImmutableList;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.ensemblerules.effect.HandlingDuty;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.LayerKind;
import org.ensemblerules.gear.Use;
import org.ensemblerules.source.Checked;
import org.ensemblerules.source.FaultCode;
import org.ensemblerules.source.TableFault;

/**
 * What is done to gear after what it met. Whatever the table speaks of, it speaks of for every
 * exposure: a sound table has exactly one row for each, so that no exposure goes unanswered.
 *
 * @since 0.1
 */
public final class CareRouteTable {
  private record Place(ElementKind element, Use use, Optional<LayerKind> layer) {
    @Override
    public String toString() {
      return element + " " + use + layer.map(kind -> " " + kind).orElse("");
    }
  }

  private final ImmutableList<CareRouteRow> rows;
  private final Map<Place, Map<Exposure, CareRouteRow>> places;

  private CareRouteTable(List<CareRouteRow> rows, Map<Place, Map<Exposure, CareRouteRow>> places) {
    this.rows = ImmutableList.copyOf(rows);
    this.places = places;
  }

  /**
   * Compiles rows.
   *
   * @param rows the rows; not null
   * @return the table, or a fault for each exposure that a place has twice or not at all; for each
   *     element with and without layers; for each row for a terrorism agent that lets gear return
   *     or cleans it; for each row for a hazard that washes before it is found out what can be
   *     washed; and for each row for the unknown that is milder than one for something known,
   *     retirement aside
   */
  public static Checked<CareRouteTable, TableFault> of(List<CareRouteRow> rows) {
    List<TableFault> faults = new ArrayList<>();
    Map<Place, Map<Exposure, CareRouteRow>> places = new LinkedHashMap<>();
    for (CareRouteRow row : rows) {
      Place place = new Place(row.element(), row.use(), row.layer());
      CareRouteRow other =
          places
              .computeIfAbsent(place, each -> new EnumMap<>(Exposure.class))
              .putIfAbsent(row.exposure(), row);
      if (other != null) {
        fault(
            faults,
            FaultCode.DUPLICATE,
            row,
            "exposure",
            row.exposure() + " on " + place,
            "each once, not " + other.key());
      }
      agentsEnd(row, faults);
      nothingForbiddenIsWashedFirst(row, faults);
    }
    places.forEach(
        (place, each) -> {
          if (place.layer().isPresent()
              && places.containsKey(new Place(place.element(), place.use(), Optional.empty()))) {
            fault(
                faults,
                FaultCode.NOT_ALLOWED,
                each.values().iterator().next(),
                "layers",
                place.toString(),
                "an element with layers or without, not both");
          }
          complete(place, each, faults);
        });
    return Checked.of(faults, () -> new CareRouteTable(rows, places));
  }

  private static void agentsEnd(CareRouteRow row, List<TableFault> faults) {
    boolean ends = row.asks(CareAction.NO_RETURN);
    if (row.exposure() == Exposure.CBRN_AGENT && !ends) {
      fault(
          faults,
          FaultCode.NOT_ALLOWED,
          row,
          "steps",
          "no NO_RETURN",
          "NO_RETURN after CBRN_AGENT");
    }
    if (ends && row.steps().stream().anyMatch(step -> step.action().leadsBack())) {
      fault(
          faults,
          FaultCode.NOT_ALLOWED,
          row,
          "steps",
          actions(row).toString(),
          "nothing that leads back where NO_RETURN");
    }
  }

  private static void nothingForbiddenIsWashedFirst(CareRouteRow row, List<TableFault> faults) {
    if (row.handling().contains(HandlingDuty.DO_NOT_WASH)
        && row.steps().stream().anyMatch(step -> step.action().leadsBack())
        && !row.asks(CareAction.FIND_OUT)) {
      fault(
          faults,
          FaultCode.NOT_ALLOWED,
          row,
          "steps",
          actions(row).toString(),
          "FIND_OUT where handling is DO_NOT_WASH");
    }
  }

  private static void complete(
      Place place, Map<Exposure, CareRouteRow> rows, List<TableFault> faults) {
    Set<Exposure> missing = EnumSet.allOf(Exposure.class);
    missing.removeAll(rows.keySet());
    CareRouteRow any = rows.values().iterator().next();
    if (!missing.isEmpty()) {
      fault(
          faults,
          FaultCode.GAP,
          any,
          "exposure",
          "no row for " + missing + " on " + place,
          "a row for each");
    }
    CareRouteRow unknown = rows.get(Exposure.UNKNOWN);
    if (unknown == null) {
      return;
    }
    if (!unknown.asks(CareAction.ISOLATE) || !unknown.asks(CareAction.FIND_OUT)) {
      fault(
          faults,
          FaultCode.NOT_ALLOWED,
          unknown,
          "steps",
          actions(unknown).toString(),
          "ISOLATE and FIND_OUT");
    }
    for (CareRouteRow known : rows.values()) {
      List<RouteStep> lacking =
          known.steps().stream()
              .filter(step -> step.action() != CareAction.NO_RETURN)
              .filter(step -> unknown.steps().stream().noneMatch(own -> own.holds(step)))
              .toList();
      if (!lacking.isEmpty() || !unknown.handling().containsAll(known.handling())) {
        fault(
            faults,
            FaultCode.LOOSER,
            unknown,
            "steps",
            "milder than " + known.key() + ", which asks for " + lacking + " " + known.handling(),
            "at least what each known exposure asks for, but for NO_RETURN");
      }
    }
  }

  private static List<CareAction> actions(CareRouteRow row) {
    return row.steps().stream().map(RouteStep::action).toList();
  }

  private static void fault(
      List<TableFault> faults,
      FaultCode code,
      CareRouteRow row,
      String field,
      String found,
      String allowed) {
    faults.add(new TableFault(code, row.key(), field, found, allowed));
  }

  /**
   * Finds the rows for what an element met.
   *
   * @param element the kind of element; not null
   * @param use its use; not null
   * @param exposure what it met; not null
   * @return one row for each of its layers, or the one for the element, in table order; empty if
   *     the table does not speak of such elements
   */
  public List<CareRouteRow> rows(ElementKind element, Use use, Exposure exposure) {
    return places.entrySet().stream()
        .filter(each -> each.getKey().element() == element && each.getKey().use() == use)
        .flatMap(each -> Optional.ofNullable(each.getValue().get(exposure)).stream())
        .collect(ImmutableList.toImmutableList());
  }

  /**
   * Returns all rows.
   *
   * @return the rows in table order; never null
   */
  public List<CareRouteRow> rows() {
    return rows;
  }
}
