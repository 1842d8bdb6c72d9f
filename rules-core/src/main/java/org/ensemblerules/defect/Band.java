package org.ensemblerules.defect;

import com.google.common.collect.Sets;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.ensemblerules.measure.Dimension;
import org.ensemblerules.measure.Quantity;
import org.ensemblerules.source.InvalidValueException;

/**
 * The extents that one row is for. Ranges are open below and closed above: {@code (over, upTo]}. So
 * a size x lies in one if {@code over < x <= upTo}, compared exactly across units and never
 * rounded. That a limit belongs to the band below it is our own reading of limits given as "up to".
 *
 * @since 0.1
 */
public sealed interface Band {
  /** Any presence of the defect. */
  record Presence() implements Band {
    @Override
    public ExtentKind kind() {
      return ExtentKind.PRESENCE;
    }

    @Override
    public boolean holds(Extent extent) {
      return true;
    }

    @Override
    public String toString() {
      return "any";
    }
  }

  /**
   * A range of lengths or areas.
   *
   * @param kind LENGTH or AREA; not null
   * @param over the limit it lies above, in the unit and digits published; empty from zero on
   * @param upTo the limit it reaches, included; empty without end
   */
  record Range(ExtentKind kind, Optional<Quantity> over, Optional<Quantity> upTo) implements Band {
    /**
     * Checks the limits.
     *
     * @throws InvalidValueException if a limit is of another dimension, not above zero, or the
     *     range is empty
     */
    public Range {
      InvalidValueException.require(
          kind == ExtentKind.LENGTH || kind == ExtentKind.AREA, "Band.kind", kind, "LENGTH, AREA");
      Dimension dimension = kind == ExtentKind.LENGTH ? Dimension.LENGTH : Dimension.AREA;
      over.ifPresent(limit -> requireLimit("Band.over", limit, dimension));
      upTo.ifPresent(limit -> requireLimit("Band.upTo", limit, dimension));
      InvalidValueException.require(
          over.isEmpty() || upTo.isEmpty() || over.get().compareSize(upTo.get()) < 0,
          "Band.over",
          over.map(Quantity::toString).orElse(""),
          "less than upTo");
    }

    @Override
    public boolean holds(Extent extent) {
      Quantity given;
      if (extent instanceof Extent.Length length && kind == ExtentKind.LENGTH) {
        given = length.length();
      } else if (extent instanceof Extent.Area area && kind == ExtentKind.AREA) {
        given = area.area();
      } else {
        return false;
      }
      return (over.isEmpty() || given.compareSize(over.get()) > 0)
          && (upTo.isEmpty() || given.compareSize(upTo.get()) <= 0);
    }

    @Override
    public String toString() {
      return (over.map(limit -> "over " + limit).orElse("")
              + upTo.map(limit -> " up to " + limit).orElse(""))
          .strip();
    }

    private static void requireLimit(String field, Quantity limit, Dimension dimension) {
      InvalidValueException.require(
          limit.unit().dimension() == dimension && limit.isPositive(),
          field,
          limit,
          "above zero, of dimension " + dimension);
    }
  }

  /**
   * A range of counts.
   *
   * @param over the count it lies above, 0 or more
   * @param upTo the count it reaches, included; {@link Integer#MAX_VALUE} without end
   */
  record Counts(int over, int upTo) implements Band {
    /**
     * Checks the limits.
     *
     * @throws InvalidValueException if the range is empty or starts below 0
     */
    public Counts {
      InvalidValueException.require(
          over >= 0 && over < upTo, "Band.over", over, "0 or more, less than upTo " + upTo);
    }

    @Override
    public ExtentKind kind() {
      return ExtentKind.COUNT;
    }

    @Override
    public boolean holds(Extent extent) {
      return extent instanceof Extent.Count given && given.count() > over && given.count() <= upTo;
    }

    @Override
    public String toString() {
      return "count " + (over + 1) + (upTo == Integer.MAX_VALUE ? " or more" : " to " + upTo);
    }
  }

  /**
   * A set of grades of one scale.
   *
   * @param grades at least one, all of one scale; not null
   */
  record Grades(Set<Grade> grades) implements Band {
    /**
     * Checks the grades.
     *
     * @throws InvalidValueException if there is none or they are of several scales
     */
    public Grades {
      grades = Sets.immutableEnumSet(Objects.requireNonNull(grades, "grades"));
      InvalidValueException.require(
          grades.stream().map(Grade::scale).distinct().count() == 1,
          "Band.grades",
          grades,
          "at least one, all of one scale");
    }

    /**
     * Returns the scale.
     *
     * @return the scale of the grades; never null
     */
    public GradeScale scale() {
      return grades.iterator().next().scale();
    }

    @Override
    public ExtentKind kind() {
      return ExtentKind.GRADE;
    }

    @Override
    public boolean holds(Extent extent) {
      return extent instanceof Extent.Graded given && grades.contains(given.grade());
    }

    @Override
    public String toString() {
      return grades.stream().map(Grade::name).collect(Collectors.joining(" or "));
    }
  }

  /**
   * Returns by what the extent is told.
   *
   * @return the kind; never null
   */
  ExtentKind kind();

  /**
   * Tells whether an extent lies in the band.
   *
   * @param extent the extent; not null
   * @return true if it does
   */
  boolean holds(Extent extent);

  /**
   * Tells whether an extent certainly lies outside the band: it is told by what the band asks for,
   * and the band does not hold it.
   *
   * @param extent the extent; not null
   * @return true if it does; false if it lies in the band or must first be measured
   */
  default boolean excludes(Extent extent) {
    boolean sameScale =
        !(this instanceof Grades grades && extent instanceof Extent.Graded given)
            || grades.scale() == given.grade().scale();
    return sameScale && extent.kind().equals(Optional.of(kind())) && !holds(extent);
  }

  /**
   * Tells whether an extent can lie in this band and in another, or nobody can say because they
   * tell it in several ways.
   *
   * @param other the other; not null
   * @return false only if no extent lies in both
   */
  default boolean meets(Band other) {
    if (this instanceof Range one && other instanceof Range two && one.kind() == two.kind()) {
      return above(one.upTo(), two.over()) && above(two.upTo(), one.over());
    }
    if (this instanceof Counts one && other instanceof Counts two) {
      return one.upTo() > two.over() && two.upTo() > one.over();
    }
    if (this instanceof Grades one && other instanceof Grades two && one.scale() == two.scale()) {
      return one.grades().stream().anyMatch(two.grades()::contains);
    }
    return true;
  }

  private static boolean above(Optional<Quantity> upTo, Optional<Quantity> over) {
    return upTo.isEmpty() || over.isEmpty() || upTo.get().compareSize(over.get()) > 0;
  }
}
