/** The main job, run on one invented department. */
@NullMarked
package org.ensemblerules.example.department;

import org.jspecify.annotations.NullMarked;
