package org.ensemblerules.source;

import java.util.List;
import java.util.Optional;

/**
 * A row of a table: a value, and on whose word.
 *
 * @since 0.1
 */
public interface Row {
  /**
   * Returns where the row comes from.
   *
   * @return the provenance; never null
   */
  Provenance provenance();

  /**
   * Returns the row's own values in a fixed order and spelling, without its provenance. Two rows
   * that mean the same have the same canonical values, on every machine and in every locale.
   *
   * @return the values; never null
   */
  List<String> canonical();

  /**
   * Returns the row's stable name.
   *
   * @return the key; never null
   */
  default RowKey key() {
    return provenance().key();
  }

  /**
   * Returns the row as an answer cites it.
   *
   * @return the row without its values; never null
   */
  default CitedRow cited() {
    return new CitedRow(provenance(), Optional.empty(), false);
  }
}
