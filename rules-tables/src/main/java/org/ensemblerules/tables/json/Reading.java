package org.ensemblerules.tables.json;

/** What all cursors into one text share. */
record Reading(String source, Faults faults, UnknownFields unknownFields) {}
