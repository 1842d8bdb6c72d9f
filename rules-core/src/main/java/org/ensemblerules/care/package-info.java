/** Did a wash keep its limits, and did the cleaning work? */
@NullMarked
package org.ensemblerules.care;

import org.jspecify.annotations.NullMarked;
