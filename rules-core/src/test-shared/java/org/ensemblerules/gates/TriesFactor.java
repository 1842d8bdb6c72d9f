package org.ensemblerules.gates;

import java.math.BigDecimal;
import java.math.RoundingMode;
import net.jqwik.api.GenerationMode;
import net.jqwik.api.lifecycle.AroundPropertyHook;
import net.jqwik.api.lifecycle.PropagationMode;
import net.jqwik.api.lifecycle.PropertyAttributes;
import net.jqwik.api.lifecycle.PropertyExecutionResult;
import net.jqwik.api.lifecycle.PropertyExecutor;
import net.jqwik.api.lifecycle.PropertyLifecycleContext;

/**
 * Multiplies the tries of every property by the system property {@value #FACTOR}: below 1 for a
 * quick look while working, above 1 for a long search. Absent, it is 1. Properties that go through
 * all their values are left alone. Registered with jqwik as a service, so that no property has to
 * name it.
 */
public final class TriesFactor implements AroundPropertyHook {
  /** A decimal above 0. */
  static final String FACTOR = "tests.tries.factor";

  /** What jqwik does when neither the property nor its class says how often. */
  private static final int JQWIK_TRIES = 1000;

  /** Below this a property says next to nothing. */
  private static final int FEWEST = 10;

  @Override
  public PropagationMode propagateTo() {
    return PropagationMode.ALL_DESCENDANTS;
  }

  @Override
  public PropertyExecutionResult aroundProperty(
      PropertyLifecycleContext context, PropertyExecutor property) {
    PropertyAttributes attributes = context.attributes();
    if (attributes.generation().orElse(GenerationMode.AUTO) != GenerationMode.EXHAUSTIVE) {
      int needed = context.findAnnotation(FewestTries.class).map(FewestTries::value).orElse(FEWEST);
      attributes.setTries(
          scaled(attributes.tries().orElse(JQWIK_TRIES), System.getProperty(FACTOR), needed));
    }
    return property.execute();
  }

  /**
   * Never more than the property's own tries when the factor is at most 1, and never fewer than
   * {@code needed} unless its own are fewer.
   *
   * @throws IllegalArgumentException when the factor is not a decimal above 0
   */
  static int scaled(int own, String factor, int needed) {
    if (factor == null || factor.isEmpty()) {
      return own;
    }
    BigDecimal times = decimal(factor);
    int scaled =
        times.multiply(BigDecimal.valueOf(own)).setScale(0, RoundingMode.CEILING).intValueExact();
    return Math.max(scaled, Math.min(own, needed));
  }

  private static BigDecimal decimal(String factor) {
    BigDecimal read;
    try {
      read = new BigDecimal(factor);
    } catch (NumberFormatException notANumber) {
      throw new IllegalArgumentException(message(factor), notANumber);
    }
    if (read.signum() <= 0) {
      throw new IllegalArgumentException(message(factor));
    }
    return read;
  }

  private static String message(String factor) {
    return "system property " + FACTOR + ": \"" + factor + "\", allowed: a decimal above 0";
  }
}
