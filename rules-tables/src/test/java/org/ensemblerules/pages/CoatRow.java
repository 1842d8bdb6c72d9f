package org.ensemblerules.pages;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.ensemblerules.gear.Legibility;
import org.ensemblerules.gear.YesNoUnknown;
import org.ensemblerules.inspection.Equipment;
import org.ensemblerules.inspection.Outcome;
import org.ensemblerules.source.OriginId;
import org.ensemblerules.source.RowKey;

/**
 * A coat as a relational system has it: one row, with the items of its last inspection and the days
 * of its washes from two tables beside it. What a column does not say is empty or unknown.
 */
record CoatRow(
    String id,
    String made,
    String issued,
    Optional<String> maker,
    Optional<String> model,
    Optional<String> size,
    YesNoUnknown mark,
    Legibility legibility,
    List<String> washes,
    String washedBy,
    boolean washedWholeWithinLimits,
    String inspected,
    String inspectedBy,
    YesNoUnknown cleanWhenInspected,
    Set<Equipment> atHand,
    Optional<OriginId> signedOffFor,
    Map<RowKey, Outcome> items) {}
