/** What do the hand checks say, and were their conditions kept? */
@NullMarked
package org.ensemblerules.fieldcheck;

import org.jspecify.annotations.NullMarked;
