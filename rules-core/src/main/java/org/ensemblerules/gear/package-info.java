/** What is this thing: element, layer, part, seam, label, use and marked dates. */
@NullMarked
package org.ensemblerules.gear;

import org.jspecify.annotations.NullMarked;
