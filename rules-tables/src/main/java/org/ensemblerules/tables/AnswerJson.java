package org.ensemblerules.tables;

import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.ensemblerules.gear.NamedElement;
import org.ensemblerules.source.Checked;
import org.ensemblerules.source.CitedRow;
import org.ensemblerules.tables.codec.AnswerTree;

/**
 * Reads answers back that this package's other classes wrote and somebody kept: what they said, by
 * codes, texts, days and the rows they rest on. What an answer says beside these is passed over.
 * What can be written again to the same text is read by the class that writes it: verdicts by
 * {@link VerdictJson}, what an inspection looks at by {@link CriteriaJson}, and the rules of a
 * place by {@link AdoptionJson}. Safe for use by many threads.
 */
public final class AnswerJson {
  private AnswerJson() {}

  /** What was asked. */
  public enum Question {
    /** What falls due, as {@link DueJson} writes it. */
    DUE,
    /** How gear is cared for, as {@link CareJson} writes it. */
    CARE,
    /** What becomes of damage, as {@link RepairJson} writes it. */
    REPAIR,
    /** Whether a file is complete, as {@link FileAnswerJson} writes it. */
    FILE,
    /** What a laboratory report comes to, as {@link TestCaseJson} writes it. */
    TEST,
    /** Which steps of custody are on record, as {@link CustodyJson} writes it. */
    CUSTODY,
    /** Which routes of disposal are open, as {@link DisposalJson} writes it. */
    DISPOSAL
  }

  /**
   * What was answered.
   *
   * @param question what was asked; not null
   * @param id the id of the element, or of the report; not null
   * @param element the element; empty for a report
   * @param asOf the day of the answer; empty if it has none
   * @param code the answer in a code, as in STEPS, or for a file true if it is complete; empty if
   *     its items are the answer
   * @param items what it says, in its own order; not null
   */
  public record Told(
      Question question,
      String id,
      Optional<NamedElement> element,
      Optional<LocalDate> asOf,
      Optional<String> code,
      List<Item> items) {
    /** Copies the list. */
    public Told {
      Objects.requireNonNull(question, "question");
      Objects.requireNonNull(id, "id");
      Objects.requireNonNull(element, "element");
      Objects.requireNonNull(asOf, "asOf");
      Objects.requireNonNull(code, "code");
      items = List.copyOf(items);
    }

    /**
     * Returns the items of one list.
     *
     * @param list the name of the list in JSON, as in missed; not null
     * @return its items in their order; never null
     */
    public List<Item> items(String list) {
      return items.stream().filter(item -> item.list().equals(list)).toList();
    }
  }

  /**
   * One thing that an answer says.
   *
   * @param list the list that it stands in, by its name in JSON; not null
   * @param code what it is about, as a task, a step, a route; not null
   * @param answer what is said of that in a code, as in MISSING; empty if it is only listed
   * @param on its day; empty if it has none
   * @param texts what it says in words; not null
   * @param rows the rows that it rests on; not null
   */
  public record Item(
      String list,
      String code,
      Optional<String> answer,
      Optional<LocalDate> on,
      List<String> texts,
      List<CitedRow> rows) {
    /** Copies the lists. */
    public Item {
      Objects.requireNonNull(list, "list");
      Objects.requireNonNull(code, "code");
      Objects.requireNonNull(answer, "answer");
      Objects.requireNonNull(on, "on");
      texts = List.copyOf(texts);
      rows = List.copyOf(rows);
    }
  }

  /**
   * Reads an answer.
   *
   * @param question what was asked; not null
   * @param sourceName the name of the text, for faults; not null
   * @param json the text, at most 67,108,864 characters; not null
   * @return what was answered, or every fault with its place; never null
   */
  public static Checked<Told, JsonFault> read(Question question, String sourceName, String json) {
    Objects.requireNonNull(question, "question");
    Objects.requireNonNull(sourceName, "sourceName");
    Objects.requireNonNull(json, "json");
    return AnswerTree.read(question, sourceName, json);
  }
}
