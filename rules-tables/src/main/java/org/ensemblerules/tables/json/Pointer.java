package org.ensemblerules.tables.json;

/** Builds JSON pointers (RFC 6901). */
public final class Pointer {
  private Pointer() {}

  /** Returns the pointer to a field of the object at a pointer. */
  public static String field(String pointer, String name) {
    return pointer + "/" + name.replace("~", "~0").replace("/", "~1");
  }

  /** Returns the pointer to an entry of the list at a pointer, from 0. */
  public static String entry(String pointer, int index) {
    return pointer + "/" + index;
  }
}
