/** What was found at a criterion, as findings tell it. Not exported. */
@NullMarked
package org.ensemblerules.inspection.told;

import org.jspecify.annotations.NullMarked;
