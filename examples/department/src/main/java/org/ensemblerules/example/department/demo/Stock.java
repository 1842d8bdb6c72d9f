package org.ensemblerules.example.department.demo;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.Set;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.LayerKind;
import org.ensemblerules.gear.Part;
import org.ensemblerules.gear.Site;

/** What the department buys: which pieces come in layers, and which parts its models lack. */
final class Stock {
  private static final Set<ElementKind> GARMENTS =
      EnumSet.of(ElementKind.COAT, ElementKind.TROUSERS, ElementKind.COVERALL);

  private Stock() {}

  /** Whether shell and liner come apart and carry labels of their own. */
  static boolean layered(ElementKind kind) {
    return GARMENTS.contains(kind);
  }

  /** Parts that the table knows and that this department's models do not have. */
  static Set<Site> notFitted(ElementKind kind) {
    Set<Site> sites = new HashSet<>();
    if (layered(kind)) {
      Arrays.stream(Part.values())
          .map(part -> Site.of(part, LayerKind.WINTER_LINER))
          .forEach(sites::add);
      sites.add(Site.of(Part.LABEL, LayerKind.MOISTURE_BARRIER));
      sites.add(Site.of(Part.LABEL, LayerKind.THERMAL_LINER));
    } else if (kind == ElementKind.HELMET) {
      sites.add(Site.of(Part.GOGGLES));
    } else if (kind == ElementKind.GLOVES) {
      sites.add(Site.of(Part.CUFF));
      sites.add(Site.of(Part.HOOK_AND_LOOP));
    } else if (kind == ElementKind.FOOTWEAR) {
      sites.add(Site.of(Part.ZIPPER));
      sites.add(Site.of(Part.HOOK_AND_LOOP));
      sites.add(Site.of(Part.HARDWARE));
    }
    return Set.copyOf(sites);
  }
}
