/**
 * May this element go back to service, why (not), what would bring it back, and who may do that?
 *
 * <pre>{@code
 * Verdict verdict = rules.assess(coat, today);
 * if (verdict.wayBack() instanceof WayBack.Steps back) {
 *   back.steps().forEach(step -> System.out.println(step.effect().text()));
 * }
 * }</pre>
 */
@NullMarked
package org.ensemblerules.verdict;

import org.jspecify.annotations.NullMarked;
