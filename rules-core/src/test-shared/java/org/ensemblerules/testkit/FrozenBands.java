package org.ensemblerules.testkit;

import java.util.Arrays;
import java.util.Optional;
import java.util.Set;
import org.ensemblerules.defect.Band;
import org.ensemblerules.defect.ExtentKind;
import org.ensemblerules.defect.Grade;
import org.ensemblerules.measure.Quantity;
import org.ensemblerules.measure.Unit;

/** Bands written shortly: quantities as value and unit, null where a band has no edge. */
final class FrozenBands {
  private FrozenBands() {}

  static Band any() {
    return new Band.Presence();
  }

  static Band grades(Grade... grades) {
    return new Band.Grades(Set.copyOf(Arrays.asList(grades)));
  }

  static Band length(String over, String upTo) {
    return new Band.Range(ExtentKind.LENGTH, quantity(over), quantity(upTo));
  }

  static Band area(String over, String upTo) {
    return new Band.Range(ExtentKind.AREA, quantity(over), quantity(upTo));
  }

  private static Optional<Quantity> quantity(String text) {
    if (text == null) {
      return Optional.empty();
    }
    String[] words = text.split(" ", -1);
    return Arrays.stream(Unit.values())
        .filter(unit -> unit.symbol().equals(words[1]))
        .map(unit -> Quantity.of(words[0], unit))
        .findFirst();
  }
}
