package org.ensemblerules.tables.json;

/**
 * What all cursors into one text share.
 *
 * @param beside what the text is read beside, such as a register whose names it uses
 */
record Reading(String source, Faults faults, UnknownFields unknownFields, Object beside) {}
