package org.ensemblerules.repair;

import java.util.Comparator;
import org.ensemblerules.defect.Demand;
import org.ensemblerules.defect.Finding;

/** A finding at one of the places that it can mean. */
record PlacedFinding(Finding finding, Demand demand) {
  static final Comparator<PlacedFinding> ORDER =
      Comparator.comparing((PlacedFinding found) -> found.finding().id())
          .thenComparing(found -> found.demand().site())
          .thenComparing(found -> found.finding().defect())
          .thenComparing(found -> found.finding().text())
          .thenComparing(found -> found.finding().seen().toString());
}
