/** What falls due when, and what has been missed? */
@NullMarked
package org.ensemblerules.schedule;

import org.jspecify.annotations.NullMarked;
