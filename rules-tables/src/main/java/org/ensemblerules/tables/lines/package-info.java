/** Splits streams of bytes or characters into lines. Kept inside the module. */
@NullMarked
package org.ensemblerules.tables.lines;

import org.jspecify.annotations.NullMarked;
