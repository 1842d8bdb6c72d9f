/** One invented department: its stations, its people, its gear and what happened to it. */
@NullMarked
package org.ensemblerules.example.department.demo;

import org.jspecify.annotations.NullMarked;
