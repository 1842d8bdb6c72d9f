package org.ensemblerules.tables;

import java.util.Objects;
import org.ensemblerules.catalog.Catalog;
import org.ensemblerules.tables.codec.CatalogTree;
import org.ensemblerules.tables.json.JsonLine;
import org.ensemblerules.words.Words;

/**
 * Writes what can be entered as JSON, in the form of {@code catalog.schema.json} of this package's
 * {@code schema} folder, for programs in whatever language that draw an entry form. Safe for use by
 * many threads.
 *
 * @since 0.1
 */
public final class CatalogJson {
  private CatalogJson() {}

  /**
   * Writes a catalog with the words for each code.
   *
   * @param catalog what can be entered; not null
   * @param words the words; not null
   * @return one line of JSON without a line end, its fields in a fixed order; never null
   */
  public static String write(Catalog catalog, Words words) {
    return JsonLine.of(
        CatalogTree.write(
            Objects.requireNonNull(catalog, "catalog"), Objects.requireNonNull(words, "words")));
  }
}
