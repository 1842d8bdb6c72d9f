/**
 * May this element go back to service, why (not), what would bring it back, and who may do that?
 */
@NullMarked
package org.ensemblerules.verdict;

import org.jspecify.annotations.NullMarked;
