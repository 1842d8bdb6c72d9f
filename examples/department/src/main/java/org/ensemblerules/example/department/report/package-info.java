/** Verdicts and inspection lists as plain text for people. Reads no files and judges nothing. */
@NullMarked
package org.ensemblerules.example.department.report;

import org.jspecify.annotations.NullMarked;
