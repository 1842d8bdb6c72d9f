package org.ensemblerules.schedule;

import com.google.common.collect.ImmutableSet;
import com.google.common.collect.Sets;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.ensemblerules.defect.DefectKind;
import org.ensemblerules.gear.Site;
import org.ensemblerules.source.Comparison;

/**
 * Which of the things that an inspection finds call for a task.
 *
 * @param at the sites at which they count; empty if anywhere; not null
 * @param butFor the defects that never do; not null
 * @param reaching the defects that count as well where nobody has named the layer, since they may
 *     have reached the sites; not null
 * @since 0.1
 */
public record FoundWhat(Set<Site> at, Set<DefectKind> butFor, Set<DefectKind> reaching) {
  /** Anything found anywhere. */
  public static final FoundWhat ANYTHING = new FoundWhat(Set.of(), Set.of(), Set.of());

  /** Copies the sets. */
  public FoundWhat {
    at = ImmutableSet.copyOf(at);
    butFor = Sets.immutableEnumSet(butFor);
    reaching = Sets.immutableEnumSet(reaching);
  }

  /**
   * Compares which findings count: more of them are stricter.
   *
   * @param other the other; not null
   * @return how strict this one is, set against the other; never null
   */
  public Comparison compareStrictness(FoundWhat other) {
    Comparison places =
        at.isEmpty() || other.at.isEmpty()
            ? Comparison.of(at.isEmpty(), other.at.isEmpty())
            : Comparison.moreAreStricter(at, other.at);
    return places
        .and(Comparison.moreAreStricter(other.butFor, butFor))
        .and(Comparison.moreAreStricter(reaching, other.reaching));
  }

  /**
   * Returns what counts, in words.
   *
   * @return the text, which begins with a comma; empty if anything anywhere counts
   */
  public String text() {
    List<String> parts = new ArrayList<>();
    if (!at.isEmpty()) {
      parts.add(
          ", at " + at.stream().sorted().map(Site::toString).collect(Collectors.joining(", ")));
    }
    if (!butFor.isEmpty()) {
      parts.add(", but for " + joined(butFor));
    }
    if (!reaching.isEmpty()) {
      parts.add(", and wherever the layer is not named " + joined(reaching));
    }
    return String.join("", parts);
  }

  private static String joined(Set<DefectKind> defects) {
    return defects.stream().map(Enum::name).collect(Collectors.joining(", "));
  }
}
