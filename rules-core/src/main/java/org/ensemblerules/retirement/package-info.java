/**
 * By when must an element, a layer or a part leave service, what ends it today, and how is it
 * disposed of?
 */
@NullMarked
package org.ensemblerules.retirement;

import org.jspecify.annotations.NullMarked;
