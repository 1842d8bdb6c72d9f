/**
 * What happened when, and what is still open?
 *
 * <pre>{@code
 * for (OpenFinding open : rules.openFindings(coat, today)) {
 *   System.out.println(open.effect().text());
 * }
 * }</pre>
 */
@NullMarked
package org.ensemblerules.history;

import org.jspecify.annotations.NullMarked;
