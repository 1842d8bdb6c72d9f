/**
 * What is ready, due and to be replaced across all elements, month by month?
 *
 * <pre>{@code
 * DepartmentRules department = rules.department(List.of(), today);
 * Figures figures = gear.stream().map(department::judged).collect(department.figures());
 * long out = figures.out();
 * }</pre>
 */
@NullMarked
package org.ensemblerules.fleet;

import org.jspecify.annotations.NullMarked;
