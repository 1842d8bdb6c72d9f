package org.ensemblerules.source;

/**
 * What is wrong with something that was handed over: where, what was found, what is allowed.
 *
 * @since 0.1
 */
public interface Fault {
  /**
   * Returns what kind of fault it is, for programs.
   *
   * @return the code; never null
   */
  FaultCode code();

  /**
   * Returns the fault in words, for people.
   *
   * @return where it is, what was found there and what is allowed there; never null
   */
  @Override
  String toString();
}
