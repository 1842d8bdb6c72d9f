/** What differs between two sets of rules, row by row, and what would the other change for gear? */
@NullMarked
package org.ensemblerules.audit.difference;

import org.jspecify.annotations.NullMarked;
