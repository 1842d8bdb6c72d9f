/**
 * How is what differs said to people? The words for its codes, beside those of gear.
 *
 * <pre>{@code
 * String said = AuditWords.english().labels(difference.effects());
 * }</pre>
 */
@NullMarked
package org.ensemblerules.audit.words;

import org.jspecify.annotations.NullMarked;
