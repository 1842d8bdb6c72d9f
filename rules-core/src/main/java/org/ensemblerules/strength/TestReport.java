package org.ensemblerules.strength;

import com.google.common.collect.ImmutableList;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.Site;
import org.ensemblerules.gear.Use;
import org.ensemblerules.measure.Dimension;
import org.ensemblerules.measure.Quantity;
import org.ensemblerules.source.InvalidValueException;

/**
 * What a laboratory reports about one property of one part.
 *
 * @since 0.1
 */
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

  TestReport(TestReportBuilder builder) {
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
  public static TestReportBuilder builder(
      ElementKind element, Use use, Site site, Property property, TestMethod method) {
    return new TestReportBuilder(element, use, site, property, method);
  }

  /**
   * Checks the strength of a fabric alone.
   *
   * @param strength the fabric's breaking strength; not null
   * @return the strength
   * @throws InvalidValueException if it is no force above zero
   */
  public static Quantity requireFabricStrength(Quantity strength) {
    // Zero or less would make any fabric the weaker one, and so any seam pass.
    InvalidValueException.require(
        strength.isPositive() && strength.unit().dimension() == Dimension.FORCE,
        "TestReport.fabricStrength",
        strength,
        "above zero, of dimension " + Dimension.FORCE);
    return strength;
  }

  /**
   * Checks the name of a laboratory alone.
   *
   * @param name the name, 1 to 200 characters; not null
   * @return the name
   * @throws InvalidValueException if it is blank or too long
   */
  public static String requireLaboratory(String name) {
    return InvalidValueException.requireText("TestReport.laboratory", name, 200);
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
}
