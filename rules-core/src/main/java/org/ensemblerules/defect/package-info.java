/**
 * What is wrong, where, how large, and what does that call for?
 *
 * <pre>{@code
 * Finding torn =
 *     new Finding(
 *         new FindingId("F-1"),
 *         Site.parse("FABRIC@OUTER_SHELL"),
 *         "left cuff",
 *         DefectKind.TEAR,
 *         new Extent.Length(Quantity.of("1.5", Unit.INCH)),
 *         MarkedDate.of(today));
 * Assessment now =
 *     Assessment.builder(coat.element()).history(coat.history()).finding(torn).build();
 * }</pre>
 */
@NullMarked
package org.ensemblerules.defect;

import org.jspecify.annotations.NullMarked;
