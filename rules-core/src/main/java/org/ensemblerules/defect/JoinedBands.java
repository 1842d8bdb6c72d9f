package org.ensemblerules.defect;

import java.util.List;
import java.util.stream.Stream;

/**
 * The bands of a cell that join, as the edges between them. Cells whose bands are equal share one,
 * so that few are looked at however many rows there are.
 */
final class JoinedBands {
  /** The bands of a cell without rows. */
  static final JoinedBands NONE = new JoinedBands(List.of());

  private static final int MUST_MEASURE = 0;

  private final int bands;
  private final ExtentKind by;
  private final SizeEdges sizes;
  private final int[] counts;
  private final int[] grades;

  /** Takes bands in their order, without a gap or an overlap. */
  JoinedBands(List<Band> inOrder) {
    bands = inOrder.size();
    by = inOrder.isEmpty() ? ExtentKind.PRESENCE : inOrder.get(0).kind();
    sizes =
        new SizeEdges(
            only(inOrder, Band.Range.class).flatMap(range -> range.upTo().stream()).toList());
    counts = only(inOrder, Band.Counts.class).mapToInt(Band.Counts::upTo).toArray();
    grades = new int[Grade.values().length];
    for (int i = 0; i < bands; i++) {
      if (inOrder.get(i) instanceof Band.Grades some) {
        for (Grade grade : some.grades()) {
          grades[grade.ordinal()] = i + 1;
        }
      }
    }
  }

  private static <B extends Band> Stream<B> only(List<Band> bands, Class<B> type) {
    return bands.stream().filter(type::isInstance).map(type::cast);
  }

  /**
   * Returns the number of the band that an extent lies in, from 1; 0 if the extent must first be
   * measured or there is no band.
   */
  int number(Extent extent) {
    if (by == ExtentKind.PRESENCE) {
      return bands;
    }
    if (by == ExtentKind.GRADE && extent instanceof Extent.Graded given) {
      return grades[given.grade().ordinal()];
    }
    if (by == ExtentKind.LENGTH && extent instanceof Extent.Length given) {
      return 1 + sizes.below(given.length());
    }
    if (by == ExtentKind.AREA && extent instanceof Extent.Area given) {
      return 1 + sizes.below(given.area());
    }
    if (by == ExtentKind.COUNT && extent instanceof Extent.Count given) {
      return reachedBy(given.count());
    }
    return MUST_MEASURE;
  }

  /** The last band has no end, so that every count reaches one. */
  private int reachedBy(int count) {
    int number = 1;
    while (counts[number - 1] < count) {
      number++;
    }
    return number;
  }
}
