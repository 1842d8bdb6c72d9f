/** May this damage be repaired, by whom, and what must be checked after? */
@NullMarked
package org.ensemblerules.repair;

import org.jspecify.annotations.NullMarked;
