package org.ensemblerules.tables.codec;

import com.fasterxml.jackson.databind.JsonNode;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.Site;
import org.ensemblerules.gear.Use;
import org.ensemblerules.measure.Dimension;
import org.ensemblerules.measure.Quantity;
import org.ensemblerules.strength.Construction;
import org.ensemblerules.strength.ExpandedUncertainty;
import org.ensemblerules.strength.Property;
import org.ensemblerules.strength.Specimen;
import org.ensemblerules.strength.SpecimenOrigin;
import org.ensemblerules.strength.TestMethod;
import org.ensemblerules.strength.TestReport;
import org.ensemblerules.strength.TestReportBuilder;
import org.ensemblerules.tables.json.JsonCursor;
import org.ensemblerules.tables.json.ObjectCursor;
import org.ensemblerules.tables.json.ValueReaders;

/** The JSON form of a laboratory's report. */
final class TestReportJson {
  private TestReportJson() {}

  static Optional<TestReport> read(JsonCursor at) {
    ObjectCursor object = at.object();
    Optional<ElementKind> element =
        object.required("element", value -> value.enumOf(ElementKind.class));
    Optional<Use> use = object.required("use", value -> value.enumOf(Use.class));
    Optional<Site> site = object.required("site", ValueReaders::site);
    Optional<Property> property =
        object.required("property", value -> value.enumOf(Property.class));
    Optional<TestMethod> method = object.required("method", value -> value.parsed(TestMethod::new));
    Optional<Construction> construction =
        object.optional("construction", value -> value.enumOf(Construction.class));
    Optional<SpecimenOrigin> origin =
        object.optional("origin", value -> value.enumOf(SpecimenOrigin.class));
    Optional<ExpandedUncertainty> uncertainty =
        object.optional("uncertainty", TestReportJson::uncertainty);
    Optional<Quantity> fabric = object.optional("fabricStrength", TestReportJson::fabric);
    Optional<LocalDate> testedOn = object.optional("testedOn", ValueReaders::day);
    Optional<String> laboratory =
        object.optional("laboratory", value -> value.parsed(TestReport::requireLaboratory));
    Optional<List<Specimen>> specimens =
        object.optional("specimens", value -> value.list(SpecimenJson::read));
    return object.make(
        () -> {
          TestReportBuilder report =
              TestReport.builder(
                  element.orElseThrow(),
                  use.orElseThrow(),
                  site.orElseThrow(),
                  property.orElseThrow(),
                  method.orElseThrow());
          construction.ifPresent(report::construction);
          origin.ifPresent(report::origin);
          uncertainty.ifPresent(report::uncertainty);
          fabric.ifPresent(report::fabricStrength);
          testedOn.ifPresent(report::testedOn);
          laboratory.ifPresent(report::laboratory);
          specimens.ifPresent(report::specimens);
          return report.build();
        });
  }

  private static Optional<Quantity> fabric(JsonCursor at) {
    return ValueReaders.quantityOf(at, Dimension.FORCE)
        .flatMap(value -> at.make(() -> TestReport.requireFabricStrength(value)));
  }

  private static Optional<ExpandedUncertainty> uncertainty(JsonCursor at) {
    ObjectCursor object = at.object();
    Optional<Quantity> expanded = object.required("expanded", ValueReaders::quantity);
    Optional<BigDecimal> factor = object.required("coverageFactor", JsonCursor::decimalOrText);
    return object.make(() -> new ExpandedUncertainty(expanded.orElseThrow(), factor.orElseThrow()));
  }

  static JsonNode write(TestReport report) {
    return new Fields()
        .put("element", report.element())
        .put("use", report.use())
        .put("site", report.site())
        .put("property", report.property())
        .put("method", report.method())
        .known("construction", report.construction())
        .known("origin", report.origin())
        .known("uncertainty", report.uncertainty(), TestReportJson::write)
        .known("fabricStrength", report.fabricStrength(), QuantityJson::write)
        .known("testedOn", report.testedOn())
        .known("laboratory", report.laboratory())
        .some("specimens", report.specimens(), SpecimenJson::write)
        .node();
  }

  private static JsonNode write(ExpandedUncertainty uncertainty) {
    return new Fields()
        .put("expanded", QuantityJson.write(uncertainty.expanded()))
        .put("coverageFactor", uncertainty.coverageFactor())
        .node();
  }
}
