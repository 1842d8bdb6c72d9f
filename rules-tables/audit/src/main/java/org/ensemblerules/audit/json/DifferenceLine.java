package org.ensemblerules.audit.json;

import java.time.LocalDate;
import java.util.Collections;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.ensemblerules.audit.difference.ActionChange;
import org.ensemblerules.audit.difference.AgeMove;
import org.ensemblerules.audit.difference.ChangeKind;
import org.ensemblerules.audit.difference.DueMove;
import org.ensemblerules.audit.difference.ElementDifference;
import org.ensemblerules.audit.difference.FleetDifference;
import org.ensemblerules.audit.difference.FleetEffect;
import org.ensemblerules.audit.difference.RowChange;
import org.ensemblerules.audit.difference.RuleSetDifference;
import org.ensemblerules.audit.difference.Tally;
import org.ensemblerules.gear.LayerKind;
import org.ensemblerules.gear.NamedElement;
import org.ensemblerules.retirement.AgeAnswer;
import org.ensemblerules.ruleset.Identity;
import org.ensemblerules.source.CitedRow;
import org.ensemblerules.source.Comparison;
import org.ensemblerules.source.InvalidValueException;
import org.ensemblerules.source.Row;
import org.ensemblerules.source.RowKey;
import org.ensemblerules.verdict.Action;
import org.ensemblerules.verdict.Service;

/**
 * One line of what differs between two sets of rules, as {@link DifferenceJson} writes it.
 *
 * @since 0.1
 */
public sealed interface DifferenceLine {
  /**
   * Which rules are compared.
   *
   * @param before the rules of now; not null
   * @param after the rules set against them; not null
   * @param counts for each table how many of its rows differ how, each 1 or more; not null
   */
  record Rules(Identity before, Identity after, Map<String, Map<ChangeKind, Integer>> counts)
      implements DifferenceLine {
    /** Copies the map in its order. */
    public Rules {
      Objects.requireNonNull(before, "before");
      Objects.requireNonNull(after, "after");
      Map<String, Map<ChangeKind, Integer>> copy = new LinkedHashMap<>();
      counts.forEach(
          (table, kinds) -> {
            Map<ChangeKind, Integer> some = new EnumMap<>(ChangeKind.class);
            some.putAll(kinds);
            copy.put(table, Collections.unmodifiableMap(some));
          });
      counts = Collections.unmodifiableMap(copy);
    }

    /**
     * Tells which rules a difference is between.
     *
     * @param difference the difference; not null
     * @return the line; never null
     */
    public static Rules of(RuleSetDifference difference) {
      return new Rules(difference.before(), difference.after(), difference.counts());
    }
  }

  /**
   * A row that differs.
   *
   * @param kind how; not null
   * @param table its table; not null
   * @param topic what it is about; not null
   * @param before the row of now; empty exactly if one is added; not null
   * @param after the row of the other rules; empty exactly if one is removed; not null
   * @param strictness whether the row after is stricter than the one before; not null
   */
  record ChangedRow(
      ChangeKind kind,
      String table,
      List<String> topic,
      Optional<RowText> before,
      Optional<RowText> after,
      Comparison strictness)
      implements DifferenceLine {
    /**
     * Checks which rows there are.
     *
     * @throws InvalidValueException if they are not those of the kind
     */
    public ChangedRow {
      Objects.requireNonNull(kind, "kind");
      Objects.requireNonNull(table, "table");
      topic = List.copyOf(topic);
      Objects.requireNonNull(strictness, "strictness");
      InvalidValueException.require(
          before.isPresent() == (kind != ChangeKind.ADDED)
              && after.isPresent() == (kind != ChangeKind.REMOVED),
          "ChangedRow.kind",
          kind,
          "ADDED with only a row after, REMOVED with only a row before, or both rows");
    }

    /**
     * Tells of a change.
     *
     * @param change the change; not null
     * @return the line; never null
     */
    public static ChangedRow of(RowChange change) {
      return new ChangedRow(
          change.kind(),
          change.table(),
          change.topic(),
          change.before().map(RowText::of),
          change.after().map(RowText::of),
          change.strictness());
    }
  }

  /**
   * What a row said.
   *
   * @param row which row, and on whose word; not null
   * @param says its values, in the order of its kind; not null
   */
  record RowText(CitedRow row, List<String> says) {
    /** Copies the list. */
    public RowText {
      Objects.requireNonNull(row, "row");
      says = List.copyOf(says);
    }

    private static RowText of(Row row) {
      return new RowText(row.cited(), row.canonical());
    }
  }

  /**
   * What differs for an element.
   *
   * @param element which; not null
   * @param asOf the day judged for; not null
   * @param before whether it may serve by the rules of now; not null
   * @param after whether it may by the others; not null
   * @param effects what that comes to; not null
   * @param gained what only the other rules ask for; not null
   * @param lost what only the rules of now ask for; not null
   * @param due what falls due on another day; not null
   * @param ages what leaves service for its age on another day; not null
   */
  record ChangedElement(
      NamedElement element,
      LocalDate asOf,
      Service before,
      Service after,
      Set<FleetEffect> effects,
      List<Asked> gained,
      List<Asked> lost,
      List<DueMove> due,
      List<Leaving> ages)
      implements DifferenceLine {
    /** Copies the lists. */
    public ChangedElement {
      Objects.requireNonNull(element, "element");
      Objects.requireNonNull(asOf, "asOf");
      Objects.requireNonNull(before, "before");
      Objects.requireNonNull(after, "after");
      effects = Collections.unmodifiableSet(new LinkedHashSet<>(effects));
      gained = List.copyOf(gained);
      lost = List.copyOf(lost);
      due = List.copyOf(due);
      ages = List.copyOf(ages);
    }

    /**
     * Tells of a difference.
     *
     * @param difference the difference; not null
     * @return the line; never null
     */
    public static ChangedElement of(ElementDifference difference) {
      return new ChangedElement(
          difference.before().element(),
          difference.before().asOf(),
          difference.before().service(),
          difference.after().service(),
          difference.effects(),
          difference.gained().stream().map(Asked::of).toList(),
          difference.lost().stream().map(Asked::of).toList(),
          difference.due(),
          difference.ages().stream().map(Leaving::of).toList());
    }
  }

  /**
   * What only one set of rules asks for.
   *
   * @param action what must be done; not null
   * @param rows the rows that ask for it; not null
   */
  record Asked(Action action, List<RowKey> rows) {
    /** Copies the list. */
    public Asked {
      Objects.requireNonNull(action, "action");
      rows = List.copyOf(rows);
    }

    private static Asked of(ActionChange change) {
      return new Asked(change.action(), List.copyOf(change.rows()));
    }
  }

  /**
   * When an element leaves service for its age, in words.
   *
   * @param layer the layer; empty for the element as a whole; not null
   * @param before by the rules of now; empty if they do not say; not null
   * @param after by the others; empty if they do not say; not null
   */
  record Leaving(Optional<LayerKind> layer, Optional<String> before, Optional<String> after) {
    /** Checks for nulls. */
    public Leaving {
      Objects.requireNonNull(layer, "layer");
      Objects.requireNonNull(before, "before");
      Objects.requireNonNull(after, "after");
    }

    private static Leaving of(AgeMove move) {
      return new Leaving(
          move.layer(), move.before().map(AgeAnswer::text), move.after().map(AgeAnswer::text));
    }
  }

  /**
   * For how many elements what differs.
   *
   * @param asOf the day judged for; not null
   * @param total how many, in all; not null
   * @param gainedFor for each row, for how many elements it asks for more; not null
   * @param lostWith for each row, for how many elements it no longer asks; not null
   */
  record ChangedFleet(
      LocalDate asOf, Tally total, Map<RowKey, Long> gainedFor, Map<RowKey, Long> lostWith)
      implements DifferenceLine {
    /** Copies the maps in their order. */
    public ChangedFleet {
      Objects.requireNonNull(asOf, "asOf");
      Objects.requireNonNull(total, "total");
      gainedFor = Collections.unmodifiableMap(new LinkedHashMap<>(gainedFor));
      lostWith = Collections.unmodifiableMap(new LinkedHashMap<>(lostWith));
    }

    /**
     * Tells of a difference.
     *
     * @param difference the difference; not null
     * @return the line; never null
     */
    public static ChangedFleet of(FleetDifference difference) {
      return new ChangedFleet(
          difference.asOf(),
          difference.counts().total(),
          difference.counts().gainedFor(),
          difference.counts().lostWith());
    }
  }
}
