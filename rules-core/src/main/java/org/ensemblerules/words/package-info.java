/**
 * How is that said to people? The words for each code, and sentences for verdicts, reasons, steps
 * and due days. Programs read codes; nobody else should have to.
 *
 * <pre>{@code
 * Sentences sentences = new Sentences(ShippedWords.english());
 * String said = sentences.of(rules.assess(coat, today));
 * }</pre>
 */
@NullMarked
package org.ensemblerules.words;

import org.jspecify.annotations.NullMarked;
