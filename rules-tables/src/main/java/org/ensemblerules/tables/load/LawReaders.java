package org.ensemblerules.tables.load;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.ensemblerules.record.PfasDemand;
import org.ensemblerules.record.PfasLawRow;
import org.ensemblerules.record.PlaceCode;
import org.ensemblerules.record.SaleParty;
import org.ensemblerules.ruleset.AdoptionKind;
import org.ensemblerules.ruleset.AdoptionRow;
import org.ensemblerules.ruleset.RecordKinds;
import org.ensemblerules.ruleset.Subject;
import org.ensemblerules.source.OriginId;
import org.ensemblerules.tables.json.JsonCursor;
import org.ensemblerules.tables.json.ObjectCursor;
import org.ensemblerules.tables.json.ValueReaders;

/** Reader of the table of what the laws of places ask. */
final class LawReaders {
  private enum DemandKind {
    NOTICE,
    KEEP_NOTICE,
    FIXED_LABEL,
    SALE_BAN
  }

  /** The tables whose rows are read here. */
  static final List<TableType<?>> TYPES =
      List.of(
          new TableType<>(RecordKinds.PFAS_LAWS, LawReaders::pfasLaws),
          new TableType<>(RecordKinds.ADOPTIONS, LawReaders::adoptions));

  private LawReaders() {}

  static Optional<List<PfasLawRow>> pfasLaws(FamilyHead head, ObjectCursor row) {
    Optional<PlaceCode> place = row.required("place", at -> at.parsed(PlaceCode::new));
    Optional<LocalDate> from = row.optional("from", ValueReaders::day);
    Optional<LocalDate> before = row.optional("before", ValueReaders::day);
    Optional<PfasDemand> demand = row.required("demand", LawReaders::demand);
    return row.make(
        () ->
            List.of(
                new PfasLawRow(
                    head.provenance(), place.orElseThrow(), from, before, demand.orElseThrow())));
  }

  static Optional<List<AdoptionRow>> adoptions(FamilyHead head, ObjectCursor row) {
    Optional<PlaceCode> place = row.optional("place", at -> at.parsed(PlaceCode::new));
    Optional<String> country =
        row.has("place")
            ? place.map(PlaceCode::country)
            : row.required("country", JsonCursor::text);
    Optional<Set<Subject>> subjects = row.required("subjects", at -> at.setOf(Subject.class));
    Optional<AdoptionKind> kind = row.required("rule", at -> at.enumOf(AdoptionKind.class));
    Optional<OriginId> edition = row.optional("namesEdition", ValueReaders::editionId);
    Optional<LocalDate> from = row.optional("from", ValueReaders::day);
    Optional<LocalDate> before = row.optional("before", ValueReaders::day);
    Optional<String> covers = row.required("covers", JsonCursor::text);
    return row.make(
        () ->
            subjects.orElseThrow().stream()
                .map(
                    subject ->
                        new AdoptionRow(
                            head.provenance(subject),
                            country.orElseThrow(),
                            place,
                            subject,
                            kind.orElseThrow(),
                            edition,
                            from,
                            before,
                            covers.orElseThrow()))
                .toList());
  }

  private static Optional<PfasDemand> demand(JsonCursor at) {
    ObjectCursor demand = at.object();
    Optional<DemandKind> kind = demand.required("kind", value -> value.enumOf(DemandKind.class));
    if (kind.isEmpty()) {
      return Optional.empty();
    }
    return switch (kind.get()) {
      case NOTICE -> demand.make(PfasDemand.Notice::new);
      case KEEP_NOTICE -> {
        Optional<Integer> years = demand.required("years", value -> value.integer(1, 100));
        Optional<Set<SaleParty>> by = demand.required("by", value -> value.setOf(SaleParty.class));
        yield demand.make(() -> new PfasDemand.KeepNotice(years.orElseThrow(), by.orElseThrow()));
      }
      case FIXED_LABEL -> demand.make(PfasDemand.FixedLabel::new);
      case SALE_BAN -> demand.make(PfasDemand.SaleBan::new);
    };
  }
}
