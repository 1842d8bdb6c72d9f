/** How a table finds the row for something, and a second row for the same. Not exported. */
@NullMarked
package org.ensemblerules.source.cells;

import org.jspecify.annotations.NullMarked;
