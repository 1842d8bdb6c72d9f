package org.ensemblerules.tables.load;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.ensemblerules.care.CareDemand;
import org.ensemblerules.care.CareLimitRow;
import org.ensemblerules.care.CleaningDemand;
import org.ensemblerules.care.CleaningResultRow;
import org.ensemblerules.care.Contaminant;
import org.ensemblerules.care.ModelCareLimitRow;
import org.ensemblerules.care.WashBoundRow;
import org.ensemblerules.care.WashMeasure;
import org.ensemblerules.care.WashPractice;
import org.ensemblerules.gear.GearModel;
import org.ensemblerules.gear.LayerKind;
import org.ensemblerules.measure.Limit;
import org.ensemblerules.ruleset.CareKinds;
import org.ensemblerules.source.RowKey;
import org.ensemblerules.tables.json.JsonCursor;
import org.ensemblerules.tables.json.ObjectCursor;

/** Readers of the tables that say within what a wash must stay and what it must achieve. */
final class CareReaders {
  private enum CareKind {
    WITHIN,
    FORBIDDEN
  }

  private enum CleaningKind {
    REMOVAL,
    WHOLE_LOGS
  }

  /** The tables whose rows are read here. */
  static final List<TableType<?>> TYPES =
      List.of(
          new TableType<>(CareKinds.CARE_LIMITS, CareReaders::careLimits),
          new TableType<>(CareKinds.WASH_BOUNDS, CareReaders::washBounds),
          new TableType<>(CareKinds.CLEANING_RESULTS, CareReaders::cleaningResults));

  private CareReaders() {}

  static Optional<List<CareLimitRow>> careLimits(FamilyHead head, ObjectCursor row) {
    Combinations gear = Combinations.read(row);
    Optional<Set<LayerKind>> layers = row.optional("layers", at -> at.setOf(LayerKind.class));
    Optional<CareDemand> demand = row.required("demand", CareReaders::careDemand);
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
                                            new CareLimitRow(
                                                head.provenance(element, use, layer),
                                                element,
                                                use,
                                                Optional.of(layer),
                                                demand.orElseThrow())))
                        .orElseGet(
                            () ->
                                Stream.of(
                                    new CareLimitRow(
                                        head.provenance(element, use),
                                        element,
                                        use,
                                        Optional.empty(),
                                        demand.orElseThrow())))));
  }

  /** Reads a family for one model; without the model, which was faulty, only for its faults. */
  static Optional<List<ModelCareLimitRow>> modelCareLimits(
      FamilyHead head, ObjectCursor row, Optional<GearModel> model, Optional<LocalDate> from) {
    Optional<String> replaces = row.optional("replaces", FamilyHead::key);
    Optional<List<CareLimitRow>> limits = careLimits(head, row);
    return model.isEmpty()
        ? Optional.empty()
        : limits.flatMap(
            rows ->
                row.make(
                    () ->
                        rows.stream()
                            .map(
                                limit ->
                                    new ModelCareLimitRow(
                                        model.orElseThrow(),
                                        limit,
                                        replaces.map(key -> sameOf(key, head, limit)),
                                        from))
                            .toList()));
  }

  /** The key of another family's row for the same combination. */
  private static RowKey sameOf(String family, FamilyHead head, CareLimitRow limit) {
    return new RowKey(family + limit.key().value().substring(head.key().orElseThrow().length()));
  }

  static Optional<List<WashBoundRow>> washBounds(FamilyHead head, ObjectCursor row) {
    Optional<WashMeasure> measure = row.required("measure", at -> at.enumOf(WashMeasure.class));
    Optional<WashBoundRow.Reach> reach =
        row.required("reach", at -> at.enumOf(WashBoundRow.Reach.class));
    Optional<Limit> limit = row.required("limit", LimitReader::limit);
    return row.make(
        () ->
            List.of(
                new WashBoundRow(
                    head.provenance(),
                    measure.orElseThrow(),
                    reach.orElseThrow(),
                    limit.orElseThrow())));
  }

  static Optional<List<CleaningResultRow>> cleaningResults(FamilyHead head, ObjectCursor row) {
    Optional<Contaminant> contaminant =
        row.required("contaminant", at -> at.enumOf(Contaminant.class));
    Optional<CleaningDemand> demand = row.required("demand", CareReaders::cleaningDemand);
    return row.make(
        () ->
            List.of(
                new CleaningResultRow(
                    head.provenance(), contaminant.orElseThrow(), demand.orElseThrow())));
  }

  private static Optional<CareDemand> careDemand(JsonCursor at) {
    ObjectCursor demand = at.object();
    Optional<CareKind> kind = demand.required("kind", value -> value.enumOf(CareKind.class));
    if (kind.isEmpty()) {
      return Optional.empty();
    }
    return switch (kind.get()) {
      case WITHIN -> {
        Optional<WashMeasure> measure =
            demand.required("measure", value -> value.enumOf(WashMeasure.class));
        Optional<Limit> limit = demand.required("limit", LimitReader::limit);
        Optional<Limit> unconfirmed = demand.optional("unconfirmed", LimitReader::limit);
        yield demand.make(
            () -> new CareDemand.Within(measure.orElseThrow(), limit.orElseThrow(), unconfirmed));
      }
      case FORBIDDEN -> {
        Optional<WashPractice> practice =
            demand.required("practice", value -> value.enumOf(WashPractice.class));
        yield demand.make(() -> new CareDemand.Forbidden(practice.orElseThrow()));
      }
    };
  }

  private static Optional<CleaningDemand> cleaningDemand(JsonCursor at) {
    ObjectCursor demand = at.object();
    Optional<CleaningKind> kind =
        demand.required("kind", value -> value.enumOf(CleaningKind.class));
    if (kind.isEmpty()) {
      return Optional.empty();
    }
    return switch (kind.get()) {
      case REMOVAL -> {
        Optional<Limit> limit = demand.required("limit", LimitReader::limit);
        yield demand.make(() -> new CleaningDemand.Removal(limit.orElseThrow()));
      }
      case WHOLE_LOGS -> {
        Optional<Integer> logs =
            demand.required("logs", value -> value.integer(1, Integer.MAX_VALUE));
        yield demand.make(() -> new CleaningDemand.WholeLogs(logs.orElseThrow()));
      }
    };
  }
}
