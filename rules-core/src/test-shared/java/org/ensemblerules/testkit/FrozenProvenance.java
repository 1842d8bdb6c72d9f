package org.ensemblerules.testkit;

import java.time.LocalDate;
import java.util.Locale;
import java.util.Optional;
import org.ensemblerules.source.Basis;
import org.ensemblerules.source.Confidence;
import org.ensemblerules.source.HowSeen;
import org.ensemblerules.source.OriginId;
import org.ensemblerules.source.Provenance;
import org.ensemblerules.source.RowKey;
import org.ensemblerules.source.SourceId;

/** Where the frozen rows come from: an invented body of rules. */
public final class FrozenProvenance {
  /** The invented edition of the frozen rows. */
  public static final OriginId EDITION = new OriginId("FROZEN_2020");

  /** The last day for which the frozen rows were reviewed. */
  public static final LocalDate REVIEWED_THROUGH = LocalDate.of(2030, 12, 31);

  private FrozenProvenance() {}

  /**
   * Makes the provenance of a row; the bases take turns so that each kind occurs.
   *
   * @param parts the parts of the row's key
   * @return the provenance
   */
  public static Provenance of(Object... parts) {
    StringBuilder key = new StringBuilder("frozen");
    for (Object part : parts) {
      key.append('/').append(part.toString().replace(' ', '-'));
    }
    RowKey name = new RowKey(key.toString());
    return new Provenance(
        name,
        EDITION,
        basis(name.value().toUpperCase(Locale.ROOT)),
        REVIEWED_THROUGH,
        Optional.empty());
  }

  private static Basis basis(String name) {
    SourceId source = new SourceId("invented-rules");
    return switch (Math.floorMod(name.hashCode(), 4)) {
      case 0 -> new Basis.CommonPractice();
      case 1 -> new Basis.Memory(Confidence.MEDIUM, Optional.of(source));
      case 2 -> new Basis.Published(source, Optional.of("1.2"), HowSeen.READ);
      default -> new Basis.Published(source, Optional.empty(), HowSeen.RESTATED);
    };
  }
}
