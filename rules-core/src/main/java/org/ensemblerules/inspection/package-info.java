/** What must be looked at, with what in hand; was all of it looked at, by someone who may? */
@NullMarked
package org.ensemblerules.inspection;

import org.jspecify.annotations.NullMarked;
