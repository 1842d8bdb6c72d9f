package org.ensemblerules.pages;

import java.time.LocalDate;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.ensemblerules.effect.Credential;
import org.ensemblerules.effect.CredentialScope;
import org.ensemblerules.effect.Doer;
import org.ensemblerules.effect.DoerRegister;
import org.ensemblerules.effect.EntityKind;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.Legibility;
import org.ensemblerules.gear.Use;
import org.ensemblerules.gear.YesNoUnknown;
import org.ensemblerules.inspection.CriterionRow;
import org.ensemblerules.inspection.Equipment;
import org.ensemblerules.inspection.InspectionKind;
import org.ensemblerules.inspection.Outcome;
import org.ensemblerules.ruleset.RuleSet;
import org.ensemblerules.ruleset.Subject;
import org.ensemblerules.source.OriginId;
import org.ensemblerules.source.RowKey;

/** Six records of one coat, each with more on it than the one before. */
final class MappingRecords {
  /** The day that all of them are judged for. */
  static final LocalDate AS_OF = LocalDate.of(2026, 11, 25);

  /**
   * A record.
   *
   * @param adds what it has that the one before has not
   * @param people those whom it may name
   * @param row the row
   */
  record Sample(String adds, DoerRegister people, CoatRow row) {}

  private MappingRecords() {}

  static List<Sample> all(RuleSet rules) {
    DoerRegister nobody = DoerRegister.empty();
    DoerRegister people = people();
    Optional<OriginId> unsigned = Optional.empty();
    Optional<OriginId> signed = Optional.of(rules.editions().get(Subject.INSPECTION).id());
    Map<RowKey, Outcome> none = Map.of();
    return List.of(
        new Sample(
            "Number, kind, made, issued, days of washes and of the last inspection",
            nobody,
            row(false, false, false, unsigned, none)),
        new Sample(
            "What the labels say: maker, model, size, mark",
            nobody,
            row(true, false, false, unsigned, none)),
        new Sample(
            "Who washed and who inspected, from a register of people",
            people,
            row(true, false, false, unsigned, none)),
        new Sample(
            "That it was washed whole and within the limits",
            people,
            row(true, true, false, unsigned, none)),
        new Sample(
            "Signed off: every criterion looked at, all at hand, it was clean, and nothing found",
            people,
            row(true, true, true, signed, none)),
        new Sample(
            "What came of each criterion by itself, in place of the sign-off",
            people,
            row(true, true, true, unsigned, items(rules))));
  }

  private static CoatRow row(
      boolean labelRead,
      boolean washed,
      boolean cleanAndAllAtHand,
      Optional<OriginId> signedOffFor,
      Map<RowKey, Outcome> items) {
    return new CoatRow(
        "C-1042",
        "2024-10",
        "2025-01-15",
        Optional.of("Maker One").filter(maker -> labelRead),
        Optional.of("Pattern CS").filter(model -> labelRead),
        Optional.of("L").filter(size -> labelRead),
        labelRead ? YesNoUnknown.YES : YesNoUnknown.UNKNOWN,
        labelRead ? Legibility.READABLE : Legibility.UNKNOWN,
        List.of("2025-07-02", "2026-05-06", "2026-11-09"),
        "Gear room",
        washed,
        "2026-11-10",
        "A. Sample",
        cleanAndAllAtHand ? YesNoUnknown.YES : YesNoUnknown.UNKNOWN,
        cleanAndAllAtHand ? EnumSet.allOf(Equipment.class) : Set.of(),
        signedOffFor,
        items);
  }

  private static DoerRegister people() {
    return DoerRegister.of(
        List.of(
            doer("Gear room", EntityKind.ORGANIZATION, CredentialScope.CLEAN),
            doer("A. Sample", EntityKind.MEMBER, CredentialScope.INSPECT)));
  }

  private static Doer doer(String name, EntityKind kind, CredentialScope scope) {
    return new Doer(
        name,
        kind,
        List.of(new Credential(scope, LocalDate.of(2020, 1, 1), LocalDate.of(2027, 12, 31))));
  }

  /** All of it looked at and in order; the coat has no winter liner and no third label. */
  private static Map<RowKey, Outcome> items(RuleSet rules) {
    Map<RowKey, Outcome> items = new LinkedHashMap<>();
    for (CriterionRow row :
        rules
            .tables()
            .criteria()
            .required(InspectionKind.ADVANCED, ElementKind.COAT, Use.STRUCTURAL)) {
      boolean ofAnotherLayer =
          rules.tables().criteria().mayBeNotFitted(row.key()).orElseThrow()
              && row.sites().stream().allMatch(site -> site.layer().isPresent());
      items.put(row.key(), ofAnotherLayer ? Outcome.NOT_FITTED : Outcome.CLEAR);
    }
    return items;
  }
}
