package org.ensemblerules.tables.load;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.ensemblerules.gear.AnatomyRow;
import org.ensemblerules.gear.LayerKind;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.gear.Presence;
import org.ensemblerules.gear.RequiredSince;
import org.ensemblerules.gear.Site;
import org.ensemblerules.retirement.AgeLimit;
import org.ensemblerules.retirement.AgeLimitRow;
import org.ensemblerules.ruleset.InspectionKinds;
import org.ensemblerules.tables.json.JsonCursor;
import org.ensemblerules.tables.json.ObjectCursor;
import org.ensemblerules.tables.json.ValueReaders;

/** Readers of the tables that say what elements are and how old they may become. */
final class GearReaders {
  /** The tables whose rows are read here. */
  static final List<TableType<?>> TYPES =
      List.of(
          new TableType<>(InspectionKinds.ANATOMY, GearReaders::anatomy),
          new TableType<>(InspectionKinds.AGE_LIMITS, GearReaders::ageLimits));

  private GearReaders() {}

  static Optional<List<AnatomyRow>> anatomy(FamilyHead head, ObjectCursor row) {
    Combinations gear = Combinations.read(row);
    Optional<List<Site>> sites = row.required("sites", at -> at.distinct(ValueReaders::site));
    Optional<Presence> presence = row.required("presence", at -> at.enumOf(Presence.class));
    Optional<RequiredSince> since = row.optional("requiredSince", GearReaders::requiredSince);
    return row.make(
        () ->
            gear.rows(
                (element, use) ->
                    sites.orElseThrow().stream()
                        .map(
                            site ->
                                new AnatomyRow(
                                    head.provenance(element, use, site),
                                    element,
                                    use,
                                    site,
                                    presence.orElseThrow(),
                                    since))));
  }

  private static Optional<RequiredSince> requiredSince(JsonCursor at) {
    ObjectCursor since = at.object();
    Optional<String> standard = since.required("standard", JsonCursor::text);
    Optional<Integer> year =
        since.required("year", value -> value.integer(MarkedDate.FIRST_YEAR, MarkedDate.LAST_YEAR));
    return since.make(() -> new RequiredSince(standard.orElseThrow(), year.orElseThrow()));
  }

  static Optional<List<AgeLimitRow>> ageLimits(FamilyHead head, ObjectCursor row) {
    Combinations gear = Combinations.read(row);
    Optional<Set<LayerKind>> layers = row.optional("layers", at -> at.setOf(LayerKind.class));
    Optional<AgeLimit> limit = row.required("limit", GearReaders::limit);
    return row.make(
        () ->
            gear.rows(
                (element, use) ->
                    layers
                        .map(
                            each ->
                                each.stream()
                                    .map(
                                        layer ->
                                            new AgeLimitRow(
                                                head.provenance(element, use, layer),
                                                element,
                                                use,
                                                Optional.of(layer),
                                                limit.orElseThrow())))
                        .orElseGet(
                            () ->
                                Stream.of(
                                    new AgeLimitRow(
                                        head.provenance(element, use),
                                        element,
                                        use,
                                        Optional.empty(),
                                        limit.orElseThrow())))));
  }

  private static Optional<AgeLimit> limit(JsonCursor at) {
    ObjectCursor limit = at.object();
    Optional<Integer> years = limit.optional("years", value -> value.integer(1, Integer.MAX_VALUE));
    Optional<AgeLimit> noneSet =
        limit.optional("noneSet", GearReaders::onlyTrue).map(set -> new AgeLimit.NoneSet());
    Optional<AgeLimit> notSeen =
        limit.optional("notSeen", GearReaders::onlyTrue).map(set -> new AgeLimit.NotSeen());
    long given = Stream.of("years", "noneSet", "notSeen").filter(limit::has).count();
    if (given != 1) {
      at.fault(given + " of the fields", "one of years, noneSet, notSeen");
    }
    return limit.make(
        () -> years.<AgeLimit>map(AgeLimit.Years::new).or(() -> noneSet).or(() -> notSeen).get());
  }

  private static Optional<Boolean> onlyTrue(JsonCursor at) {
    Optional<Boolean> value = at.bool();
    return value.isPresent() && !value.get() ? at.mismatch("true, or no such field") : value;
  }
}
