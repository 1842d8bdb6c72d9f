package org.ensemblerules.strength;

import java.util.Comparator;
import java.util.List;
import org.ensemblerules.measure.Rational;

/** Forms one specimen's value from its reading, exactly. */
final class SpecimenValues {
  private SpecimenValues() {}

  static Rational of(Specimen specimen, SpecimenValue rule) throws Stopped {
    Reading reading = specimen.reading();
    if (rule instanceof SpecimenValue.AsRead && reading instanceof Reading.Single single) {
      return Rational.of(single.value().value());
    }
    if (rule instanceof SpecimenValue.HighestPeak && reading instanceof Reading.Peaks peaks) {
      return meanOfHighest(peaks, 1);
    }
    if (rule instanceof SpecimenValue.MeanOfHighestPeaks wanted) {
      if (reading instanceof Reading.Peaks peaks && peaks.peaks().size() >= wanted.peaks()) {
        return meanOfHighest(peaks, wanted.peaks());
      }
      if (reading instanceof Reading.MeanOfHighestPeaks mean && mean.count() == wanted.peaks()) {
        return Rational.of(mean.mean().value());
      }
    }
    throw new Stopped(
        NoResultReason.PEAKS_MISSING,
        "specimen " + specimen.id() + " has " + reading + "; needed: " + rule.text());
  }

  private static Rational meanOfHighest(Reading.Peaks reading, int count) {
    List<Rational> highest =
        reading.peaks().stream()
            .map(peak -> Rational.of(peak.value()))
            .sorted(Comparator.reverseOrder())
            .limit(count)
            .toList();
    return Sample.of(highest).mean();
  }
}
