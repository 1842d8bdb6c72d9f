/**
 * What does one member get? Is a set complete and usable together, may an element be issued, is a
 * delivery what was ordered, and what does a safety notice touch?
 */
@NullMarked
package org.ensemblerules.issue;

import org.jspecify.annotations.NullMarked;
