package org.ensemblerules.tables.load;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.ensemblerules.defect.DefectKind;
import org.ensemblerules.effect.Check;
import org.ensemblerules.gear.Site;
import org.ensemblerules.history.ReturnRow;
import org.ensemblerules.history.Transfer;
import org.ensemblerules.inspection.CriterionRow;
import org.ensemblerules.inspection.Equipment;
import org.ensemblerules.inspection.InspectionKind;
import org.ensemblerules.inspection.IntervalRow;
import org.ensemblerules.ruleset.InspectionKinds;
import org.ensemblerules.tables.json.JsonCursor;
import org.ensemblerules.tables.json.ObjectCursor;
import org.ensemblerules.tables.json.ValueReaders;

/** Readers of the tables that say what is inspected and how often. */
final class InspectionReaders {
  /** The tables whose rows are read here. */
  static final List<TableType<?>> TYPES =
      List.of(
          new TableType<>(InspectionKinds.CRITERIA, InspectionReaders::criteria),
          new TableType<>(InspectionKinds.INTERVALS, InspectionReaders::intervals),
          new TableType<>(InspectionKinds.RETURNS, InspectionReaders::returns));

  /** The ways of coming back by their names, in the order in which a fault lists them. */
  private static final Map<String, Transfer> BACK = waysBack();

  private InspectionReaders() {}

  private static Map<String, Transfer> waysBack() {
    Map<String, Transfer> back = new LinkedHashMap<>();
    for (Transfer transfer : Transfer.values()) {
      if (transfer.comesBack()) {
        back.put(transfer.name(), transfer);
      }
    }
    return Collections.unmodifiableMap(back);
  }

  static Optional<List<CriterionRow>> criteria(FamilyHead head, ObjectCursor row) {
    Optional<Set<InspectionKind>> kinds =
        row.required("kinds", at -> at.setOf(InspectionKind.class));
    Combinations gear = Combinations.read(row);
    Optional<Integer> order = row.required("order", at -> at.integer(1, Integer.MAX_VALUE));
    Optional<List<Site>> sites = row.required("sites", at -> at.distinct(ValueReaders::site));
    Optional<Set<DefectKind>> lookFor = row.required("lookFor", at -> at.setOf(DefectKind.class));
    Optional<Set<Equipment>> atHand = row.optional("atHand", at -> at.setOf(Equipment.class));
    Optional<Set<Check>> checks = row.optional("checks", at -> at.setOf(Check.class));
    Optional<List<String>> coveredBy =
        row.optional("coveredBy", at -> at.distinct(FamilyHead::key));
    Optional<String> way = row.required("way", JsonCursor::text);
    return row.make(
        () ->
            gear.rows(
                (element, use) ->
                    Stream.of(
                        new CriterionRow(
                            head.provenance(element, use),
                            kinds.orElseThrow(),
                            element,
                            use,
                            order.orElseThrow(),
                            sites.orElseThrow(),
                            lookFor.orElseThrow(),
                            atHand.orElse(Set.of()),
                            checks.orElse(Set.of()),
                            coveredBy.orElse(List.of()).stream()
                                .map(family -> FamilyHead.keyOf(family, element, use))
                                .collect(Collectors.toUnmodifiableSet()),
                            way.orElseThrow()))));
  }

  static Optional<List<ReturnRow>> returns(FamilyHead head, ObjectCursor row) {
    Optional<List<Transfer>> transfers =
        row.required("transfers", at -> at.distinct(place -> place.named(BACK)));
    Optional<Set<InspectionKind>> inspections =
        row.required("inspections", at -> at.setOf(InspectionKind.class));
    Optional<String> wording = row.required("wording", JsonCursor::text);
    return row.make(
        () ->
            transfers.orElseThrow().stream()
                .map(
                    back ->
                        new ReturnRow(
                            head.provenance(back),
                            back,
                            inspections.orElseThrow(),
                            wording.orElseThrow()))
                .toList());
  }

  static Optional<List<IntervalRow>> intervals(FamilyHead head, ObjectCursor row) {
    Optional<InspectionKind> inspection =
        row.required("inspection", at -> at.enumOf(InspectionKind.class));
    Combinations gear = Combinations.read(row);
    Optional<Integer> first = row.required("firstMonths", InspectionReaders::months);
    Optional<Integer> firstWithCbrn =
        row.required("firstMonthsWithCbrnOption", InspectionReaders::months);
    Optional<Integer> repeat = row.required("repeatMonths", InspectionReaders::months);
    return row.make(
        () ->
            gear.rows(
                (element, use) ->
                    Stream.of(
                        new IntervalRow(
                            head.provenance(element, use),
                            inspection.orElseThrow(),
                            element,
                            use,
                            first.orElseThrow(),
                            firstWithCbrn.orElseThrow(),
                            repeat.orElseThrow()))));
  }

  private static Optional<Integer> months(JsonCursor at) {
    return at.integer(1, Integer.MAX_VALUE);
  }
}
