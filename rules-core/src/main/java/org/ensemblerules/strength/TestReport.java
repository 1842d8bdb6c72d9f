package org.ensemblerules.strength;

import com.google.common.collect.ImmutableList;
import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.Site;
import org.ensemblerules.gear.Use;
import org.ensemblerules.measure.Dimension;
import org.ensemblerules.measure.Quantity;
import org.ensemblerules.source.InvalidValueException;

/** What a laboratory reports about one property of one part. */
public final class TestReport {
  private final ElementKind element;
  private final Use use;
  private final Site site;
  private final Property property;
  private final TestMethod method;
  private final Optional<Construction> construction;
  private final ImmutableList<Specimen> specimens;
  private final Optional<SpecimenOrigin> origin;
  private final Optional<ExpandedUncertainty> uncertainty;
  private final Optional<Quantity> fabricStrength;
  private final Optional<LocalDate> testedOn;
  private final Optional<String> laboratory;

  private TestReport(Builder builder) {
    element = builder.element;
    use = builder.use;
    site = builder.site;
    property = builder.property;
    method = builder.method;
    construction = builder.construction;
    specimens = ImmutableList.copyOf(builder.specimens);
    origin = builder.origin;
    uncertainty = builder.uncertainty;
    fabricStrength = builder.fabricStrength;
    testedOn = builder.testedOn;
    laboratory = builder.laboratory;
  }

  /**
   * Starts a report.
   *
   * @param element the kind of element; not null
   * @param use its use; not null
   * @param site the part tested and its layer; not null
   * @param property what was measured; not null
   * @param method by which method; not null
   * @return a builder of a report without specimens; never null
   */
  public static Builder builder(
      ElementKind element, Use use, Site site, Property property, TestMethod method) {
    return new Builder(element, use, site, property, method);
  }

  /**
   * Returns the kind of element.
   *
   * @return the kind; never null
   */
  public ElementKind element() {
    return element;
  }

  /**
   * Returns the element's use.
   *
   * @return the use; never null
   */
  public Use use() {
    return use;
  }

  /**
   * Returns the part tested.
   *
   * @return the part and its layer; never null
   */
  public Site site() {
    return site;
  }

  /**
   * Returns what was measured.
   *
   * @return the property; never null
   */
  public Property property() {
    return property;
  }

  /**
   * Returns the method.
   *
   * @return the method; never null
   */
  public TestMethod method() {
    return method;
  }

  /**
   * Returns how the cloth is made.
   *
   * @return the construction; empty if the report does not say
   */
  public Optional<Construction> construction() {
    return construction;
  }

  /**
   * Returns the specimens.
   *
   * @return the specimens of all directions, in the report's order; never null
   */
  public List<Specimen> specimens() {
    return specimens;
  }

  /**
   * Returns where the specimens came from.
   *
   * @return the origin; empty if the report does not say, which gives no result
   */
  public Optional<SpecimenOrigin> origin() {
    return origin;
  }

  /**
   * Returns the uncertainty of the result compared.
   *
   * @return the expanded uncertainty; empty if not stated
   */
  public Optional<ExpandedUncertainty> uncertainty() {
    return uncertainty;
  }

  /**
   * Returns the strength of the fabric itself, for seam tests.
   *
   * @return the fabric's breaking strength; empty if not stated
   */
  public Optional<Quantity> fabricStrength() {
    return fabricStrength;
  }

  /**
   * Returns the day of the test.
   *
   * @return the day; empty if not stated
   */
  public Optional<LocalDate> testedOn() {
    return testedOn;
  }

  /**
   * Returns the laboratory.
   *
   * @return its name; empty if not stated
   */
  public Optional<String> laboratory() {
    return laboratory;
  }

  @Override
  public boolean equals(Object object) {
    return object instanceof TestReport other && parts().equals(other.parts());
  }

  @Override
  public int hashCode() {
    return parts().hashCode();
  }

  @Override
  public String toString() {
    return "TestReport" + parts();
  }

  private List<Object> parts() {
    return List.of(
        element,
        use,
        site,
        property,
        method,
        construction,
        specimens,
        origin,
        uncertainty,
        fabricStrength,
        testedOn,
        laboratory);
  }

  /** Builds reports. */
  public static final class Builder {
    private final ElementKind element;
    private final Use use;
    private final Site site;
    private final Property property;
    private final TestMethod method;
    private Optional<Construction> construction = Optional.empty();
    private List<Specimen> specimens = List.of();
    private Optional<SpecimenOrigin> origin = Optional.empty();
    private Optional<ExpandedUncertainty> uncertainty = Optional.empty();
    private Optional<Quantity> fabricStrength = Optional.empty();
    private Optional<LocalDate> testedOn = Optional.empty();
    private Optional<String> laboratory = Optional.empty();

    private Builder(ElementKind element, Use use, Site site, Property property, TestMethod method) {
      this.element = Objects.requireNonNull(element, "element");
      this.use = Objects.requireNonNull(use, "use");
      this.site = Objects.requireNonNull(site, "site");
      this.property = Objects.requireNonNull(property, "property");
      this.method = Objects.requireNonNull(method, "method");
    }

    /**
     * Sets how the cloth is made.
     *
     * @param given the construction; not null
     * @return this builder
     */
    public Builder construction(Construction given) {
      construction = Optional.of(given);
      return this;
    }

    /**
     * Sets the specimens.
     *
     * @param given the specimens of all directions; not null
     * @return this builder
     */
    public Builder specimens(List<Specimen> given) {
      specimens = List.copyOf(given);
      return this;
    }

    /**
     * Sets where the specimens came from.
     *
     * @param given the origin; not null
     * @return this builder
     */
    public Builder origin(SpecimenOrigin given) {
      origin = Optional.of(given);
      return this;
    }

    /**
     * Sets the uncertainty of the result that is compared with the limit.
     *
     * @param given the expanded uncertainty; not null
     * @return this builder
     */
    public Builder uncertainty(ExpandedUncertainty given) {
      uncertainty = Optional.of(given);
      return this;
    }

    /**
     * Sets the strength of the fabric itself.
     *
     * @param given the fabric's breaking strength; not null
     * @return this builder
     * @throws InvalidValueException if it is no force above zero
     */
    public Builder fabricStrength(Quantity given) {
      // Zero or less would make any fabric the weaker one, and so any seam pass.
      InvalidValueException.require(
          given.isPositive() && given.unit().dimension() == Dimension.FORCE,
          "TestReport.fabricStrength",
          given,
          "above zero, of dimension " + Dimension.FORCE);
      fabricStrength = Optional.of(given);
      return this;
    }

    /**
     * Sets the day of the test.
     *
     * @param given the day; not null
     * @return this builder
     */
    public Builder testedOn(LocalDate given) {
      testedOn = Optional.of(given);
      return this;
    }

    /**
     * Sets the laboratory.
     *
     * @param given its name, 1 to 200 characters; not null
     * @return this builder
     * @throws InvalidValueException if the name is blank or too long
     */
    public Builder laboratory(String given) {
      laboratory =
          Optional.of(InvalidValueException.requireText("TestReport.laboratory", given, 200));
      return this;
    }

    /**
     * Builds the report.
     *
     * @return the report; never null
     * @throws InvalidValueException if two specimens of one direction have the same name
     */
    public TestReport build() {
      Set<String> names = new HashSet<>();
      for (Specimen specimen : specimens) {
        InvalidValueException.require(
            names.add(specimen.direction() + " " + specimen.id()),
            "TestReport.specimens",
            specimen.direction() + " " + specimen.id(),
            "each name once in a direction");
      }
      return new TestReport(this);
    }
  }
}
