package org.ensemblerules.care;

import com.google.common.collect.ImmutableList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.ensemblerules.defect.DefectKind;
import org.ensemblerules.gear.Part;
import org.ensemblerules.gear.Site;
import org.ensemblerules.source.InvalidValueException;

/**
 * Whether a wash counts as a cleaning.
 *
 * @since 0.1
 */
public sealed interface WashAnswer {
  /**
   * Returns the limits of manufacturers' instructions that the wash was held to in place of
   * stricter ones: the answer rests on them.
   *
   * @return the limits, each with the row in whose place it stands; never null
   */
  List<Loosened> loosened();

  /**
   * It kept every limit.
   *
   * @param kept the rows it kept, at least one; not null
   * @param loosened limits that stand in place of stricter ones; not null
   */
  record Counts(List<CareLimitRow> kept, List<Loosened> loosened) implements WashAnswer {
    /**
     * Copies the lists.
     *
     * @throws InvalidValueException if there is none
     */
    public Counts {
      kept = ImmutableList.copyOf(kept);
      loosened = ImmutableList.copyOf(loosened);
      InvalidValueException.require(!kept.isEmpty(), "Counts.kept", kept, "at least one");
    }
  }

  /**
   * It did not keep every limit, or is not known to have: no cleaning.
   *
   * @param deviations what was not kept, in table order, at least one; not null
   * @param loosened limits that stand in place of stricter ones; not null
   */
  record OutsideLimits(List<WashDeviation> deviations, List<Loosened> loosened)
      implements WashAnswer {
    /**
     * Copies the lists.
     *
     * @throws InvalidValueException if there is none
     */
    public OutsideLimits {
      deviations = ImmutableList.copyOf(deviations);
      loosened = ImmutableList.copyOf(loosened);
      InvalidValueException.require(
          !deviations.isEmpty(), "OutsideLimits.deviations", deviations, "at least one");
    }

    /**
     * Returns what the wash makes of the element.
     *
     * @return each finding once; empty if the wash only does not count
     */
    public List<WashFinding> findings() {
      Set<WashFinding> findings = new LinkedHashSet<>();
      for (WashDeviation deviation : deviations) {
        deviation
            .finding()
            .ifPresent(
                defect -> findings.add(new WashFinding(defect, Site.of(Part.WHOLE_ELEMENT))));
      }
      return ImmutableList.copyOf(findings);
    }
  }

  /** No row says how such an element is washed: the wash does not count. */
  record NoRule() implements WashAnswer {
    @Override
    public List<Loosened> loosened() {
      return List.of();
    }
  }

  /**
   * An event that a wash makes of an element, to be evaluated.
   *
   * @param defect the event; not null
   * @param site where; not null
   */
  record WashFinding(DefectKind defect, Site site) {
    /** Checks for nulls. */
    public WashFinding {
      Objects.requireNonNull(defect, "defect");
      Objects.requireNonNull(site, "site");
    }
  }
}
