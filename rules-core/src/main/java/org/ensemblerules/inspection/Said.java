package org.ensemblerules.inspection;

import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import org.ensemblerules.source.RowKey;

/**
 * What an inspection says of each criterion: what came of it stands by itself, or rests on the
 * sign-off or on what the element is said not to have. Where both say something, what stands by
 * itself counts, and the stricter of the two where they exclude each other.
 */
final class Said {
  /**
   * Of one criterion.
   *
   * @param outcomes what came of it; empty if nothing says so
   * @param signedOff whether that rests on the sign-off alone
   * @param contradicted whether sign-off and outcomes exclude each other
   */
  record Of(Set<Outcome> outcomes, boolean signedOff, boolean contradicted) {}

  private final Map<RowKey, Set<Outcome>> items = new HashMap<>();
  private final Optional<SignOff> signOff;
  private final SignOffReading reading;
  private final Set<CriterionRow> named;
  private final Predicate<CriterionRow> notFitted;

  Said(
      Inspection inspection,
      List<CriterionRow> required,
      SignOffReading reading,
      Predicate<CriterionRow> notFitted) {
    this.notFitted = notFitted;
    for (CriterionOutcome outcome : inspection.outcomes()) {
      items
          .computeIfAbsent(outcome.criterion(), key -> EnumSet.noneOf(Outcome.class))
          .add(outcome.outcome());
    }
    this.signOff = inspection.signOff();
    this.reading = reading;
    this.named = signOff.map(each -> reading.found(each, required)).orElse(Set.of());
  }

  Of of(CriterionRow row) {
    Set<Outcome> said = EnumSet.noneOf(Outcome.class);
    said.addAll(items.getOrDefault(row.key(), Set.of()));
    Optional<Outcome> signed = signed(row);
    if (notFitted.test(row)) {
      return notFitted(said, signed);
    }
    if (said.isEmpty()) {
      signed.ifPresent(said::add);
      return new Of(said, signed.isPresent(), false);
    }
    boolean contradicted =
        signed.isPresent()
            && (said.contains(Outcome.NOT_DONE)
                || (signed.get() == Outcome.FOUND) != said.contains(Outcome.FOUND));
    if (contradicted && signed.get() == Outcome.FOUND) {
      said.add(Outcome.FOUND);
    }
    return new Of(said, false, contradicted);
  }

  /** Of a part that the element is said not to have; a sign-off need not speak of it. */
  private static Of notFitted(Set<Outcome> said, Optional<Outcome> signed) {
    signed.filter(Outcome.FOUND::equals).ifPresent(said::add);
    boolean contradicted = said.contains(Outcome.CLEAR) || said.contains(Outcome.FOUND);
    if (said.isEmpty()) {
      said.add(Outcome.NOT_FITTED);
    }
    return new Of(said, false, contradicted);
  }

  /** What is found is found, whatever edition was signed for. */
  private Optional<Outcome> signed(CriterionRow row) {
    if (named.contains(row)) {
      return Optional.of(Outcome.FOUND);
    }
    return signOff.filter(each -> reading.has(each, row)).map(each -> Outcome.CLEAR);
  }

  /** The criteria of which outcomes stand by themselves. */
  Set<RowKey> items() {
    return items.keySet();
  }
}
