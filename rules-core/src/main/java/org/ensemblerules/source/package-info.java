/**
 * Says who: sources, clauses, basis and review date.
 *
 * <pre>{@code
 * for (Row row : rules.trace(coat, today)) {
 *   System.out.println(row.key() + " rests on " + row.provenance().basis());
 * }
 * }</pre>
 */
@NullMarked
package org.ensemblerules.source;

import org.jspecify.annotations.NullMarked;
