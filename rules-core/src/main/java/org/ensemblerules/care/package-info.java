/** How must gear be cleaned after what it met; did a wash keep its limits, and did it work? */
@NullMarked
package org.ensemblerules.care;

import org.jspecify.annotations.NullMarked;
