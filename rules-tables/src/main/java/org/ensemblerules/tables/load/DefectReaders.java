package org.ensemblerules.tables.load;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.ensemblerules.defect.Admitted;
import org.ensemblerules.defect.Approval;
import org.ensemblerules.defect.Band;
import org.ensemblerules.defect.DefectKind;
import org.ensemblerules.defect.DefectRow;
import org.ensemblerules.defect.ExtentKind;
import org.ensemblerules.defect.Grade;
import org.ensemblerules.effect.Check;
import org.ensemblerules.effect.Effect;
import org.ensemblerules.effect.HandlingDuty;
import org.ensemblerules.gear.Site;
import org.ensemblerules.measure.Quantity;
import org.ensemblerules.ruleset.InspectionKinds;
import org.ensemblerules.source.InvalidValueException;
import org.ensemblerules.tables.codec.EffectJson;
import org.ensemblerules.tables.json.JsonCursor;
import org.ensemblerules.tables.json.ObjectCursor;
import org.ensemblerules.tables.json.ValueReaders;

/** Readers of the table of defects and of the extents that its rows are for. */
final class DefectReaders {
  /** The tables whose rows are read here. */
  static final List<TableType<?>> TYPES =
      List.of(new TableType<>(InspectionKinds.DEFECTS, DefectReaders::defects));

  private DefectReaders() {}

  static Optional<List<DefectRow>> defects(FamilyHead head, ObjectCursor row) {
    Combinations gear = Combinations.read(row);
    Optional<List<Site>> sites = row.required("sites", at -> at.distinct(ValueReaders::site));
    Optional<Set<DefectKind>> defects = row.required("defects", at -> at.setOf(DefectKind.class));
    Optional<Band> band = row.optional("extent", DefectReaders::band);
    Optional<Effect> effect = row.required("effect", EffectJson::read);
    Optional<Set<HandlingDuty>> handling =
        row.optional("handling", at -> at.setOf(HandlingDuty.class));
    Optional<Set<Check>> afterward = row.optional("afterward", at -> at.setOf(Check.class));
    Optional<Boolean> open = row.optional("open", JsonCursor::bool);
    Optional<List<Admitted>> admits =
        row.optional("admits", at -> at.distinct(DefectReaders::admitted));
    Optional<String> decides = row.optional("decides", FamilyHead::key);
    Optional<String> by = row.optional("approvedBy", JsonCursor::text);
    Optional<LocalDate> on = row.optional("approvedOn", ValueReaders::day);
    if (decides.isPresent() != by.isPresent() || decides.isPresent() != on.isPresent()) {
      row.fault(
          "decides",
          "decides, approvedBy and approvedOn not all given",
          "all of them for an answer to an open row, else none");
    }
    Optional<String> wording = row.required("wording", JsonCursor::text);
    return row.make(
        () ->
            gear.rows(
                (element, use) ->
                    sites.orElseThrow().stream()
                        .flatMap(
                            site ->
                                defects.orElseThrow().stream()
                                    .map(
                                        defect ->
                                            new DefectRow(
                                                head.provenance(element, use, site, defect),
                                                element,
                                                use,
                                                site,
                                                defect,
                                                band.orElseGet(Band.Presence::new),
                                                effect.orElseThrow(),
                                                handling.orElse(Set.of()),
                                                afterward.orElse(Set.of()),
                                                open.orElse(false),
                                                admits.orElse(List.of()),
                                                decides.map(
                                                    family ->
                                                        new Approval(
                                                            FamilyHead.keyOf(
                                                                family, element, use, site, defect),
                                                            by.orElseThrow(),
                                                            on.orElseThrow())),
                                                wording.orElseThrow())))));
  }

  private static Optional<Admitted> admitted(JsonCursor at) {
    ObjectCursor answer = at.object();
    Optional<Effect> effect = answer.required("effect", EffectJson::read);
    Optional<Set<Check>> afterward = answer.optional("afterward", set -> set.setOf(Check.class));
    return answer.make(() -> new Admitted(effect.orElseThrow(), afterward.orElse(Set.of())));
  }

  static Optional<Band> band(JsonCursor at) {
    ObjectCursor extent = at.object();
    Optional<ExtentKind> kind = extent.required("kind", value -> value.enumOf(ExtentKind.class));
    if (kind.isEmpty()) {
      return Optional.empty();
    }
    return switch (kind.get()) {
      case PRESENCE -> extent.make(Band.Presence::new);
      case LENGTH, AREA -> range(extent, kind.get());
      case COUNT -> {
        Optional<Integer> over =
            extent.optional("over", value -> value.integer(0, Integer.MAX_VALUE));
        Optional<Integer> upTo =
            extent.optional("upTo", value -> value.integer(1, Integer.MAX_VALUE - 1));
        yield extent.make(() -> new Band.Counts(over.orElse(0), upTo.orElse(Integer.MAX_VALUE)));
      }
      case GRADE -> {
        Optional<Set<Grade>> grades = extent.required("grades", value -> value.setOf(Grade.class));
        yield extent.make(() -> new Band.Grades(grades.orElseThrow()));
      }
    };
  }

  private static Optional<Band> range(ObjectCursor extent, ExtentKind kind) {
    Optional<Quantity> over = extent.optional("over", ValueReaders::quantity);
    Optional<Quantity> upTo = extent.optional("upTo", ValueReaders::quantity);
    // Information for readers of the file: the row decides by upTo.
    Optional<Quantity> alsoPrinted = extent.optional("alsoPrinted", ValueReaders::quantity);
    return extent.make(
        () -> {
          Band band = new Band.Range(kind, over, upTo);
          alsoPrinted.ifPresent(
              also ->
                  InvalidValueException.require(
                      upTo.isPresent()
                          && also.unit() != upTo.get().unit()
                          && also.unit().dimension() == upTo.get().unit().dimension(),
                      "Band.alsoPrinted",
                      also,
                      "another unit of the dimension of upTo"));
          return band;
        });
  }
}
