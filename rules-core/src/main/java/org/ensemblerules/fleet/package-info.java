/** What would other rules change across all elements? */
@NullMarked
package org.ensemblerules.fleet;

import org.jspecify.annotations.NullMarked;
