package org.ensemblerules.defect;

import java.util.Objects;
import java.util.Optional;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.gear.Site;
import org.ensemblerules.source.InvalidValueException;

/**
 * Something wrong that somebody saw, or an event that somebody reports.
 *
 * @param id the owner's name for it; not null
 * @param site the part, with its layer if known; not null
 * @param place where on the part, in the finder's words, up to 300 characters, may be empty; not
 *     null
 * @param defect what is wrong; not null
 * @param extent how large it is, as far as measured; not null
 * @param seen when; not null
 * @since 0.1
 */
public record Finding(
    FindingId id, Site site, String place, DefectKind defect, Extent extent, MarkedDate seen) {
  /**
   * Checks the text.
   *
   * @throws InvalidValueException if the place is too long or holds control characters
   */
  public Finding {
    Objects.requireNonNull(id, "id");
    Objects.requireNonNull(site, "site");
    requirePlace(place);
    Objects.requireNonNull(defect, "defect");
    Objects.requireNonNull(extent, "extent");
    Objects.requireNonNull(seen, "seen");
  }

  /**
   * Checks a place alone.
   *
   * @param place where on the part, up to 300 characters, may be empty; not null
   * @return the place
   * @throws InvalidValueException if it is too long, blank and not empty, or holds control
   *     characters
   */
  public static String requirePlace(String place) {
    return place.isEmpty() ? place : InvalidValueException.requireText("Finding.place", place, 300);
  }

  /**
   * Returns what a finding on a place that nobody has tried is once the strength check that its row
   * calls for is passed for it.
   *
   * @param on when it was passed; not null
   * @return the finding with the grade that the pass shows, as seen on that date; empty if its
   *     extent is not graded so
   */
  public Optional<Finding> oncePassed(MarkedDate on) {
    return extent instanceof Extent.Graded graded
        ? graded
            .grade()
            .oncePassed()
            .map(held -> new Finding(id, site, place, defect, new Extent.Graded(held), on))
        : Optional.empty();
  }

  /**
   * Says what was seen, on one line.
   *
   * @return the text; never null
   */
  public String text() {
    return defect
        + " at "
        + site
        + (place.isEmpty() ? "" : " (" + place + ")")
        + (extent instanceof Extent.NotMeasured ? "" : ", " + extent);
  }
}
