package org.ensemblerules.care;

/** What was measured of one contaminant before and after a cleaning. */
public sealed interface CleaningResult permits RemovalEfficiency, LogReduction {}
