package org.ensemblerules.fleet;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.YesNoUnknown;
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
  private final Map<String, Shelf> shelves = new TreeMap<>();

  /** The spares of one size, and how many of them go to those who need which size. */
  private static final class Shelf {
    private final Set<String> sizes;
    private final Deque<SetPiece> spares = new ArrayDeque<>();
    private final Map<String, Integer> goTo = new TreeMap<>();
    private int taken;

    Shelf(Set<String> sizes) {
      this.sizes = sizes;
    }

    int goingTo(String needed) {
      return goTo.getOrDefault(needed, 0);
    }

    void goesTo(String needed, int change) {
      goTo.merge(needed, change, Integer::sum);
    }
  }

  SpareSearch(ElementKind kind, SizeTable sizes, List<SetPiece> spares) {
    this.kind = kind;
    this.sizes = sizes;
    spares.stream()
        .sorted()
        .forEach(
            spare ->
                shelves
                    .computeIfAbsent(
                        String.join("\n", spare.sizes()), size -> new Shelf(spare.sizes()))
                    .spares
                    .add(spare));
  }

  /** Answers for each of those who lack one, by the size needed, in the order of their turn. */
  List<Optional<SetPiece>> handOut(List<Optional<String>> needed) {
    List<Optional<String>> served =
        needed.stream().map(size -> size.filter(each -> serve(each, new HashSet<>()))).toList();
    return served.stream().map(size -> size.map(this::take)).toList();
  }

  /** Finds one more spare for a size, if need be by serving others from another shelf. */
  private boolean serve(String needed, Set<Shelf> tried) {
    for (Shelf shelf : fitting(needed)) {
      if (!tried.add(shelf)) {
        continue;
      }
      if (shelf.taken < shelf.spares.size()) {
        shelf.taken++;
        shelf.goesTo(needed, 1);
        return true;
      }
      for (String other : new ArrayList<>(shelf.goTo.keySet())) {
        if (shelf.goingTo(other) > 0 && serve(other, tried)) {
          shelf.goesTo(other, -1);
          shelf.goesTo(needed, 1);
          return true;
        }
      }
    }
    return false;
  }

  /** The very size first. */
  private List<Shelf> fitting(String needed) {
    return shelves.values().stream()
        .filter(shelf -> sizes.fits(kind, Optional.of(needed), shelf.sizes) == YesNoUnknown.YES)
        .sorted(Comparator.comparing(shelf -> !shelf.sizes.equals(Set.of(needed))))
        .toList();
  }

  private SetPiece take(String needed) {
    Shelf shelf =
        fitting(needed).stream().filter(each -> each.goingTo(needed) > 0).findFirst().orElseThrow();
    shelf.goesTo(needed, -1);
    return shelf.spares.remove();
  }
}
