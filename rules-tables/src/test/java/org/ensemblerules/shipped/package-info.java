/**
 * The shipped tables, held against the facts, against public regulations and against themselves.
 */
package org.ensemblerules.shipped;
