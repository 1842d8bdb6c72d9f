/** The tables of defects as DMN, and a DMN engine's answers beside the library's. */
@NullMarked
package org.ensemblerules.dmn;

import org.jspecify.annotations.NullMarked;
