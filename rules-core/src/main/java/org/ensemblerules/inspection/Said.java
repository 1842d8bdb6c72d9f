package org.ensemblerules.inspection;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
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

  private final SignOffReading reading;
  private final Optional<SignOff> signOff;
  private final Set<CriterionRow> named;
  private final Predicate<CriterionRow> notFitted;
  private final List<Set<Outcome>> bySelf;
  private final Set<RowKey> unknown = new TreeSet<>();

  /** {@code places}: where each criterion stands among those required. */
  Said(
      Inspection inspection,
      List<CriterionRow> required,
      Map<RowKey, Integer> places,
      SignOffReading reading,
      Predicate<CriterionRow> notFitted) {
    this.reading = reading;
    this.signOff = inspection.signOff();
    this.named = signOff.map(each -> reading.found(each, required)).orElse(Set.of());
    this.notFitted = notFitted;
    this.bySelf = new ArrayList<>(Collections.nCopies(required.size(), Set.of()));
    for (CriterionOutcome each : inspection.outcomes()) {
      Integer place = places.get(each.criterion());
      if (place == null) {
        unknown.add(each.criterion());
      } else {
        bySelf.set(place, each.outcome().after(bySelf.get(place)));
      }
    }
  }

  /** The keys of which something is said and that are none of those required, in order. */
  List<RowKey> unknown() {
    return List.copyOf(unknown);
  }

  /** Of a criterion at its place among those required. */
  Of of(int place, CriterionRow row) {
    Set<Outcome> said = bySelf.get(place);
    Optional<Outcome> signed = signed(row);
    if (notFitted.test(row)) {
      return notFitted(said, signed);
    }
    if (said.isEmpty()) {
      return signed.isPresent()
          ? new Of(signed.get().after(said), true, false)
          : new Of(said, false, false);
    }
    boolean contradicted =
        signed.isPresent()
            && (said.contains(Outcome.NOT_DONE)
                || (signed.get() == Outcome.FOUND) != said.contains(Outcome.FOUND));
    boolean found = contradicted && signed.get() == Outcome.FOUND;
    return new Of(found ? Outcome.FOUND.after(said) : said, false, contradicted);
  }

  /** Of a part that the element is said not to have; a sign-off need not speak of it. */
  private static Of notFitted(Set<Outcome> said, Optional<Outcome> signed) {
    Set<Outcome> all = signed.equals(Optional.of(Outcome.FOUND)) ? Outcome.FOUND.after(said) : said;
    return all.isEmpty()
        ? new Of(Outcome.NOT_FITTED.after(all), false, false)
        : new Of(all, false, all.contains(Outcome.CLEAR) || all.contains(Outcome.FOUND));
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
