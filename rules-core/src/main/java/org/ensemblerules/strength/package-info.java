/**
 * Do the measured specimens meet the requirement, and how sure is that?
 *
 * <p>Requirements of product standards are for new material. The caller chooses the purpose and the
 * decision rule; the result names both, and every number used.
 *
 * <pre>{@code
 * ExactQuantity left =
 *     rules
 *         .laboratory()
 *         .retention(Quantity.of("82", Unit.NEWTON), Quantity.of("100", Unit.NEWTON));
 * }</pre>
 */
@NullMarked
package org.ensemblerules.strength;

import org.jspecify.annotations.NullMarked;
