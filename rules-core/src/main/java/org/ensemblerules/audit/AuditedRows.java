package org.ensemblerules.audit;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableListMultimap;
import com.google.common.collect.ImmutableSet;
import com.google.common.collect.Multimaps;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.ensemblerules.gear.AnatomyRow;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.LayerKind;
import org.ensemblerules.gear.Site;
import org.ensemblerules.gear.Use;
import org.ensemblerules.source.Row;

/** The rows under audit by their type, and what the anatomy among them says there is. */
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

  AuditedRows(List<? extends Row> rows) {
    this.all = ImmutableList.copyOf(rows);
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
