package org.ensemblerules.ruleset;

import com.google.common.hash.Hasher;
import com.google.common.hash.Hashing;
import java.nio.charset.StandardCharsets;
import java.util.Comparator;
import java.util.List;
import org.ensemblerules.source.Provenance;
import org.ensemblerules.source.Row;

/** The SHA-256 of rows in canonical form, whatever order they come in. */
final class Fingerprint {
  private Fingerprint() {}

  static String of(List<Row> rows) {
    Hasher hasher = Hashing.sha256().newHasher();
    rows.stream()
        .sorted(
            Comparator.<Row, String>comparing(row -> row.getClass().getSimpleName())
                .thenComparing(Row::key)
                // The requirements of several product editions use the same keys.
                .thenComparing(row -> row.provenance().origin().value())
                .thenComparing(row -> String.join("\n", row.canonical())))
        .forEach(row -> put(hasher, row));
    return hasher.hash().toString();
  }

  private static void put(Hasher hasher, Row row) {
    Provenance provenance = row.provenance();
    put(hasher, row.getClass().getSimpleName());
    put(hasher, provenance.key().value());
    put(hasher, provenance.origin().value());
    put(hasher, provenance.basis().text());
    put(hasher, provenance.reviewedThrough().toString());
    put(hasher, provenance.note().orElse(""));
    row.canonical().forEach(value -> put(hasher, value));
  }

  // Each text goes in with its length before it, so that no two lists of texts run together alike.
  private static void put(Hasher hasher, String text) {
    byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
    hasher.putInt(bytes.length).putBytes(bytes);
  }
}
