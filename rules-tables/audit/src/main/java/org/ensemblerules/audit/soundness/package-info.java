/**
 * Are the rules sound? Of a rule set, of rows, or of a folder of table files. Example cases made
 * from the rows.
 *
 * <pre>{@code
 * SetAudit.Audited files = AuditedRules.folder(TableFiles.in(folder), List.of(), today);
 * files.refused().ifPresent(refused -> System.out.println(refused.faults()));
 * files.editions().forEach((edition, its) -> System.out.println(edition + ": " + its.isSound()));
 * }</pre>
 */
@NullMarked
package org.ensemblerules.audit.soundness;

import org.jspecify.annotations.NullMarked;
