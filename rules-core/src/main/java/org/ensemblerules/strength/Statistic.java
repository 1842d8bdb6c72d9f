package org.ensemblerules.strength;

/** What is compared with the limit. */
public enum Statistic {
  /** The mean of the specimens of one direction. */
  MEAN_OF_SPECIMENS,
  /** Each specimen on its own. */
  EACH_SPECIMEN
}
