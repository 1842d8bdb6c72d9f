/**
 * How a verdict comes about: each question looks at one side of a case and gives its reasons, and
 * the conclusion is drawn from all of them. It is asked through {@code GearRules}.
 */
@NullMarked
package org.ensemblerules.assess;

import org.jspecify.annotations.NullMarked;
