/** What differs between two sets of rules, row by row? */
@NullMarked
package org.ensemblerules.audit;

import org.jspecify.annotations.NullMarked;
