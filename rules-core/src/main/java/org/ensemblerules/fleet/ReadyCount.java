package org.ensemblerules.fleet;

import com.google.common.collect.Maps;
import java.util.EnumMap;
import java.util.Map;
import org.ensemblerules.source.InvalidValueException;
import org.ensemblerules.verdict.OutBecause;

/**
 * How many elements may be in service and how many may not, and why.
 *
 * @param in how many may be in service, 0 or more
 * @param out how many may not, 0 or more
 * @param because for how many of these which cause holds; one may be out for several; not null
 * @param noticed how many of these are out by a safety notice, 0 or more
 * @since 0.1
 */
public record ReadyCount(long in, long out, Map<OutBecause, Long> because, long noticed) {
  /**
   * Copies the map and checks the numbers.
   *
   * @throws InvalidValueException if one is negative
   */
  public ReadyCount {
    InvalidValueException.require(in >= 0, "ReadyCount.in", in, "0 or more");
    InvalidValueException.require(out >= 0, "ReadyCount.out", out, "0 or more");
    because = Maps.immutableEnumMap(because);
    InvalidValueException.require(noticed >= 0, "ReadyCount.noticed", noticed, "0 or more");
  }

  /** Returns both together. */
  ReadyCount and(ReadyCount other) {
    Map<OutBecause, Long> sum = new EnumMap<>(OutBecause.class);
    sum.putAll(because);
    other.because.forEach((cause, count) -> sum.merge(cause, count, Long::sum));
    return new ReadyCount(in + other.in, out + other.out, sum, noticed + other.noticed);
  }
}
