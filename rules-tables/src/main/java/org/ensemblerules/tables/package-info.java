/**
 * Rule data by edition, loaded strictly: every fault is named with its place.
 *
 * <pre>{@code
 * Assessment coat = AssessmentJson.read("coat C-1", json).orElseThrow();
 * Verdict verdict = ShippedRules.standard().assess(coat, today);
 * String line = VerdictJson.write(verdict);
 * }</pre>
 */
@NullMarked
package org.ensemblerules.tables;

import org.jspecify.annotations.NullMarked;
