/**
 * The JSON form of elements, histories, inspections, findings, assessments and verdicts, one class
 * for each form. Kept inside the module.
 */
@NullMarked
package org.ensemblerules.tables.codec;

import org.jspecify.annotations.NullMarked;
