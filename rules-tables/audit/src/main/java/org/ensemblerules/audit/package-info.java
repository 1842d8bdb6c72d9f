/**
 * Are the rules sound, and what would others change? Every such question, behind one door:
 *
 * <pre>{@code
 * AuditedRules rules = AuditedRules.of(now);
 * AuditReport report = rules.audit(today);
 * report.faults().forEach(flaw -> System.out.println(flaw.kind() + ": " + flaw.found()));
 * rules.changedRows(then).changes().forEach(change -> System.out.println(change.text()));
 * }</pre>
 */
@NullMarked
package org.ensemblerules.audit;

import org.jspecify.annotations.NullMarked;
