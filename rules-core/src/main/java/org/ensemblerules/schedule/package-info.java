/**
 * What falls due when, and what has been missed?
 *
 * <pre>{@code
 * for (Due due : rules.due(coat, today)) {
 *   System.out.println(due.task() + (due.isOverdue(today) ? " is overdue" : ""));
 * }
 * }</pre>
 */
@NullMarked
package org.ensemblerules.schedule;

import org.jspecify.annotations.NullMarked;
