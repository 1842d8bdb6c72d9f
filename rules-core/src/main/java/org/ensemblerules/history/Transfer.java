package org.ensemblerules.history;

import java.util.Optional;

/**
 * The kinds of change in who keeps an element.
 *
 * @since 0.1
 */
public enum Transfer {
  /** To another station of the same department. */
  TO_STATION,
  /** To another department, for good. */
  TO_DEPARTMENT,
  /** Lent. */
  LENT,
  /** Back from being lent. */
  BACK_FROM_LOAN,
  /** To whoever cleans, repairs, inspects or tests it; expected back. */
  TO_PROVIDER,
  /** Back from whoever cleaned, repaired, inspected or tested it. */
  BACK_FROM_PROVIDER,
  /** Lost: nobody knows where it is. */
  LOST,
  /** Stolen. */
  STOLEN,
  /** Found again or recovered, after it was lost or stolen. */
  FOUND_AGAIN;

  /**
   * Returns what ends an absence that this begins.
   *
   * @return the transfer with which the element is back; empty if this begins no absence
   */
  public Optional<Transfer> endedBy() {
    return switch (this) {
      case LENT -> Optional.of(BACK_FROM_LOAN);
      case TO_PROVIDER -> Optional.of(BACK_FROM_PROVIDER);
      case LOST, STOLEN -> Optional.of(FOUND_AGAIN);
      default -> Optional.empty();
    };
  }

  /**
   * Tells whether the element comes with this from others' hands, whoever they are. {@link
   * ReturnTable} says how it is inspected before it serves.
   *
   * @return true if it does
   */
  public boolean comesBack() {
    return switch (this) {
      case TO_DEPARTMENT, BACK_FROM_LOAN, BACK_FROM_PROVIDER, FOUND_AGAIN -> true;
      case TO_STATION, LENT, TO_PROVIDER, LOST, STOLEN -> false;
    };
  }
}
