/** Reads table files to rows and compiles them. Kept inside the module. */
@NullMarked
package org.ensemblerules.tables.load;

import org.jspecify.annotations.NullMarked;
