/**
 * May this damage be repaired, by whom, and what must be checked after?
 *
 * <pre>{@code
 * RepairPlan plan = rules.repair(coat.element(), List.of(torn), washer, today);
 * boolean granted = plan.granted();
 * }</pre>
 */
@NullMarked
package org.ensemblerules.repair;

import org.jspecify.annotations.NullMarked;
