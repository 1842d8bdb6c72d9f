/** How is what differs said to people? The words for its codes, beside those of gear. */
@NullMarked
package org.ensemblerules.audit.words;

import org.jspecify.annotations.NullMarked;
