/** Every question that can be asked of protective clothing and its rules, behind one door. */
@NullMarked
package org.ensemblerules;

import org.jspecify.annotations.NullMarked;
