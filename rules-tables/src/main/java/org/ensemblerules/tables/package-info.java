/** Rule data by edition, loaded strictly: every fault is named with its place. */
@NullMarked
package org.ensemblerules.tables;

import org.jspecify.annotations.NullMarked;
