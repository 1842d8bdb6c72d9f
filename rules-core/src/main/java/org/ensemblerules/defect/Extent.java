package org.ensemblerules.defect;

import java.util.Objects;
import java.util.Optional;
import org.ensemblerules.measure.Dimension;
import org.ensemblerules.measure.Quantity;
import org.ensemblerules.source.InvalidValueException;

/**
 * How large a defect is, as far as anyone has said. Sizes stay in the unit and digits given; a
 * {@link Band} compares them exactly.
 *
 * @since 0.1
 */
public sealed interface Extent {
  /** Nobody has said. Right for defects whose presence decides; for others it must be measured. */
  record NotMeasured() implements Extent {
    @Override
    public Optional<ExtentKind> kind() {
      return Optional.empty();
    }

    @Override
    public String toString() {
      return "extent not measured";
    }
  }

  /**
   * A length.
   *
   * @param length the greatest length, above zero; not null
   */
  record Length(Quantity length) implements Extent {
    /**
     * Checks the quantity.
     *
     * @throws InvalidValueException if it is no length or not above zero
     */
    public Length {
      require("Extent.length", length, Dimension.LENGTH);
    }

    @Override
    public Optional<ExtentKind> kind() {
      return Optional.of(ExtentKind.LENGTH);
    }

    @Override
    public String toString() {
      return length.toString();
    }
  }

  /**
   * An area.
   *
   * @param area the area, above zero; not null
   */
  record Area(Quantity area) implements Extent {
    /**
     * Checks the quantity.
     *
     * @throws InvalidValueException if it is no area or not above zero
     */
    public Area {
      require("Extent.area", area, Dimension.AREA);
    }

    @Override
    public Optional<ExtentKind> kind() {
      return Optional.of(ExtentKind.AREA);
    }

    @Override
    public String toString() {
      return area.toString();
    }
  }

  /**
   * A count.
   *
   * @param count how many, at least 1
   */
  record Count(int count) implements Extent {
    /**
     * Checks the count.
     *
     * @throws InvalidValueException if it is below 1
     */
    public Count {
      InvalidValueException.require(count >= 1, "Extent.count", count, "1 or more");
    }

    @Override
    public Optional<ExtentKind> kind() {
      return Optional.of(ExtentKind.COUNT);
    }

    @Override
    public String toString() {
      return "count " + count;
    }
  }

  /**
   * A grade.
   *
   * @param grade the grade; not null
   */
  record Graded(Grade grade) implements Extent {
    /** Checks for null. */
    public Graded {
      Objects.requireNonNull(grade, "grade");
    }

    @Override
    public Optional<ExtentKind> kind() {
      return Optional.of(ExtentKind.GRADE);
    }

    @Override
    public String toString() {
      return grade.name();
    }
  }

  /**
   * Returns by what the extent is told.
   *
   * @return the kind; empty if not measured
   */
  Optional<ExtentKind> kind();

  private static void require(String field, Quantity quantity, Dimension dimension) {
    if (quantity.unit().dimension() != dimension || !quantity.isPositive()) {
      throw new InvalidValueException(field, quantity, "above zero, of dimension " + dimension);
    }
  }
}
