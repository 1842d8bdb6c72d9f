/** Says who: sources, clauses, basis and review date. */
@NullMarked
package org.ensemblerules.source;

import org.jspecify.annotations.NullMarked;
