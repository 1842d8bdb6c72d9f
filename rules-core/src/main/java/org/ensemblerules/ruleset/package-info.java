/** Composes tables: editions by subject, place, overlays, identity and fingerprint. */
@NullMarked
package org.ensemblerules.ruleset;

import org.jspecify.annotations.NullMarked;
