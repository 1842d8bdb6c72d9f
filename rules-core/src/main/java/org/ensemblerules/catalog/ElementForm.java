package org.ensemblerules.catalog;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.Maps;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.ensemblerules.defect.DefectKind;
import org.ensemblerules.defect.DefectRow;
import org.ensemblerules.gear.AnatomyRow;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.LayerKind;
import org.ensemblerules.gear.Site;
import org.ensemblerules.gear.Use;
import org.ensemblerules.inspection.CriterionRow;
import org.ensemblerules.inspection.InspectionKind;
import org.ensemblerules.ruleset.Tables;

/**
 * What can be entered of one kind of element in one use.
 *
 * @param kind the kind of element; not null
 * @param use its use; not null
 * @param layers its layers, none if it has no separate ones; not null
 * @param sites its parts, in the order of the tables; at least one
 * @param criteria what each kind of inspection looks at, in order; every kind is there; not null
 * @since 0.1
 */
public record ElementForm(
    ElementKind kind,
    Use use,
    List<LayerKind> layers,
    List<SiteForm> sites,
    Map<InspectionKind, List<CriterionRow>> criteria) {
  /** Copies the collections. */
  public ElementForm {
    Objects.requireNonNull(kind, "kind");
    Objects.requireNonNull(use, "use");
    layers = ImmutableList.copyOf(layers);
    sites = ImmutableList.copyOf(sites);
    criteria = Maps.immutableEnumMap(criteria);
  }

  static Optional<ElementForm> of(Tables tables, ElementKind kind, Use use) {
    List<AnatomyRow> parts = tables.anatomy().of(kind, use);
    if (parts.isEmpty()) {
      return Optional.empty();
    }
    Map<InspectionKind, List<CriterionRow>> criteria = new EnumMap<>(InspectionKind.class);
    for (InspectionKind inspection : InspectionKind.values()) {
      criteria.put(inspection, tables.criteria().required(inspection, kind, use));
    }
    return Optional.of(
        new ElementForm(
            kind,
            use,
            parts.stream()
                .flatMap(part -> part.site().layer().stream())
                .distinct()
                .sorted()
                .toList(),
            parts.stream().map(part -> site(tables, part)).toList(),
            criteria));
  }

  private static SiteForm site(Tables tables, AnatomyRow part) {
    Site site = part.site();
    ImmutableList.Builder<DefectForm> defects = ImmutableList.builder();
    for (DefectKind defect : DefectKind.values()) {
      List<DefectRow> bands = tables.defects().bands(part.element(), part.use(), site, defect);
      if (!bands.isEmpty()) {
        defects.add(DefectForm.of(defect, bands));
      }
    }
    return new SiteForm(site, part.presence(), defects.build());
  }
}
