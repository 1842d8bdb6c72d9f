package org.ensemblerules.tables.codec;

/** The names of events in JSON. */
enum EventName {
  STOCKED,
  ISSUED,
  RETURNED,
  USED,
  INSPECTED,
  FOUND,
  CLEANED,
  CHECKED,
  TESTED,
  REPAIRED,
  EXPOSED,
  EXPOSURE_IDENTIFIED,
  MOVED,
  MODIFIED,
  TAKEN_OUT,
  BACK_IN_SERVICE,
  RETIRED,
  LAYER_RETIRED,
  DISPOSED
}
