package org.ensemblerules.tables;

import java.io.IOException;
import java.io.InputStream;
import java.util.Optional;
import java.util.Set;
import org.ensemblerules.source.Checked;
import org.ensemblerules.source.OriginId;
import org.ensemblerules.tables.message.JsonFault;
import org.ensemblerules.tables.set.LoadedTables;
import org.ensemblerules.tables.set.TableFiles;

/**
 * The tables that come with this library.
 *
 * @since 0.1
 */
public final class ShippedTables {
  private ShippedTables() {}

  /**
   * Loads the shipped tables. Each call reads and compiles them anew; keep the result.
   *
   * @return the tables, or every fault of their files; never null
   */
  public static Checked<LoadedTables, JsonFault> load() {
    return TableLoader.load(files());
  }

  /**
   * Loads of the shipped tables what the rules of some editions need. Each call reads and compiles
   * them anew; keep the result.
   *
   * @param editions the editions; not null
   * @return the tables, or every fault of the files read; never null
   */
  public static Checked<LoadedTables, JsonFault> load(Set<OriginId> editions) {
    return TableLoader.load(files(), editions);
  }

  /**
   * Returns the shipped files, for those who build a set of their own on them.
   *
   * @return the files; never null
   */
  public static TableFiles files() {
    return ShippedTables::read;
  }

  // Through a class of this module, which alone can reach its resources on the module path.
  private static Optional<byte[]> read(String path) throws IOException {
    try (InputStream stream = ShippedTables.class.getResourceAsStream(path)) {
      return stream == null ? Optional.empty() : Optional.of(stream.readAllBytes());
    }
  }
}
