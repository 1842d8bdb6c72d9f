/** How long the answers take. */
@NullMarked
package org.ensemblerules.example.benchmarks;

import org.jspecify.annotations.NullMarked;
