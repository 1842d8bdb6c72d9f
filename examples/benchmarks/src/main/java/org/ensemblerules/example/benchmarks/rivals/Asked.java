package org.ensemblerules.example.benchmarks.rivals;

import org.ensemblerules.defect.DefectKind;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.Site;
import org.ensemblerules.gear.Use;

/**
 * The question: a finding on an element; what does it call for?
 *
 * @param element the kind of element; not null
 * @param use its use; not null
 * @param site where; not null
 * @param defect what is wrong; not null
 * @param told how large it is; not null
 */
public record Asked(ElementKind element, Use use, Site site, DefectKind defect, Told told) {
  /** Returns the place as text, for rivals that know only text. */
  String place() {
    return element + " " + use + " " + site;
  }

  /** Returns a number of the place, from 0. */
  int placeNumber() {
    return placeNumber(element, use, site);
  }

  /** Returns the number of a place, from 0. */
  static int placeNumber(ElementKind element, Use use, Site site) {
    return (element.ordinal() * Use.values().length + use.ordinal()) * Site.count() + site.index();
  }

  /** Returns how many numbers of places there are. */
  static int placeNumbers() {
    return ElementKind.values().length * Use.values().length * Site.count();
  }
}
