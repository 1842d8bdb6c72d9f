package org.ensemblerules.record;

/** The two sides of a sale. */
public enum SaleParty {
  /** Who sells. */
  SELLER,
  /** Who buys. */
  BUYER
}
