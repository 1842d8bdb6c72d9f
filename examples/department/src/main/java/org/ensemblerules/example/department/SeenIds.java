package org.ensemblerules.example.department;

import java.util.Arrays;
import java.util.Optional;

/**
 * Which ids a run has seen, eight bytes for each, so that a file of a million elements needs little
 * memory. Two different ids are taken for one about once in ten million million million pairs; that
 * costs no more than a note that is wrong.
 */
final class SeenIds {
  private long[] places = new long[1024];
  private int size;

  /** Adds the id of a line, and says so if an earlier line had it; an empty one may come again. */
  Optional<String> note(String source, long line, String id) {
    return id.isEmpty() || add(id)
        ? Optional.empty()
        : Optional.of(
            source
                + ":"
                + line
                + ": id "
                + id
                + " again; an earlier line has that id too, and each is answered by itself");
  }

  /** Adds an id, and tells whether it is new. */
  boolean add(String id) {
    if (size * 2 > places.length) {
      long[] old = places;
      places = new long[old.length * 2];
      size = 0;
      Arrays.stream(old).filter(hash -> hash != 0).forEach(this::put);
    }
    return put(hash(id));
  }

  private boolean put(long hash) {
    int at = (int) hash & (places.length - 1);
    while (places[at] != 0) {
      if (places[at] == hash) {
        return false;
      }
      at = (at + 1) & (places.length - 1);
    }
    places[at] = hash;
    size++;
    return true;
  }

  private static long hash(String id) {
    long hash = 0xcbf29ce484222325L;
    for (int i = 0; i < id.length(); i++) {
      hash = (hash ^ id.charAt(i)) * 0x100000001b3L;
    }
    hash ^= hash >>> 32;
    hash *= 0x9e3779b97f4a7c15L;
    return hash == 0 ? 1 : hash ^ (hash >>> 29);
  }
}
