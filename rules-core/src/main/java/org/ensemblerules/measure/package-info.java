/**
 * Exact quantities, units and rounding for conformance. Formulas and their sources stand with
 * {@link org.ensemblerules.measure.ExactQuantity} (conversion), {@link
 * org.ensemblerules.measure.Unit} (factors), {@link org.ensemblerules.measure.Rounding} and {@link
 * org.ensemblerules.measure.ComparisonMethod}.
 *
 * <pre>{@code
 * Quantity inch = Quantity.of("1", Unit.INCH);
 * boolean longer = Quantity.of("25.5", Unit.MILLIMETER).compareSize(inch) > 0;
 * }</pre>
 */
@NullMarked
package org.ensemblerules.measure;

import org.jspecify.annotations.NullMarked;
