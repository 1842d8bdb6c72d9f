/** The shipped rule sets under audit, and the example cases made from them. */
@NullMarked
package org.ensemblerules.audited;

import org.jspecify.annotations.NullMarked;
