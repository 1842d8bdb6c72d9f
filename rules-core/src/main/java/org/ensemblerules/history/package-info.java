/** What happened when, and what is still open? */
@NullMarked
package org.ensemblerules.history;

import org.jspecify.annotations.NullMarked;
