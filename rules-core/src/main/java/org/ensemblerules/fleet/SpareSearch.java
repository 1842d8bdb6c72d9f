package org.ensemblerules.fleet;

import com.google.common.collect.ImmutableSet;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.Known;
import org.ensemblerules.issue.SetPiece;
import org.ensemblerules.issue.SizeTable;

/**
 * Hands out the spares of one kind and use to as many as possible of those who lack one, each spare
 * once. Who comes first keeps theirs, though perhaps in another size that fits. Spares of one size
 * are alike, so that only sizes are searched.
 */
final class SpareSearch {
  private final ElementKind kind;
  private final SizeTable sizes;
  private final Map<String, Deque<SetPiece>> bySize = new TreeMap<>();
  private final Map<String, Set<String>> alike = new HashMap<>();
  private final Map<String, Long> taken = new HashMap<>();

  /** How many who need the first size are served from the second. */
  private final Map<String, Map<String, Long>> served = new HashMap<>();

  SpareSearch(ElementKind kind, SizeTable sizes, List<SetPiece> spares) {
    this.kind = kind;
    this.sizes = sizes;
    spares.stream()
        .sorted()
        .forEach(
            spare -> {
              String size = String.join("\n", spare.sizes());
              alike.putIfAbsent(size, ImmutableSet.copyOf(spare.sizes()));
              bySize.computeIfAbsent(size, none -> new ArrayDeque<>()).add(spare);
            });
  }

  /** Answers for each of those who lack one, by the size needed, in the order of their turn. */
  List<Optional<SetPiece>> handOut(List<Optional<String>> needed) {
    List<Boolean> gets = new ArrayList<>();
    for (Optional<String> size : needed) {
      gets.add(size.isPresent() && serve(size.get(), new HashSet<>()));
    }
    List<Optional<SetPiece>> handed = new ArrayList<>();
    for (int i = 0; i < needed.size(); i++) {
      handed.add(gets.get(i) ? Optional.of(take(needed.get(i).orElseThrow())) : Optional.empty());
    }
    return handed;
  }

  /** Finds one more spare for a size, if need be by serving others from another size. */
  private boolean serve(String needed, Set<String> tried) {
    for (String size : fitting(needed)) {
      if (!tried.add(size)) {
        continue;
      }
      if (taken.getOrDefault(size, 0L) < bySize.get(size).size()) {
        taken.merge(size, 1L, Long::sum);
        count(needed, size, 1);
        return true;
      }
      for (String other : new ArrayList<>(served.keySet())) {
        if (served.get(other).getOrDefault(size, 0L) > 0 && serve(other, tried)) {
          count(other, size, -1);
          count(needed, size, 1);
          return true;
        }
      }
    }
    return false;
  }

  private void count(String needed, String size, long change) {
    served.computeIfAbsent(needed, none -> new TreeMap<>()).merge(size, change, Long::sum);
  }

  /** The very size first. */
  private List<String> fitting(String needed) {
    return bySize.keySet().stream()
        .filter(size -> sizes.fits(kind, Optional.of(needed), alike.get(size)) == Known.YES)
        .sorted(Comparator.comparing(size -> !size.equals(needed)))
        .toList();
  }

  private SetPiece take(String needed) {
    for (String size : fitting(needed)) {
      if (served.get(needed).getOrDefault(size, 0L) > 0) {
        count(needed, size, -1);
        return bySize.get(size).remove();
      }
    }
    throw new AssertionError("none is left for " + needed);
  }
}
