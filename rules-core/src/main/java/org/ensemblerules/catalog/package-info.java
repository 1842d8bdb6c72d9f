/**
 * What can be entered of which element? Everything that an entry form needs, worked out from a set
 * of rules.
 */
@NullMarked
package org.ensemblerules.catalog;

import org.jspecify.annotations.NullMarked;
