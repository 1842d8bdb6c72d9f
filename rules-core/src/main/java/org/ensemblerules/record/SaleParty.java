package org.ensemblerules.record;

/**
 * The two sides of a sale.
 *
 * @since 0.1
 */
public enum SaleParty {
  /** Who sells. */
  SELLER,
  /** Who buys. */
  BUYER
}
