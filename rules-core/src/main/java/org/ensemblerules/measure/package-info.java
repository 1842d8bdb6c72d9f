/**
 * Exact quantities, units and rounding for conformance.
 *
 * <pre>{@code
 * Quantity inch = Quantity.of("1", Unit.INCH);
 * boolean longer = Quantity.of("25.5", Unit.MILLIMETER).compareSize(inch) > 0;
 * }</pre>
 */
@NullMarked
package org.ensemblerules.measure;

import org.jspecify.annotations.NullMarked;
