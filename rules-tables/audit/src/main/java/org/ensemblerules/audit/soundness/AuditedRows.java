package org.ensemblerules.audit.soundness;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableListMultimap;
import com.google.common.collect.ImmutableMap;
import com.google.common.collect.ImmutableSet;
import com.google.common.collect.Multimaps;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.ensemblerules.GearRules;
import org.ensemblerules.effect.ForbidRow;
import org.ensemblerules.effect.PermissionRow;
import org.ensemblerules.gear.AnatomyRow;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.LayerKind;
import org.ensemblerules.gear.Site;
import org.ensemblerules.gear.Use;
import org.ensemblerules.ruleset.Overlay;
import org.ensemblerules.source.Row;

/**
 * The rows under audit by their type, the layer that each belongs to, and what the anatomy among
 * them says there is.
 */
final class AuditedRows {
  /** A kind of element in a use. */
  record Gear(ElementKind element, Use use) {
    @Override
    public String toString() {
      return element + " " + use;
    }
  }

  private final ImmutableList<Row> all;
  private final ImmutableListMultimap<Class<?>, Row> byType;
  private final ImmutableListMultimap<Gear, Site> sites;

  private final ImmutableMap<Row, Overlay> overlays;

  AuditedRows(List<? extends Row> rows) {
    this(rows, List.of());
  }

  AuditedRows(GearRules rules) {
    this(rules.tables().rows(), rules.overlays());
  }

  private AuditedRows(List<? extends Row> rows, List<Overlay> overlays) {
    this.all = ImmutableList.copyOf(rows);
    ImmutableMap.Builder<Row, Overlay> laid = ImmutableMap.builder();
    overlays.forEach(overlay -> overlay.rows().all().forEach(row -> laid.put(row, overlay)));
    this.overlays = laid.buildOrThrow();
    this.byType = Multimaps.index(all, Row::getClass);
    this.sites =
        of(AnatomyRow.class).stream()
            .collect(
                ImmutableListMultimap.toImmutableListMultimap(
                    row -> new Gear(row.element(), row.use()), AnatomyRow::site));
  }

  List<Row> all() {
    return all;
  }

  ImmutableSet<Class<?>> types() {
    return byType.keySet();
  }

  <R extends Row> List<R> of(Class<R> type) {
    return byType.get(type).stream().map(type::cast).toList();
  }

  /** The overlay that a row belongs to; empty for a row of the editions. */
  Optional<Overlay> overlay(Row row) {
    return Optional.ofNullable(overlays.get(row));
  }

  boolean isOfTheEditions(Row row) {
    return !overlays.containsKey(row);
  }

  /** Whether two rows are of the editions, or of one and the same overlay. */
  boolean sameLayer(Row one, Row other) {
    return overlay(one).equals(overlay(other));
  }

  /** The rows that permit what no other row forbids, from whatever day on. */
  List<PermissionRow> permitted() {
    List<ForbidRow> forbidden = of(ForbidRow.class);
    return of(PermissionRow.class).stream()
        .filter(
            row ->
                forbidden.stream()
                    .noneMatch(no -> no.task() == row.task() && no.entity() == row.entity()))
        .toList();
  }

  boolean hasAnatomy() {
    return !sites.isEmpty();
  }

  Set<Gear> gear() {
    return sites.keySet();
  }

  List<Site> sites(Gear gear) {
    return sites.get(gear);
  }

  boolean has(Gear gear, Optional<LayerKind> layer) {
    return layer.isEmpty()
        ? sites.containsKey(gear)
        : sites.get(gear).stream().anyMatch(site -> site.layer().equals(layer));
  }
}
