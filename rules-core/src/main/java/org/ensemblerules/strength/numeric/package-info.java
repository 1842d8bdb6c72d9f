/**
 * The numbers behind decisions: distributions, their inverses, integrals. Not exported; decisions
 * in the package above name what they used.
 */
@NullMarked
package org.ensemblerules.strength.numeric;

import org.jspecify.annotations.NullMarked;
