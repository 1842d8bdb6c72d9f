package org.ensemblerules.audit;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.Sets;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.ensemblerules.ruleset.Identity;
import org.ensemblerules.ruleset.RuleSet;
import org.ensemblerules.ruleset.Subject;
import org.ensemblerules.source.EditionId;
import org.ensemblerules.source.InvalidValueException;
import org.ensemblerules.verdict.Assess;
import org.ensemblerules.verdict.Assessment;
import org.ensemblerules.verdict.Verdict;

/**
 * Computes an old verdict again, and only with the rules that it was computed with then. Rules that
 * differ are named; a verdict of theirs would be another verdict.
 */
public sealed interface Recompute {
  /**
   * The rules are those of then; this is the verdict.
   *
   * @param verdict the verdict computed again; not null
   */
  record Same(Verdict verdict) implements Recompute {
    /** Checks for null. */
    public Same {
      Objects.requireNonNull(verdict, "verdict");
    }
  }

  /**
   * The rules are others.
   *
   * @param mismatches in what they differ, at least one; not null
   */
  record RulesDiffer(List<Mismatch> mismatches) implements Recompute {
    /**
     * Copies the list.
     *
     * @throws InvalidValueException if it is empty
     */
    public RulesDiffer {
      mismatches = ImmutableList.copyOf(mismatches);
      InvalidValueException.require(
          !mismatches.isEmpty(), "RulesDiffer.mismatches", mismatches, "at least one");
    }
  }

  /**
   * Computes a verdict again.
   *
   * @param rules the rules at hand; not null
   * @param assessment what was judged then; not null
   * @param asOf the day it was judged for; not null
   * @param then the identity that the old verdict names; not null
   * @return the verdict, or in what the rules differ; never null
   */
  static Recompute recompute(RuleSet rules, Assessment assessment, LocalDate asOf, Identity then) {
    // The fingerprint covers the rows and the editions chosen; a revision alone changes no verdict.
    return then.fingerprint().equals(rules.identity().fingerprint())
        ? new Same(Assess.assess(rules, assessment, asOf))
        : new RulesDiffer(mismatches(then, rules.identity()));
  }

  /**
   * Lists in what two identities differ.
   *
   * @param then the earlier; not null
   * @param now the later; not null
   * @return the differences: editions by subject, then revisions by table, then the fingerprint;
   *     empty if they are equal; never null
   */
  static List<Mismatch> mismatches(Identity then, Identity now) {
    ImmutableList.Builder<Mismatch> all = ImmutableList.builder();
    for (Subject subject : keys(then.editions(), now.editions())) {
      Optional<EditionId> was = Optional.ofNullable(then.editions().get(subject));
      Optional<EditionId> is = Optional.ofNullable(now.editions().get(subject));
      if (!was.equals(is)) {
        all.add(new Mismatch.OtherEdition(subject, was, is));
      }
    }
    if (!then.overlays().equals(now.overlays())) {
      all.add(new Mismatch.OtherOverlays(then.overlays(), now.overlays()));
    }
    for (String table : keys(then.revisions(), now.revisions())) {
      Optional<Integer> was = Optional.ofNullable(then.revisions().get(table));
      Optional<Integer> is = Optional.ofNullable(now.revisions().get(table));
      if (!was.equals(is)) {
        all.add(new Mismatch.OtherRevision(table, was, is));
      }
    }
    if (!then.fingerprint().equals(now.fingerprint())) {
      all.add(new Mismatch.OtherRows(then.fingerprint(), now.fingerprint()));
    }
    return all.build();
  }

  private static <K extends Comparable<K>> Set<K> keys(Map<K, ?> one, Map<K, ?> other) {
    return new TreeSet<>(Sets.union(one.keySet(), other.keySet()));
  }
}
