package org.ensemblerules.tables.codec;

import java.time.LocalDate;
import java.util.Optional;
import org.ensemblerules.retirement.RetirementCause;
import org.ensemblerules.retirement.RetirementReason;
import org.ensemblerules.tables.json.JsonCursor;
import org.ensemblerules.tables.json.ObjectCursor;
import org.ensemblerules.tables.json.ValueReaders;

/** The JSON form of why an element was retired. */
final class RetirementCauseJson {
  private RetirementCauseJson() {}

  static Optional<RetirementCause> read(JsonCursor at) {
    ObjectCursor cause = at.object();
    // Which fields there are depends on the reason, so nothing more is said if that is not known.
    return cause
        .required("reason", value -> value.enumOf(RetirementReason.class))
        .flatMap(reason -> read(reason, cause));
  }

  private static Optional<RetirementCause> read(RetirementReason reason, ObjectCursor cause) {
    return switch (reason) {
      case OVER_AGE_LIMIT -> {
        Optional<LocalDate> day = cause.required("firstDayOut", ValueReaders::day);
        yield cause.make(() -> new RetirementCause.OverAge(day.orElseThrow()));
      }
      case BEYOND_REPAIR -> {
        Optional<String> what = cause.required("what", JsonCursor::text);
        yield cause.make(() -> new RetirementCause.BeyondRepair(what.orElseThrow()));
      }
      case CANNOT_BE_CLEANED -> {
        Optional<String> with = cause.required("with", JsonCursor::text);
        yield cause.make(() -> new RetirementCause.CannotBeCleaned(with.orElseThrow()));
      }
      case CBRN_AGENT -> cause.make(RetirementCause.CbrnAgent::new);
      case NEVER_COMPLIED -> {
        Optional<String> edition = cause.required("edition", JsonCursor::text);
        yield cause.make(() -> new RetirementCause.NeverComplied(edition.orElseThrow()));
      }
      case ORIGIN_NOT_SHOWN -> cause.make(RetirementCause.OriginNotShown::new);
      case OWN_DECISION -> {
        Optional<String> why = cause.required("why", JsonCursor::text);
        yield cause.make(() -> new RetirementCause.OwnDecision(why.orElseThrow()));
      }
    };
  }
}
