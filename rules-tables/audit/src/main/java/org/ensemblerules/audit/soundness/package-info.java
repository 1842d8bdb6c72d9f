/**
 * Are the rules sound? Of a rule set, of rows, or of a folder of table files. Example cases made
 * from the rows.
 */
@NullMarked
package org.ensemblerules.audit.soundness;

import org.jspecify.annotations.NullMarked;
