/**
 * What a rule may call for, on what scope, how strict, and who may do it.
 *
 * <pre>{@code
 * Permission may = rules.mayPerform(washer, Task.ADVANCED_CLEANING, coat.element(), today);
 * boolean permitted = may instanceof Permission.Permitted;
 * }</pre>
 */
@NullMarked
package org.ensemblerules.effect;

import org.jspecify.annotations.NullMarked;
