/**
 * What lines say that ask or answer, and what is wrong with them, as values.
 *
 * <pre>{@code
 * Checked<Assessment, JsonFault> read = AssessmentJson.read("coat C-1", json);
 * if (read instanceof Checked.Refused<Assessment, JsonFault> refused) {
 *   for (JsonFault fault : refused.faults()) {
 *     System.out.println(fault.pointer() + ": " + fault.found() + ", allowed: " + fault.allowed());
 *   }
 * }
 * }</pre>
 */
@NullMarked
package org.ensemblerules.tables.message;

import org.jspecify.annotations.NullMarked;
