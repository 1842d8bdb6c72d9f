package org.ensemblerules.strength;

import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.Site;
import org.ensemblerules.gear.Use;
import org.ensemblerules.measure.Quantity;
import org.ensemblerules.source.InvalidValueException;

/**
 * Builds reports.
 *
 * @since 0.1
 */
public final class TestReportBuilder {
  final ElementKind element;
  final Use use;
  final Site site;
  final Property property;
  final TestMethod method;
  Optional<Construction> construction = Optional.empty();
  List<Specimen> specimens = List.of();
  Optional<SpecimenOrigin> origin = Optional.empty();
  Optional<ExpandedUncertainty> uncertainty = Optional.empty();
  Optional<Quantity> fabricStrength = Optional.empty();
  Optional<LocalDate> testedOn = Optional.empty();
  Optional<String> laboratory = Optional.empty();

  TestReportBuilder(ElementKind element, Use use, Site site, Property property, TestMethod method) {
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
  public TestReportBuilder construction(Construction given) {
    construction = Optional.of(given);
    return this;
  }

  /**
   * Sets the specimens.
   *
   * @param given the specimens of all directions; not null
   * @return this builder
   */
  public TestReportBuilder specimens(List<Specimen> given) {
    specimens = List.copyOf(given);
    return this;
  }

  /**
   * Sets where the specimens came from.
   *
   * @param given the origin; not null
   * @return this builder
   */
  public TestReportBuilder origin(SpecimenOrigin given) {
    origin = Optional.of(given);
    return this;
  }

  /**
   * Sets the uncertainty of the result that is compared with the limit.
   *
   * @param given the expanded uncertainty; not null
   * @return this builder
   */
  public TestReportBuilder uncertainty(ExpandedUncertainty given) {
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
  public TestReportBuilder fabricStrength(Quantity given) {
    fabricStrength = Optional.of(TestReport.requireFabricStrength(given));
    return this;
  }

  /**
   * Sets the day of the test.
   *
   * @param given the day; not null
   * @return this builder
   */
  public TestReportBuilder testedOn(LocalDate given) {
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
  public TestReportBuilder laboratory(String given) {
    laboratory = Optional.of(TestReport.requireLaboratory(given));
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
