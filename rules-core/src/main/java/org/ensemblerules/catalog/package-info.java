/**
 * What can be entered of which element? Everything that an entry form needs, worked out from a set
 * of rules.
 *
 * <pre>{@code
 * Optional<ElementForm> form = rules.catalog().element(ElementKind.COAT, Use.STRUCTURAL);
 * form.ifPresent(each -> each.sites().forEach(System.out::println));
 * }</pre>
 */
@NullMarked
package org.ensemblerules.catalog;

import org.jspecify.annotations.NullMarked;
