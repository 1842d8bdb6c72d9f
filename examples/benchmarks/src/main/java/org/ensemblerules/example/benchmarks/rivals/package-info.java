/** One question that a general-purpose tool can answer as well, and the ways to answer it. */
@NullMarked
package org.ensemblerules.example.benchmarks.rivals;

import org.jspecify.annotations.NullMarked;
