package org.ensemblerules.pages;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.ensemblerules.gear.Known;
import org.ensemblerules.inspection.Outcome;
import org.ensemblerules.source.EditionId;
import org.ensemblerules.source.RowKey;

/**
 * A coat as a relational system has it: one row, with the items of its last inspection and the days
 * of its washes from two tables beside it. What a column does not say is empty or unknown.
 */
record CoatRow(
    String id,
    String made,
    String issued,
    Map<String, String> label,
    Known mark,
    List<String> washes,
    String washedBy,
    boolean washedWholeWithinLimits,
    String inspected,
    String inspectedBy,
    Known cleanWhenInspected,
    boolean allAtHand,
    Optional<EditionId> signedOffFor,
    Map<RowKey, Outcome> items) {}
