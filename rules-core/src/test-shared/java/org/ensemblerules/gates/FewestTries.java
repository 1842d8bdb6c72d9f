package org.ensemblerules.gates;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/**
 * So many tries a property needs, whatever {@link TriesFactor} says: for one with a condition on
 * its statistics, which a few dozen tries may miss by chance.
 */
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.METHOD)
public @interface FewestTries {
  /** At least 1. More than the property's own tries changes nothing. */
  int value();
}
