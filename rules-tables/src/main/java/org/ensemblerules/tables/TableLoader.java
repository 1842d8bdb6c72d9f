package org.ensemblerules.tables;

import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.ensemblerules.ruleset.Subject;
import org.ensemblerules.source.Checked;
import org.ensemblerules.source.Edition;
import org.ensemblerules.source.OriginId;
import org.ensemblerules.tables.load.TableSetReader;
import org.ensemblerules.tables.message.JsonFault;
import org.ensemblerules.tables.set.LoadedTables;
import org.ensemblerules.tables.set.TableFiles;

/**
 * Loads sets of table files.
 *
 * <p>Loading is strict. A duplicate, unknown or missing field, an unknown name, a value out of
 * range, a source that is not listed, bands that overlap or leave gaps: each is refused, with its
 * file, JSON pointer, what was found and what is allowed, and all of them at once. What rows mean
 * together is checked for each table of an edition once all of its rows can be read.
 *
 * @since 0.1
 */
public final class TableLoader {
  private TableLoader() {}

  /**
   * Loads a set.
   *
   * @param files where its files are read from; not null
   * @return the tables, or every fault of the files; never null
   */
  public static Checked<LoadedTables, JsonFault> load(TableFiles files) {
    return TableSetReader.read(Objects.requireNonNull(files, "files"));
  }

  /**
   * Loads of a set what the rules of some editions need, which takes less time and memory: their
   * tables, what these carry over, and what all rules share. Files that are not needed are not
   * read, and nothing is said of their faults.
   *
   * @param files where the files are read from; not null
   * @param editions the editions; one that the set does not know has no tables; not null
   * @return the tables, or every fault of the files read; never null
   */
  public static Checked<LoadedTables, JsonFault> load(TableFiles files, Set<OriginId> editions) {
    return TableSetReader.read(
        Objects.requireNonNull(files, "files"), Objects.requireNonNull(editions, "editions"));
  }

  /**
   * Lists the editions that a set has tables of a subject for, without reading the tables.
   *
   * @param files where the files are read from; not null
   * @param subject the subject; not null
   * @return the editions in the order of publication, or every fault of the files read; never null
   */
  public static Checked<List<Edition>, JsonFault> editions(TableFiles files, Subject subject) {
    return TableSetReader.editions(
        Objects.requireNonNull(files, "files"), Objects.requireNonNull(subject, "subject"));
  }
}
