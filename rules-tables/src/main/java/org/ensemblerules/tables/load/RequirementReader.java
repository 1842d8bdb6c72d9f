package org.ensemblerules.tables.load;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.ensemblerules.gear.Site;
import org.ensemblerules.measure.Limit;
import org.ensemblerules.ruleset.StrengthKinds;
import org.ensemblerules.strength.Construction;
import org.ensemblerules.strength.Direction;
import org.ensemblerules.strength.Property;
import org.ensemblerules.strength.RequirementRow;
import org.ensemblerules.strength.SpecimenValue;
import org.ensemblerules.strength.Statistic;
import org.ensemblerules.strength.TestMethod;
import org.ensemblerules.tables.json.JsonCursor;
import org.ensemblerules.tables.json.ObjectCursor;
import org.ensemblerules.tables.json.ValueReaders;

/** Reads what product editions require of new material. */
final class RequirementReader {
  private enum Kind {
    AS_READ,
    HIGHEST_PEAK,
    MEAN_OF_HIGHEST_PEAKS
  }

  /** The tables whose rows are read here. */
  static final List<TableType<?>> TYPES =
      List.of(
          new TableType<>(
              StrengthKinds.REQUIREMENTS, RequirementReader::requirements, RequirementRow::of));

  private RequirementReader() {}

  static Optional<List<RequirementRow>> requirements(FamilyHead head, ObjectCursor row) {
    Optional<Property> property = row.required("property", at -> at.enumOf(Property.class));
    Combinations gear = Combinations.read(row);
    Optional<List<Site>> sites = row.required("sites", at -> at.distinct(ValueReaders::site));
    Optional<Construction> construction =
        row.optional("construction", at -> at.enumOf(Construction.class));
    Optional<Set<Direction>> directions =
        row.required("directions", at -> at.setOf(Direction.class));
    Optional<Set<TestMethod>> methods =
        row.required("methods", at -> at.distinct(RequirementReader::method).map(HashSet::new));
    Optional<SpecimenValue> value = row.required("specimenValue", RequirementReader::value);
    Optional<Statistic> statistic = row.required("statistic", at -> at.enumOf(Statistic.class));
    Optional<Limit> limit = row.required("limit", LimitReader::limit);
    Optional<Integer> least =
        row.required("leastSpecimens", at -> at.integer(1, Integer.MAX_VALUE));
    Optional<Boolean> fabricFailsFirst = row.optional("fabricFailsFirst", JsonCursor::bool);
    Optional<String> wording = row.required("wording", JsonCursor::text);
    return row.make(
        () ->
            gear.rows(
                (element, use) ->
                    sites.orElseThrow().stream()
                        .map(
                            site ->
                                new RequirementRow(
                                    head.provenance(element, use, site),
                                    head.origin().orElseThrow(),
                                    property.orElseThrow(),
                                    element,
                                    use,
                                    site,
                                    construction,
                                    directions.orElseThrow(),
                                    methods.orElseThrow(),
                                    value.orElseThrow(),
                                    statistic.orElseThrow(),
                                    limit.orElseThrow(),
                                    least.orElseThrow(),
                                    fabricFailsFirst.orElse(false),
                                    wording.orElseThrow()))));
  }

  /** Reads the name of a test method. */
  static Optional<TestMethod> method(JsonCursor at) {
    return at.parsed(TestMethod::new);
  }

  private static Optional<SpecimenValue> value(JsonCursor at) {
    ObjectCursor value = at.object();
    Optional<Kind> kind = value.required("kind", name -> name.enumOf(Kind.class));
    if (kind.isEmpty()) {
      return Optional.empty();
    }
    return switch (kind.get()) {
      case AS_READ -> value.make(SpecimenValue.AsRead::new);
      case HIGHEST_PEAK -> value.make(SpecimenValue.HighestPeak::new);
      case MEAN_OF_HIGHEST_PEAKS -> {
        Optional<Integer> peaks =
            value.required("peaks", number -> number.integer(1, Integer.MAX_VALUE));
        yield value.make(() -> new SpecimenValue.MeanOfHighestPeaks(peaks.orElseThrow()));
      }
    };
  }
}
