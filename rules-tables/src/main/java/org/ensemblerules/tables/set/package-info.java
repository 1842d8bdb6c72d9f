/**
 * Table files and overlays, their revisions, and the tables of each edition loaded from them.
 *
 * <pre>{@code
 * LoadedTables tables = ShippedTables.load().orElseThrow();
 * for (TableRevision file : tables.revisions()) {
 *   System.out.println(file.file() + " is revision " + file.revision());
 * }
 * }</pre>
 */
@NullMarked
package org.ensemblerules.tables.set;

import org.jspecify.annotations.NullMarked;
