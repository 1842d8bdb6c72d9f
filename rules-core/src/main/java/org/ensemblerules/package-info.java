/**
 * Every question that can be asked of protective clothing and its rules, behind one door.
 *
 * <pre>{@code
 * GearRules rules = ShippedRules.standard();
 * Verdict verdict = rules.assess(coat, today);
 * boolean serves = verdict.service() == Service.IN;
 * }</pre>
 */
@NullMarked
package org.ensemblerules;

import org.jspecify.annotations.NullMarked;
