/**
 * Do the measured specimens meet the requirement, and how sure is that?
 *
 * <p>Requirements of product standards are for new material. The caller chooses the purpose and the
 * decision rule; the result names both, and every number used. Formulas and their sources stand
 * with {@link org.ensemblerules.strength.DecisionRule} and {@link org.ensemblerules.strength.Risk}.
 *
 * <pre>{@code
 * ReportJudge judge =
 *     rules.judge(
 *         new Purpose.Certification(),
 *         new DecisionRule.SimpleAcceptance(ComparisonMethod.absolute()));
 * if (judge.judge(edition, report) instanceof ReportJudge.Judged judged) {
 *   System.out.println(judged.outcome());
 * }
 * }</pre>
 */
@NullMarked
package org.ensemblerules.strength;

import org.jspecify.annotations.NullMarked;
