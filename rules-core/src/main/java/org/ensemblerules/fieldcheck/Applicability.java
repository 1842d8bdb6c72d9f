package org.ensemblerules.fieldcheck;

import com.google.common.collect.ImmutableList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.function.Predicate;
import org.ensemblerules.effect.Check;
import org.ensemblerules.gear.AnatomyRow;
import org.ensemblerules.gear.AnatomyTable;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.LayerKind;
import org.ensemblerules.gear.Part;
import org.ensemblerules.gear.Site;
import org.ensemblerules.gear.Use;
import org.ensemblerules.source.InvalidValueException;

/**
 * Whether a kind of element has anything that a check looks at.
 *
 * @since 0.1
 */
public sealed interface Applicability {
  /**
   * It has.
   *
   * @param sites where the check looks, in table order, at least one; not null
   */
  record Applies(List<Site> sites) implements Applicability {
    /**
     * Copies the sites.
     *
     * @throws InvalidValueException if there is none
     */
    public Applies {
      sites = ImmutableList.copyOf(sites);
      InvalidValueException.require(!sites.isEmpty(), "Applies.sites", sites, "at least one");
    }
  }

  /**
   * It has not, as a proximity garment has no trim: the check is neither passed nor failed, and
   * says nothing.
   *
   * @param check the check; not null
   * @param element the kind of element; not null
   * @param use its use; not null
   */
  record NotApplicable(Check check, ElementKind element, Use use) implements Applicability {
    /** Checks for nulls. */
    public NotApplicable {
      Objects.requireNonNull(check, "check");
      Objects.requireNonNull(element, "element");
      Objects.requireNonNull(use, "use");
    }
  }

  /**
   * Asks whether a check applies.
   *
   * @param check the check; not null
   * @param element the kind of element; not null
   * @param use its use; not null
   * @param anatomy which parts exist; not null
   * @return the answer; never null
   */
  static Applicability of(Check check, ElementKind element, Use use, AnatomyTable anatomy) {
    List<Site> sites =
        anatomy.of(element, use).stream()
            .map(AnatomyRow::site)
            .filter(lookedAt(check))
            .collect(ImmutableList.toImmutableList());
    return sites.isEmpty() ? new NotApplicable(check, element, use) : new Applies(sites);
  }

  private static Predicate<Site> lookedAt(Check check) {
    return switch (check) {
      case TRIM_BY_FLASHLIGHT -> parts(Part.TRIM);
      case SEAM_PULL -> parts(Part.SEAM_MAJOR_A, Part.SEAM_MAJOR_B, Part.SEAM_MINOR, Part.SEAM);
      case LINER_LEAKAGE, BARRIER_UNDER_PRESSURE -> layers(LayerKind.MOISTURE_BARRIER);
      case LIGHT_THROUGH_LINER, LINER_INSPECTION ->
          layers(LayerKind.LINER_SYSTEM, LayerKind.MOISTURE_BARRIER, LayerKind.THERMAL_LINER);
      case WATER_ENTRY ->
          parts(Part.FOOTWEAR_UPPER, Part.SOLE, Part.GLOVE_SHELL, Part.GLOVE_BARRIER);
      case CLOSURE_OPERATION ->
          parts(
              Part.CLOSURE,
              Part.HOOK_AND_LOOP,
              Part.ZIPPER,
              Part.SNAPS,
              Part.HOOKS_AND_D_RINGS,
              Part.LINER_ATTACHMENT);
      case SUSPENSION_AND_RETENTION -> parts(Part.SUSPENSION, Part.HEADBAND, Part.RETENTION_SYSTEM);
      case LIGHT_THROUGH_HOOD -> parts(Part.PARTICULATE_BLOCKING_LAYER);
      case DRAG_RESCUE_ROUTING ->
          parts(Part.DRAG_RESCUE_DEVICE, Part.DRAG_RESCUE_STRAP, Part.DRAG_RESCUE_HANDLE);
      default -> site -> true;
    };
  }

  private static Predicate<Site> parts(Part... parts) {
    return site -> Arrays.asList(parts).contains(site.part());
  }

  private static Predicate<Site> layers(LayerKind... layers) {
    return site -> site.layer().filter(Arrays.asList(layers)::contains).isPresent();
  }
}
