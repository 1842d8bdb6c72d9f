/**
 * What does one member get? Is a set complete and usable together, may an element be issued, is a
 * delivery what was ordered, and what does a safety notice touch?
 *
 * <pre>{@code
 * DepartmentRules department = rules.department(List.of(notice), today);
 * gear.stream()
 *     .map(department::judged)
 *     .flatMap(judged -> department.touched(judged).stream())
 *     .forEach(touched -> System.out.println(touched.element() + ": " + touched.notices()));
 * }</pre>
 */
@NullMarked
package org.ensemblerules.issue;

import org.jspecify.annotations.NullMarked;
