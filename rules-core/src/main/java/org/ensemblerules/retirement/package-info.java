/**
 * By when must an element, a layer or a part leave service, what ends it today, how is it disposed
 * of, and what is kept of it after an incident?
 */
@NullMarked
package org.ensemblerules.retirement;

import org.jspecify.annotations.NullMarked;
