package org.ensemblerules.tables.codec;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Optional;
import org.ensemblerules.retirement.AgeAnswer;
import org.ensemblerules.retirement.AgeLimit;
import org.ensemblerules.retirement.AgeLimitRow;
import org.ensemblerules.verdict.LayerAge;

/** Writes by when age takes a layer or an element out of service. */
final class AgeJson {
  private AgeJson() {}

  static JsonNode write(LayerAge age) {
    Fields fields =
        new Fields().known("layer", age.layer()).put("manufactured", age.manufactured());
    AgeAnswer answer = age.answer();
    if (answer instanceof AgeAnswer.LeavesOn leaves) {
      fields
          .put("answer", "LEAVES_ON")
          .put("firstDayOut", leaves.firstDayOut())
          .put("lastDay", leaves.lastDay());
      return row(fields, leaves.row());
    } else if (answer instanceof AgeAnswer.NoLimitSet none) {
      return row(fields.put("answer", "NO_LIMIT_SET"), none.row());
    } else if (answer instanceof AgeAnswer.LimitNotSeen notSeen) {
      return row(fields.put("answer", "LIMIT_NOT_SEEN"), notSeen.row());
    } else if (answer instanceof AgeAnswer.DateUnknown unknown) {
      return row(fields.put("answer", "DATE_UNKNOWN"), unknown.row());
    }
    return fields.put("answer", "NO_RULE").node();
  }

  private static JsonNode row(Fields fields, AgeLimitRow row) {
    Optional.of(row.limit())
        .filter(AgeLimit.Years.class::isInstance)
        .map(AgeLimit.Years.class::cast)
        .ifPresent(limit -> fields.put("limitYears", limit.years()));
    return fields.put("row", RowJson.write(row)).node();
  }
}
