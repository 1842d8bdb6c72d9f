package org.ensemblerules.record;

import com.google.common.collect.Sets;
import java.util.Set;
import org.ensemblerules.source.Comparison;
import org.ensemblerules.source.InvalidValueException;

/**
 * What the law of a place asks where gear contains added PFAS.
 *
 * @since 0.1
 */
public sealed interface PfasDemand {
  /** The seller gives the buyer a written notice that it does, and why. */
  record Notice() implements PfasDemand {
    @Override
    public String toString() {
      return "NOTICE";
    }
  }

  /**
   * The notice is kept from the day of the sale.
   *
   * @param years for how many years, 1 to 100
   * @param by by whom; at least one
   */
  record KeepNotice(int years, Set<SaleParty> by) implements PfasDemand {
    /**
     * Copies the parties.
     *
     * @throws InvalidValueException if the number is out of range or nobody keeps it
     */
    public KeepNotice {
      InvalidValueException.require(
          years >= 1 && years <= 100, "KeepNotice.years", years, "1 to 100 years");
      by = Sets.immutableEnumSet(by);
      InvalidValueException.require(!by.isEmpty(), "KeepNotice.by", by, "at least one party");
    }

    @Override
    public String toString() {
      return "KEEP_NOTICE " + years + " years " + by;
    }
  }

  /** A label fixed to the gear says whether it does; without one it is not bought. */
  record FixedLabel() implements PfasDemand {
    @Override
    public String toString() {
      return "FIXED_LABEL";
    }
  }

  /** It is not sold. */
  record SaleBan() implements PfasDemand {
    @Override
    public String toString() {
      return "SALE_BAN";
    }
  }

  /**
   * Compares the demand with another.
   *
   * @param other the other; not null
   * @return how strict this one is, set against the other; never null
   */
  default Comparison compareStrictness(PfasDemand other) {
    if (this instanceof KeepNotice mine && other instanceof KeepNotice theirs) {
      return Comparison.moreIsStricter(mine.years(), theirs.years())
          .and(Comparison.moreAreStricter(mine.by(), theirs.by()));
    }
    return Comparison.sameOnly(equals(other));
  }

  /**
   * Returns what sort of demand it is.
   *
   * @return the name of the sort; never null
   */
  default String kind() {
    return this instanceof KeepNotice ? "KEEP_NOTICE" : toString();
  }
}
