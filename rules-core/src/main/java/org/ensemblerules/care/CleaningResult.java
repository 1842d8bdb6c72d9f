package org.ensemblerules.care;

/**
 * What was measured of one contaminant before and after a cleaning.
 *
 * @since 0.1
 */
public sealed interface CleaningResult permits RemovalEfficiency, LogReduction {}
