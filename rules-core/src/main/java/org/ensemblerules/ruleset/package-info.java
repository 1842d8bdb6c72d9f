/**
 * Composes tables: editions by subject, place, overlays, identity and fingerprint.
 *
 * <pre>{@code
 * Identity identity = rules.identity();
 * List<DefectRow> rows = rules.tables().defects().rows();
 * }</pre>
 */
@NullMarked
package org.ensemblerules.ruleset;

import org.jspecify.annotations.NullMarked;
