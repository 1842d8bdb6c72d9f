/**
 * What must be looked at, with what in hand; was all of it looked at, by someone who may?
 *
 * <pre>{@code
 * List<CriterionRow> criteria =
 *     rules.criteria(InspectionKind.ADVANCED, ElementKind.COAT, Use.STRUCTURAL);
 * criteria.forEach(row -> System.out.println(row.sites() + ": " + row.lookFor()));
 * }</pre>
 */
@NullMarked
package org.ensemblerules.inspection;

import org.jspecify.annotations.NullMarked;
