package org.ensemblerules.inspection;

import com.google.common.collect.Sets;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;

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

  private final Optional<SignOff> signOff;
  private final SignOffReading reading;
  private final Set<CriterionRow> named;
  private final Predicate<CriterionRow> notFitted;

  Said(
      Optional<SignOff> signOff,
      List<CriterionRow> required,
      SignOffReading reading,
      Predicate<CriterionRow> notFitted) {
    this.signOff = signOff;
    this.notFitted = notFitted;
    this.reading = reading;
    this.named = signOff.map(each -> reading.found(each, required)).orElse(Set.of());
  }

  /** {@code said}: what the inspection says of the criterion by itself. */
  Of of(CriterionRow row, Set<Outcome> said) {
    Optional<Outcome> signed = signed(row);
    if (notFitted.test(row)) {
      return notFitted(said, signed);
    }
    if (said.isEmpty()) {
      return new Of(
          signed.<Set<Outcome>>map(Sets::immutableEnumSet).orElse(said), signed.isPresent(), false);
    }
    boolean contradicted =
        signed.isPresent()
            && (said.contains(Outcome.NOT_DONE)
                || (signed.get() == Outcome.FOUND) != said.contains(Outcome.FOUND));
    boolean found = contradicted && signed.get() == Outcome.FOUND;
    return new Of(found ? with(said, Outcome.FOUND) : said, false, contradicted);
  }

  /** Of a part that the element is said not to have; a sign-off need not speak of it. */
  private static Of notFitted(Set<Outcome> said, Optional<Outcome> signed) {
    Set<Outcome> all = signed.equals(Optional.of(Outcome.FOUND)) ? with(said, Outcome.FOUND) : said;
    return all.isEmpty()
        ? new Of(Sets.immutableEnumSet(Outcome.NOT_FITTED), false, false)
        : new Of(all, false, all.contains(Outcome.CLEAR) || all.contains(Outcome.FOUND));
  }

  private static Set<Outcome> with(Set<Outcome> said, Outcome one) {
    return Sets.immutableEnumSet(Sets.union(said, Set.of(one)));
  }

  /** What is found is found, whatever edition was signed for. */
  private Optional<Outcome> signed(CriterionRow row) {
    if (named.contains(row)) {
      return Optional.of(Outcome.FOUND);
    }
    return signOff.isPresent() && reading.has(signOff.get(), row)
        ? Optional.of(Outcome.CLEAR)
        : Optional.empty();
  }
}
