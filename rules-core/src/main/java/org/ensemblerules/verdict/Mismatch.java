package org.ensemblerules.verdict;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.Sets;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.ensemblerules.ruleset.Identity;
import org.ensemblerules.ruleset.Subject;
import org.ensemblerules.source.InvalidValueException;
import org.ensemblerules.source.OriginId;

/**
 * One respect in which two identities of rules differ.
 *
 * @since 0.1
 */
public sealed interface Mismatch {
  /**
   * For a subject another edition was chosen.
   *
   * @param subject the subject; not null
   * @param then the edition then; empty if none was chosen
   * @param now the edition now; empty if none is chosen
   */
  record OtherEdition(Subject subject, Optional<OriginId> then, Optional<OriginId> now)
      implements Mismatch {
    /** Checks for nulls. */
    public OtherEdition {
      Objects.requireNonNull(subject, "subject");
      Objects.requireNonNull(then, "then");
      Objects.requireNonNull(now, "now");
    }

    @Override
    public String text() {
      return "edition for " + subject + ": then " + shown(then) + ", now " + shown(now);
    }
  }

  /**
   * Other overlays were laid over the editions.
   *
   * @param then the overlays then, in order; not null
   * @param now the overlays now, in order; not null
   */
  record OtherOverlays(List<OriginId> then, List<OriginId> now) implements Mismatch {
    /** Copies the lists. */
    public OtherOverlays {
      then = List.copyOf(then);
      now = List.copyOf(now);
    }

    @Override
    public String text() {
      return "overlays: then " + then + ", now " + now;
    }
  }

  /**
   * A table has another revision, or only one of the two has it.
   *
   * @param table the name of its file; not null
   * @param then its revision then; empty if it was not there
   * @param now its revision now; empty if it is not there
   */
  record OtherRevision(String table, Optional<Integer> then, Optional<Integer> now)
      implements Mismatch {
    /** Checks for nulls. */
    public OtherRevision {
      Objects.requireNonNull(table, "table");
      Objects.requireNonNull(then, "then");
      Objects.requireNonNull(now, "now");
    }

    @Override
    public String text() {
      return "revision of " + table + ": then " + shown(then) + ", now " + shown(now);
    }
  }

  /**
   * The fingerprint was made of another form of the rules' text, so that whether the rows are the
   * same cannot be told from it. The fingerprint of form 1 held the names of the program's own
   * classes; a change of the program alone changed it.
   *
   * @param then the form then, 1 or more
   * @param now the form now, 1 or more
   */
  record OtherForm(int then, int now) implements Mismatch {
    /**
     * Checks the numbers.
     *
     * @throws InvalidValueException if one is below 1 or both are the same
     */
    public OtherForm {
      InvalidValueException.require(then >= 1, "OtherForm.then", then, "1 or more");
      InvalidValueException.require(
          now >= 1 && now != then, "OtherForm.now", now, "1 or more, and not that of then");
    }

    @Override
    public String text() {
      return "form of the fingerprint: then "
          + then
          + ", now "
          + now
          + "; "
          + (then == 1
              ? "form 1 was made over names of the program's own classes, "
              : "each form writes out the rows in its own way, ")
          + "so nobody can tell from it whether the rows are the same";
    }
  }

  /**
   * The rows themselves differ. Where nothing else does, somebody changed a table without a new
   * revision, or the release expands the same files differently.
   *
   * @param then the fingerprint then; not null
   * @param now the fingerprint now; not null
   */
  record OtherRows(String then, String now) implements Mismatch {
    /** Checks for nulls. */
    public OtherRows {
      Objects.requireNonNull(then, "then");
      Objects.requireNonNull(now, "now");
    }

    @Override
    public String text() {
      return "fingerprint of the rows: then " + then + ", now " + now;
    }
  }

  /**
   * Returns the difference on one line.
   *
   * @return the text; never null
   */
  String text();

  private static String shown(Optional<?> value) {
    return value.map(Object::toString).orElse("none");
  }

  /**
   * Lists in what two identities differ.
   *
   * @param then the earlier; not null
   * @param now the later; not null
   * @return the differences: editions by subject, then overlays, then revisions by table, then the
   *     form of the fingerprint, or else the fingerprint; empty if they are equal; never null
   */
  static List<Mismatch> between(Identity then, Identity now) {
    ImmutableList.Builder<Mismatch> all = ImmutableList.builder();
    for (Subject subject : keys(then.editions(), now.editions())) {
      Optional<OriginId> was = Optional.ofNullable(then.editions().get(subject));
      Optional<OriginId> is = Optional.ofNullable(now.editions().get(subject));
      if (!was.equals(is)) {
        all.add(new OtherEdition(subject, was, is));
      }
    }
    if (!then.overlays().equals(now.overlays())) {
      all.add(new OtherOverlays(then.overlays(), now.overlays()));
    }
    for (String table : keys(then.revisions(), now.revisions())) {
      Optional<Integer> was = Optional.ofNullable(then.revisions().get(table));
      Optional<Integer> is = Optional.ofNullable(now.revisions().get(table));
      if (!was.equals(is)) {
        all.add(new OtherRevision(table, was, is));
      }
    }
    if (then.form() != now.form()) {
      all.add(new OtherForm(then.form(), now.form()));
    } else if (!then.fingerprint().equals(now.fingerprint())) {
      all.add(new OtherRows(then.fingerprint(), now.fingerprint()));
    }
    return all.build();
  }

  private static <K extends Comparable<K>> Set<K> keys(Map<K, ?> one, Map<K, ?> other) {
    return new TreeSet<>(Sets.union(one.keySet(), other.keySet()));
  }
}
