package org.ensemblerules.verdict;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.Sets;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import org.ensemblerules.source.InvalidValueException;

/**
 * What computing a stored verdict again comes to. It is computed only with the rules of then; rules
 * that differ are named, since a verdict of theirs would be another verdict.
 *
 * @since 0.1
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
   * Returns the outcome on one line.
   *
   * @return the text; never null
   */
  String text();
}
