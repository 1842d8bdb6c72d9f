/** Exact quantities, units and rounding for conformance. */
@NullMarked
package org.ensemblerules.measure;

import org.jspecify.annotations.NullMarked;
