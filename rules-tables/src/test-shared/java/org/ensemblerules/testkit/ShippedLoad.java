package org.ensemblerules.testkit;

import org.ensemblerules.tables.ShippedTables;
import org.ensemblerules.tables.set.LoadedTables;

/** The shipped tables of all editions, loaded once for all tests that only read them. */
public final class ShippedLoad {
  private static final LoadedTables TABLES = ShippedTables.load().orElseThrow();

  private ShippedLoad() {}

  /**
   * Returns the tables.
   *
   * @return the same tables at every call
   */
  public static LoadedTables tables() {
    return TABLES;
  }
}
