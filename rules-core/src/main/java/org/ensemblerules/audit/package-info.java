/**
 * Are the tables sound? What differs between two sets of rules, and which rules was an old verdict
 * computed with?
 */
@NullMarked
package org.ensemblerules.audit;

import org.jspecify.annotations.NullMarked;
