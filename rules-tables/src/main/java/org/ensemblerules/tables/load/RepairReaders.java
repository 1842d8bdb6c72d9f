package org.ensemblerules.tables.load;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.ensemblerules.defect.DefectKind;
import org.ensemblerules.effect.Check;
import org.ensemblerules.gear.Site;
import org.ensemblerules.repair.RepairLevel;
import org.ensemblerules.repair.RepairLimitRow;
import org.ensemblerules.repair.RepairSubject;
import org.ensemblerules.ruleset.CareKinds;
import org.ensemblerules.tables.json.JsonCursor;
import org.ensemblerules.tables.json.ObjectCursor;
import org.ensemblerules.tables.json.ValueReaders;

/** Readers of the table that says how lightly work may be taken at the most. */
final class RepairReaders {
  private enum SubjectKind {
    ANY_DAMAGE,
    DAMAGE,
    REPLACEMENT,
    LINER_OPENED
  }

  /** The tables whose rows are read here. */
  static final List<TableType<?>> TYPES =
      List.of(new TableType<>(CareKinds.REPAIR_LIMITS, RepairReaders::repairLimits));

  private RepairReaders() {}

  static Optional<List<RepairLimitRow>> repairLimits(FamilyHead head, ObjectCursor row) {
    Combinations gear = Combinations.read(row);
    Optional<List<Site>> sites = row.required("sites", at -> at.distinct(ValueReaders::site));
    Optional<List<RepairSubject>> subjects = row.required("subject", RepairReaders::subjects);
    Optional<RepairLevel> least = row.required("least", at -> at.enumOf(RepairLevel.class));
    Optional<Set<Check>> before = row.optional("before", at -> at.setOf(Check.class));
    Optional<Set<Check>> afterward = row.optional("afterward", at -> at.setOf(Check.class));
    Optional<String> wording = row.required("wording", JsonCursor::text);
    return row.make(
        () ->
            gear.rows(
                (element, use) ->
                    sites.orElseThrow().stream()
                        .flatMap(
                            site ->
                                subjects.orElseThrow().stream()
                                    .map(
                                        subject ->
                                            new RepairLimitRow(
                                                subject instanceof RepairSubject.Damage damage
                                                    ? head.provenance(
                                                        element, use, site, damage.defect())
                                                    : head.provenance(element, use, site),
                                                element,
                                                use,
                                                site,
                                                subject,
                                                least.orElseThrow(),
                                                before.orElse(Set.of()),
                                                afterward.orElse(Set.of()),
                                                wording.orElseThrow())))));
  }

  /** One subject, or one for each defect. */
  private static Optional<List<RepairSubject>> subjects(JsonCursor at) {
    ObjectCursor subject = at.object();
    Optional<SubjectKind> kind = subject.required("kind", each -> each.enumOf(SubjectKind.class));
    if (kind.isEmpty()) {
      return Optional.empty();
    }
    if (kind.get() == SubjectKind.DAMAGE) {
      Optional<Set<DefectKind>> defects =
          subject.required("defects", each -> each.setOf(DefectKind.class));
      return subject.make(
          () ->
              defects.orElseThrow().stream()
                  .<RepairSubject>map(RepairSubject.Damage::new)
                  .toList());
    }
    return subject.make(
        () ->
            Stream.<RepairSubject>of(
                    switch (kind.get()) {
                      case ANY_DAMAGE, DAMAGE -> new RepairSubject.AnyDamage();
                      case REPLACEMENT -> new RepairSubject.Replacement();
                      case LINER_OPENED -> new RepairSubject.LinerOpened();
                    })
                .toList());
  }
}
