/** Are the tables sound? What differs between two sets? Example cases generated from the rows. */
@NullMarked
package org.ensemblerules.audit;

import org.jspecify.annotations.NullMarked;
