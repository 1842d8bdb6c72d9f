/**
 * Strict reading of JSON: places, faults and readers of single values. Knows nothing of tables, and
 * is kept inside the module.
 */
@NullMarked
package org.ensemblerules.tables.json;

import org.jspecify.annotations.NullMarked;
