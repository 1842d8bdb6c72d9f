/** Is an element's file complete under the edition, and what must be kept for how long? */
@NullMarked
package org.ensemblerules.record;

import org.jspecify.annotations.NullMarked;
