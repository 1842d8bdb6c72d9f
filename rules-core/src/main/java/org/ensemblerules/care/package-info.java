/**
 * How must gear be cleaned after what it met; did a wash keep its limits, and did it work?
 *
 * <pre>{@code
 * CareRoute route = rules.care(coat.element(), Set.of(Exposure.PRODUCTS_OF_COMBUSTION));
 * if (route instanceof CareRoute.Steps steps) {
 *   steps.steps().forEach(System.out::println);
 * }
 * }</pre>
 */
@NullMarked
package org.ensemblerules.care;

import org.jspecify.annotations.NullMarked;
