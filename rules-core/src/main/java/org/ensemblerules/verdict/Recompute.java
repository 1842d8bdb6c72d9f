package org.ensemblerules.verdict;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.Sets;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.ensemblerules.ruleset.Identity;
import org.ensemblerules.ruleset.RuleSet;
import org.ensemblerules.ruleset.Subject;
import org.ensemblerules.source.InvalidValueException;
import org.ensemblerules.source.OriginId;

/**
 * Computes a stored verdict again, and only with the rules that it was computed with then. Rules
 * that differ are named; a verdict of theirs would be another verdict.
 */
public sealed interface Recompute {
  /**
   * The rules are those of then, and the verdict is the same: equal in every part.
   *
   * @param verdict the verdict computed again; not null
   */
  record Same(Verdict verdict) implements Recompute {
    /** Checks for null. */
    public Same {
      Objects.requireNonNull(verdict, "verdict");
    }

    @Override
    public String text() {
      return "the same verdict: " + verdict.service() + ", " + verdict.headline();
    }
  }

  /**
   * The rules are those of then, and yet the verdict is another: what was handed over then was
   * another, or the stored verdict was changed, or the program now reads the same rules otherwise.
   *
   * @param then the stored verdict; not null
   * @param now the verdict computed again; not null
   * @param in the parts in which they differ, at least one; not null
   */
  record OtherVerdict(Verdict then, Verdict now, Set<VerdictPart> in) implements Recompute {
    /**
     * Copies the parts.
     *
     * @throws InvalidValueException if there is none
     */
    public OtherVerdict {
      Objects.requireNonNull(then, "then");
      Objects.requireNonNull(now, "now");
      in = Sets.immutableEnumSet(in);
      InvalidValueException.require(!in.isEmpty(), "OtherVerdict.in", in, "at least one part");
    }

    @Override
    public String text() {
      return "another verdict by the same rules: then "
          + then.service()
          + ", "
          + then.headline()
          + ", now "
          + now.service()
          + ", "
          + now.headline()
          + "; they differ in "
          + in.stream().map(Enum::name).collect(Collectors.joining(", "));
    }
  }

  /**
   * The rules are others, or it cannot be told that they are the same.
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

    @Override
    public String text() {
      return "not computed again, the rules differ: "
          + mismatches.stream().map(Mismatch::text).collect(Collectors.joining("; "));
    }
  }

  /**
   * Computes a stored verdict again, for the day it was judged for.
   *
   * @param rules the rules at hand; not null
   * @param assessment what was judged then; not null
   * @param then the stored verdict; not null
   * @return whether the verdict is the same, or in what it or the rules differ; never null
   * @throws InvalidValueException if the verdict is about another element than the assessment
   */
  static Recompute recompute(RuleSet rules, Assessment assessment, Verdict then) {
    InvalidValueException.require(
        assessment.element().named().equals(then.element()),
        "Recompute.assessment",
        assessment.element().named(),
        "the element of the verdict, " + then.element());
    Identity now = rules.identity();
    // The fingerprint covers the rows and the editions chosen; a revision alone changes no verdict.
    if (then.identity().form() != now.form()
        || !then.identity().fingerprint().equals(now.fingerprint())) {
      return new RulesDiffer(mismatches(then.identity(), now));
    }
    Verdict again = Assess.assess(rules, assessment, then.asOf());
    Set<VerdictPart> differing = VerdictPart.differing(then, again);
    return differing.isEmpty() ? new Same(again) : new OtherVerdict(then, again, differing);
  }

  /**
   * Returns the outcome on one line.
   *
   * @return the text; never null
   */
  String text();

  /**
   * Lists in what two identities differ.
   *
   * @param then the earlier; not null
   * @param now the later; not null
   * @return the differences: editions by subject, then overlays, then revisions by table, then the
   *     form of the fingerprint, or else the fingerprint; empty if they are equal; never null
   */
  static List<Mismatch> mismatches(Identity then, Identity now) {
    ImmutableList.Builder<Mismatch> all = ImmutableList.builder();
    for (Subject subject : keys(then.editions(), now.editions())) {
      Optional<OriginId> was = Optional.ofNullable(then.editions().get(subject));
      Optional<OriginId> is = Optional.ofNullable(now.editions().get(subject));
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
    if (then.form() != now.form()) {
      all.add(new Mismatch.OtherForm(then.form(), now.form()));
    } else if (!then.fingerprint().equals(now.fingerprint())) {
      all.add(new Mismatch.OtherRows(then.fingerprint(), now.fingerprint()));
    }
    return all.build();
  }

  private static <K extends Comparable<K>> Set<K> keys(Map<K, ?> one, Map<K, ?> other) {
    return new TreeSet<>(Sets.union(one.keySet(), other.keySet()));
  }
}
