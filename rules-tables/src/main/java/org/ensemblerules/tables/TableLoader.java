package org.ensemblerules.tables;

import java.util.Objects;
import org.ensemblerules.tables.load.TableSetReader;

/**
 * Loads sets of table files.
 *
 * <p>Loading is strict. A duplicate, unknown or missing field, an unknown name, a value out of
 * range, a source that is not listed, bands that overlap or leave gaps: each is refused, with its
 * file, JSON pointer, what was found and what is allowed, and all of them at once. What rows mean
 * together is checked for each table of an edition once all of its rows can be read.
 */
public final class TableLoader {
  private TableLoader() {}

  /**
   * Loads a set.
   *
   * @param files where its files are read from; not null
   * @return the tables, or every fault of the files; never null
   */
  public static Loaded<LoadedTables> load(TableFiles files) {
    return TableSetReader.read(Objects.requireNonNull(files, "files"));
  }
}
