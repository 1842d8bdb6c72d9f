package org.ensemblerules.tables;

import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.ensemblerules.defect.DefectKind;
import org.ensemblerules.effect.Check;
import org.ensemblerules.effect.PermissionRow;
import org.ensemblerules.effect.PermittedDoer;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.Site;
import org.ensemblerules.gear.Use;
import org.ensemblerules.inspection.CriterionRow;
import org.ensemblerules.inspection.Equipment;
import org.ensemblerules.inspection.InspectionKind;
import org.ensemblerules.ruleset.Identity;
import org.ensemblerules.ruleset.RuleSet;
import org.ensemblerules.source.Checked;
import org.ensemblerules.source.CitedRow;
import org.ensemblerules.source.InvalidValueException;
import org.ensemblerules.tables.codec.CriteriaTree;
import org.ensemblerules.tables.codec.VerdictReader;
import org.ensemblerules.tables.json.JsonLine;
import org.ensemblerules.tables.json.JsonReader;

/**
 * Writes and reads what an inspection looks at, in the form of {@code criteria-answer.schema.json}
 * of this package's {@code schema} folder. Safe for use by many threads.
 */
public final class CriteriaJson {
  private static final int LONGEST = 16 * 1024 * 1024;
  private static final JsonReader READER = VerdictReader.reader(LONGEST);

  private CriteriaJson() {}

  /**
   * What an inspection looks at.
   *
   * @param inspection which inspection; not null
   * @param kind of what; not null
   * @param use for what use; not null
   * @param by who may make it; not null
   * @param criteria what it looks at, in its order; none if there is no such inspection; not null
   * @param rules by which rules; not null
   */
  public record Answer(
      InspectionKind inspection,
      ElementKind kind,
      Use use,
      List<PermittedDoer> by,
      List<Criterion> criteria,
      Identity rules) {
    /** Copies the lists. */
    public Answer {
      Objects.requireNonNull(inspection, "inspection");
      Objects.requireNonNull(kind, "kind");
      Objects.requireNonNull(use, "use");
      by = List.copyOf(by);
      criteria = List.copyOf(criteria);
      Objects.requireNonNull(rules, "rules");
    }

    /**
     * Asks rules.
     *
     * @param rules the rules; not null
     * @param inspection which inspection; not null
     * @param kind of what; not null
     * @param use for what use; not null
     * @return the answer; never null
     */
    public static Answer of(RuleSet rules, InspectionKind inspection, ElementKind kind, Use use) {
      return new Answer(
          inspection,
          kind,
          use,
          rules.tables().permissions().permitted(inspection.task()).stream()
              .map(PermissionRow::doer)
              .toList(),
          rules.tables().criteria().required(inspection, kind, use).stream()
              .map(Criterion::of)
              .toList(),
          rules.identity());
    }
  }

  /**
   * One thing that an inspection looks at.
   *
   * @param sites the parts looked at, at least one; not null
   * @param lookFor the defects looked for, at least one; not null
   * @param atHand what must be at hand; not null
   * @param check the hand check by which it is looked at; none if it is only looked at; not null
   * @param way how it is done; not null
   * @param row the row that asks for it, whose key is the name of the criterion; not null
   */
  public record Criterion(
      List<Site> sites,
      Set<DefectKind> lookFor,
      Set<Equipment> atHand,
      Set<Check> check,
      String way,
      CitedRow row) {
    /**
     * Copies the lists.
     *
     * @throws InvalidValueException if no part or no defect is named
     */
    public Criterion {
      sites = List.copyOf(sites);
      InvalidValueException.require(!sites.isEmpty(), "Criterion.sites", sites, "at least one");
      lookFor = Collections.unmodifiableSet(new LinkedHashSet<>(lookFor));
      InvalidValueException.require(
          !lookFor.isEmpty(), "Criterion.lookFor", lookFor, "at least one");
      atHand = Collections.unmodifiableSet(new LinkedHashSet<>(atHand));
      check = Collections.unmodifiableSet(new LinkedHashSet<>(check));
      Objects.requireNonNull(way, "way");
      Objects.requireNonNull(row, "row");
    }

    /**
     * Tells of a row.
     *
     * @param row the row; not null
     * @return what it looks at; never null
     */
    public static Criterion of(CriterionRow row) {
      return new Criterion(
          row.sites(), row.lookFor(), row.atHand(), row.check(), row.way(), row.cited());
    }
  }

  /**
   * Writes what an inspection looks at, in order, with what must be at hand, how, and by whom.
   *
   * @param answer the answer; not null
   * @return one line of JSON without a line end, its fields in a fixed order; never null
   */
  public static String write(Answer answer) {
    return JsonLine.of(CriteriaTree.write(Objects.requireNonNull(answer, "answer")));
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
    return READER.read(sourceName, json, CriteriaTree::read);
  }
}
