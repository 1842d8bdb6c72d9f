package org.ensemblerules.pages;

import java.util.List;
import java.util.Set;
import org.ensemblerules.gear.ElementKind;

/** Headings for the kinds of element that a family is for. */
final class Elements {
  private static final Set<ElementKind> GARMENTS =
      Set.of(ElementKind.COAT, ElementKind.TROUSERS, ElementKind.COVERALL);
  private static final Set<ElementKind> COVERS =
      Set.of(ElementKind.SHROUD, ElementKind.HELMET_COVER);

  private Elements() {}

  static String heading(List<ElementKind> elements) {
    if (GARMENTS.containsAll(elements)) {
      return "Coats, trousers, coveralls";
    } else if (COVERS.containsAll(elements)) {
      return "Shrouds and helmet covers";
    } else if (elements.size() > 1) {
      return "Several kinds of element";
    }
    return switch (elements.get(0)) {
      case HOOD -> "Hoods";
      case GLOVES -> "Gloves";
      case FOOTWEAR -> "Footwear";
      case HELMET -> "Helmets";
      case DRAG_RESCUE_DEVICE -> "Drag rescue devices";
      default -> throw new IllegalStateException("no heading for " + elements);
    };
  }

  /** The garments that a family is for, if not for all of them; the kinds, if for several. */
  static String only(List<ElementKind> elements) {
    boolean alone =
        elements.size() == 1 && !GARMENTS.containsAll(elements) && !COVERS.containsAll(elements);
    Set<ElementKind> all = Set.copyOf(elements);
    boolean whole = alone || all.equals(GARMENTS) || all.equals(COVERS);
    return whole ? "" : Words.of(elements);
  }

  static boolean onlyProximity(List<ElementKind> elements) {
    return COVERS.containsAll(elements);
  }
}
