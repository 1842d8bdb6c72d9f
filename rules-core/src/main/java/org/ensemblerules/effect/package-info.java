/** What a rule may call for, on what scope, how strict, and who may do it. */
@NullMarked
package org.ensemblerules.effect;

import org.jspecify.annotations.NullMarked;
