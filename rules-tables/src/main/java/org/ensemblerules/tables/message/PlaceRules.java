package org.ensemblerules.tables.message;

import java.time.LocalDate;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import org.ensemblerules.record.PlaceCode;
import org.ensemblerules.ruleset.AdoptionAnswer;
import org.ensemblerules.ruleset.AdoptionTable;
import org.ensemblerules.ruleset.Subject;
import org.ensemblerules.source.Edition;

/**
 * What the law of a place asks to go by.
 *
 * @param place the place; not null
 * @param asOf the day asked about; not null
 * @param bought when the gear was bought; empty if not known; not null
 * @param subjects the rules for each subject; none where nothing is known of the place, which is no
 *     leave to do as one likes; not null
 * @since 0.1
 */
public record PlaceRules(
    PlaceCode place,
    LocalDate asOf,
    Optional<LocalDate> bought,
    Map<Subject, List<PlaceRule>> subjects) {
  /** Copies the map, in the order of the subjects. */
  public PlaceRules {
    Objects.requireNonNull(place, "place");
    Objects.requireNonNull(asOf, "asOf");
    Objects.requireNonNull(bought, "bought");
    Map<Subject, List<PlaceRule>> copy = new EnumMap<>(Subject.class);
    subjects.forEach((subject, rules) -> copy.put(subject, List.copyOf(rules)));
    subjects = Collections.unmodifiableMap(copy);
  }

  /**
   * Asks what holds, subject by subject.
   *
   * @param editions the editions that there are of a subject; not null
   * @param adoptions what laws ask; not null
   * @param place the place; not null
   * @param day the day; not null
   * @param bought when the gear was bought; empty if not known; not null
   * @return the answer; never null
   */
  public static PlaceRules of(
      Function<Subject, List<Edition>> editions,
      AdoptionTable adoptions,
      PlaceCode place,
      LocalDate day,
      Optional<LocalDate> bought) {
    Map<Subject, List<PlaceRule>> subjects = new EnumMap<>(Subject.class);
    for (Subject subject : Subject.values()) {
      List<AdoptionAnswer.Held> held =
          adoptions.inForce(place, day, subject) instanceof AdoptionAnswer.Rules rules
              ? rules.rules()
              : List.of();
      subjects.put(
          subject,
          held.stream()
              .map(
                  one ->
                      PlaceRule.of(
                          one,
                          AdoptionTable.choose(one.row(), editions.apply(subject), day, bought)))
              .toList());
    }
    return new PlaceRules(place, day, bought, subjects);
  }
}
