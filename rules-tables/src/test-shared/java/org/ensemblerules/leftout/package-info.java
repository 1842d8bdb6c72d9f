/** What is left out of a record never turns OUT into IN. */
@NullMarked
package org.ensemblerules.leftout;

import org.jspecify.annotations.NullMarked;
