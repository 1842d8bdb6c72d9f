package org.ensemblerules.example.benchmarks.rivals;

import org.ensemblerules.gear.AnatomyTable;

/** The ways to answer that are compared. */
public enum RivalKind {
  /** The library. */
  LIBRARY,
  /** A bare array, a floor. */
  ARRAY,
  /** A written program, a floor. */
  SWITCH,
  /** A hash map. */
  HASH_MAP,
  /** A database in memory. */
  SQL,
  /** An expression language. */
  CEL,
  /** A decision engine. */
  DMN;

  /**
   * Makes one ready to answer.
   *
   * @param table what it is to know; not null
   * @param anatomy which parts exist, which the library asks for; not null
   * @return a new one; never null
   */
  public Rival<?> on(NeutralTable table, AnatomyTable anatomy) {
    return switch (this) {
      case LIBRARY -> new LibraryRival(table, anatomy);
      case ARRAY -> new ArrayRival(table);
      case SWITCH -> new SwitchRival(table);
      case HASH_MAP -> new MapRival(table);
      case SQL -> new SqlRival(table);
      case CEL -> new CelRival(table);
      case DMN -> new DmnRival(table);
    };
  }
}
