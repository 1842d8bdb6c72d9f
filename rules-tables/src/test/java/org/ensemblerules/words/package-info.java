/** Answers in words, on the shipped tables. */
package org.ensemblerules.words;
