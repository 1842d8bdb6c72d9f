package org.ensemblerules.tables.json;

import java.util.Collection;
import java.util.Locale;
import java.util.Optional;

/** Finds the allowed name that was probably meant, by edit distance without regard to case. */
public final class NearestName {
  private static final int LONGEST = 100;

  private NearestName() {}

  /**
   * Finds the allowed name nearest to the one given.
   *
   * @param given the name given
   * @param allowed the names allowed
   * @return the nearest; of several the first; empty if every one differs in more than half of its
   *     characters
   */
  public static Optional<String> of(String given, Collection<String> allowed) {
    if (given.length() > LONGEST) {
      return Optional.empty();
    }
    String nearest = null;
    int least = Integer.MAX_VALUE;
    for (String name : allowed) {
      int longer = Math.max(given.length(), name.length());
      // They differ at least by what one is longer; the rest is worked out only if that is near.
      if (Math.abs(given.length() - name.length()) * 2 > longer) {
        continue;
      }
      int distance = distance(fold(given), fold(name));
      if (distance * 2 <= longer && distance < least) {
        least = distance;
        nearest = name;
      }
    }
    return Optional.ofNullable(nearest);
  }

  /**
   * Says in words what is allowed in place of a name: the nearest first, then all.
   *
   * @param given the name given
   * @param allowed the names allowed
   * @return as in {@code nearest COAT; one of COAT, TROUSERS}
   */
  public static String allowed(String given, Collection<String> allowed) {
    if (allowed.isEmpty()) {
      return "none";
    }
    if (allowed.size() == 1) {
      return allowed.iterator().next();
    }
    return allowed(given, allowed, "one of " + String.join(", ", allowed));
  }

  /**
   * Says in words what is allowed in place of a name whose alternatives are too many to list.
   *
   * @param given the name given
   * @param allowed the names allowed
   * @param described the names allowed, in words
   * @return as in {@code nearest some-study; a source of sources.json}
   */
  public static String allowed(String given, Collection<String> allowed, String described) {
    return of(given, allowed).map(name -> "nearest " + name + "; " + described).orElse(described);
  }

  private static String fold(String name) {
    return name.toUpperCase(Locale.ROOT).replace('-', '_');
  }

  /** Counts the single-character insertions, deletions and replacements between two texts. */
  private static int distance(String a, String b) {
    int[] row = new int[b.length() + 1];
    for (int j = 0; j <= b.length(); j++) {
      row[j] = j;
    }
    for (int i = 1; i <= a.length(); i++) {
      int diagonal = row[0];
      row[0] = i;
      for (int j = 1; j <= b.length(); j++) {
        int replaced = diagonal + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
        diagonal = row[j];
        row[j] = Math.min(replaced, 1 + Math.min(row[j], row[j - 1]));
      }
    }
    return row[b.length()];
  }
}
