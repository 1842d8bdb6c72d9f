package org.ensemblerules.tables;

import java.time.LocalDate;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.ensemblerules.record.PlaceCode;
import org.ensemblerules.ruleset.AdoptionAnswer;
import org.ensemblerules.ruleset.AdoptionKind;
import org.ensemblerules.ruleset.AdoptionRow;
import org.ensemblerules.ruleset.AdoptionTable;
import org.ensemblerules.ruleset.Subject;
import org.ensemblerules.source.Checked;
import org.ensemblerules.source.CitedRow;
import org.ensemblerules.source.OriginId;
import org.ensemblerules.tables.codec.AdoptionTree;
import org.ensemblerules.tables.codec.VerdictReader;
import org.ensemblerules.tables.json.JsonLine;
import org.ensemblerules.tables.json.JsonReader;

/**
 * Writes and reads what the law of a place asks to go by, in the form of {@code
 * rules-answer.schema.json} of this package's {@code schema} folder. Safe for use by many threads.
 */
public final class AdoptionJson {
  private static final int LONGEST = 16 * 1024 * 1024;
  private static final JsonReader READER = VerdictReader.reader(LONGEST);

  private AdoptionJson() {}

  /**
   * What the law of a place asks to go by.
   *
   * @param place the place; not null
   * @param asOf the day asked about; not null
   * @param bought when the gear was bought; empty if not known; not null
   * @param subjects the rules for each subject; none where nothing is known of the place, which is
   *     no leave to do as one likes; not null
   */
  public record Answer(
      PlaceCode place,
      LocalDate asOf,
      Optional<LocalDate> bought,
      Map<Subject, List<Rule>> subjects) {
    /** Copies the map, in the order of the subjects. */
    public Answer {
      Objects.requireNonNull(place, "place");
      Objects.requireNonNull(asOf, "asOf");
      Objects.requireNonNull(bought, "bought");
      Map<Subject, List<Rule>> copy = new EnumMap<>(Subject.class);
      subjects.forEach((subject, rules) -> copy.put(subject, List.copyOf(rules)));
      subjects = Collections.unmodifiableMap(copy);
    }

    /**
     * Asks what holds, subject by subject.
     *
     * @param tables the editions there are; not null
     * @param adoptions what laws ask; not null
     * @param place the place; not null
     * @param day the day; not null
     * @param bought when the gear was bought; empty if not known; not null
     * @return the answer; never null
     */
    public static Answer of(
        LoadedTables tables,
        AdoptionTable adoptions,
        PlaceCode place,
        LocalDate day,
        Optional<LocalDate> bought) {
      Map<Subject, List<Rule>> subjects = new EnumMap<>(Subject.class);
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
                        Rule.of(
                            one,
                            AdoptionTable.choose(one.row(), tables.editions(subject), day, bought)))
                .toList());
      }
      return new Answer(place, day, bought, subjects);
    }
  }

  /**
   * A rule that holds, or may.
   *
   * @param where the code of the place, or of the country where it holds in all of it; not null
   * @param kind how it chooses an edition; not null
   * @param edition the edition that it comes to; empty if that is not known; not null
   * @param from the first day on which it holds; empty if that was not seen; not null
   * @param before the first day on which it holds no longer; empty if no end was seen; not null
   * @param covers whom or what it covers, in words; not null
   * @param sinceKnown whether the day is known from which it holds
   * @param stale whether the row is past its review
   * @param row the row that says so; not null
   */
  public record Rule(
      String where,
      AdoptionKind kind,
      Optional<OriginId> edition,
      Optional<LocalDate> from,
      Optional<LocalDate> before,
      String covers,
      boolean sinceKnown,
      boolean stale,
      CitedRow row) {
    /** Checks for nulls. */
    public Rule {
      Objects.requireNonNull(where, "where");
      Objects.requireNonNull(kind, "kind");
      Objects.requireNonNull(edition, "edition");
      Objects.requireNonNull(from, "from");
      Objects.requireNonNull(before, "before");
      Objects.requireNonNull(covers, "covers");
      Objects.requireNonNull(row, "row");
    }

    private static Rule of(AdoptionAnswer.Held held, Optional<OriginId> edition) {
      AdoptionRow row = held.row();
      return new Rule(
          row.where(),
          row.kind(),
          edition,
          row.from(),
          row.before(),
          row.covers(),
          held.sinceKnown(),
          held.stale(),
          row.cited());
    }
  }

  /**
   * Writes what holds, subject by subject.
   *
   * @param answer the answer; not null
   * @return one line of JSON without a line end, its fields in a fixed order; never null
   */
  public static String write(Answer answer) {
    return JsonLine.of(AdoptionTree.write(Objects.requireNonNull(answer, "answer")));
  }

  /**
   * Reads an answer that was written. It equals the one written, and writing it again gives the
   * same text.
   *
   * @param sourceName the name of the text, for faults; not null
   * @param json the text, at most 16,777,216 characters; not null
   * @return the answer, or every fault with its place; never null
   */
  public static Checked<Answer, JsonFault> read(String sourceName, String json) {
    Objects.requireNonNull(sourceName, "sourceName");
    Objects.requireNonNull(json, "json");
    return READER.read(sourceName, json, AdoptionTree::read);
  }
}
