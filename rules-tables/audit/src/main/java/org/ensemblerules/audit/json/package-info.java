/** Reports and differences as JSON, written and read back. */
@NullMarked
package org.ensemblerules.audit.json;

import org.jspecify.annotations.NullMarked;
