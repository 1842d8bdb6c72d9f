/**
 * What do the hand checks say, and were their conditions kept?
 *
 * <pre>{@code
 * List<ConditionRow> conditions =
 *     rules.tables().conditions().conditions(Check.STRENGTH_BY_THUMBS);
 * conditions.forEach(row -> System.out.println(row.condition() + ": " + row.expected()));
 * }</pre>
 */
@NullMarked
package org.ensemblerules.fieldcheck;

import org.jspecify.annotations.NullMarked;
