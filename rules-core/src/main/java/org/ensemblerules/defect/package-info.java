/** What is wrong, where, how large, and what does that call for? */
@NullMarked
package org.ensemblerules.defect;

import org.jspecify.annotations.NullMarked;
