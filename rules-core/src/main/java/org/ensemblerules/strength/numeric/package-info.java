/**
 * The numbers behind decisions: distributions, their inverses, integrals, and what a laboratory
 * works out by a formula alone. Not exported; decisions in the package above name what they used,
 * and {@code LaboratoryRules} asks the formulas.
 */
@NullMarked
package org.ensemblerules.strength.numeric;

import org.jspecify.annotations.NullMarked;
