package org.ensemblerules.example.department;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.ensemblerules.source.Printable;

/** The names of doers that no register has, each with where it stands. */
final class UnknownNames {
  private static final int SHOWN = 5;

  private final Map<String, Touched> byName = new TreeMap<>();

  /** The first lines that name somebody, and how many do. */
  private static final class Touched {
    private final List<String> first = new ArrayList<>();
    private long count;

    void add(String where) {
      count++;
      if (first.size() < SHOWN) {
        first.add(where);
      }
    }
  }

  /** Notes that a line names somebody whom no register has. */
  void add(String name, String line, String element) {
    byName.computeIfAbsent(name, key -> new Touched()).add(line + " (" + element + ")");
  }

  /** One line for each name, with the first lines that have it. */
  List<String> lines() {
    return byName.entrySet().stream()
        .map(
            entry ->
                Printable.of(
                    entry.getKey()
                        + " is in no register of doers; nothing that they did counts: "
                        + String.join(", ", entry.getValue().first)
                        + more(entry.getValue())))
        .toList();
  }

  private static String more(Touched touched) {
    long left = touched.count - touched.first.size();
    return left == 0 ? "" : " and " + left + (left == 1 ? " other line" : " other lines");
  }
}
