/**
 * What differs between two sets of rules, row by row, and what would the other change for gear?
 *
 * <pre>{@code
 * ElementDifference difference = rules.changedElement(then, coat, today);
 * boolean changes = difference.before().service() != difference.after().service();
 * }</pre>
 */
@NullMarked
package org.ensemblerules.audit.difference;

import org.jspecify.annotations.NullMarked;
