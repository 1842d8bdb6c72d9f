/**
 * By when must an element, a layer or a part leave service, what ends it today, how is it disposed
 * of, and what is kept of it after an incident?
 *
 * <pre>{@code
 * MarkedDate made = MarkedDate.parse("2017-05");
 * List<AgeAnswer> answers =
 *     rules.tables().ageLimits().answers(ElementKind.HELMET, Use.STRUCTURAL, Optional.empty(), made);
 * }</pre>
 */
@NullMarked
package org.ensemblerules.retirement;

import org.jspecify.annotations.NullMarked;
