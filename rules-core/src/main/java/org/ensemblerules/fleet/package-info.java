/** What is ready, due and to be replaced across all elements, month by month? */
@NullMarked
package org.ensemblerules.fleet;

import org.jspecify.annotations.NullMarked;
