/**
 * Is an element's file complete under the edition, and what must be kept for how long?
 *
 * <pre>{@code
 * RecordFile file = RecordFile.builder(coat.element(), coat.history()).build();
 * boolean complete = rules.file(file, today).complete();
 * }</pre>
 */
@NullMarked
package org.ensemblerules.record;

import org.jspecify.annotations.NullMarked;
