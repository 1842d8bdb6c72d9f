/**
 * What is this thing: element, layer, part, seam, label, use and marked dates.
 *
 * <pre>{@code
 * Label label =
 *     Label.builder()
 *         .manufacturer("Maker One")
 *         .manufactured(MarkedDate.parse("2023-05"))
 *         .legibility(Legibility.READABLE)
 *         .build();
 * Element helmet =
 *     Element.builder(new ElementId("H-17"), ElementKind.HELMET, Use.STRUCTURAL)
 *         .label(label)
 *         .build();
 * }</pre>
 */
@NullMarked
package org.ensemblerules.gear;

import org.jspecify.annotations.NullMarked;
