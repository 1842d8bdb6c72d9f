/**
 * Reports and differences as JSON, written and read back.
 *
 * <pre>{@code
 * String line = DifferenceJson.write(DifferenceLine.ChangedElement.of(difference));
 * DifferenceLine read = DifferenceJson.read("kept", line).orElseThrow();
 * }</pre>
 */
@NullMarked
package org.ensemblerules.audit.json;

import org.jspecify.annotations.NullMarked;
