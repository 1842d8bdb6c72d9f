package org.ensemblerules.repair;

import java.util.Comparator;
import org.ensemblerules.defect.Demand;
import org.ensemblerules.defect.Finding;

/** A finding at one of the places that it can mean. */
record Found(Finding finding, Demand demand) {
  static final Comparator<Found> ORDER =
      Comparator.comparing((Found found) -> found.finding().id())
          .thenComparing(found -> found.demand().site())
          .thenComparing(found -> found.finding().defect())
          .thenComparing(found -> found.finding().text())
          .thenComparing(found -> found.finding().seen().toString());
}
