package org.ensemblerules.record;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

/** What holds of sales on every day. */
class PfasLawsProperties {
  @Property
  void aLaterDayNeverLiftsABanWithoutEnd(
      @ForAll @IntRange(max = 9000) int day, @ForAll @IntRange(max = 9000) int more) {
    LocalDate on = LocalDate.of(2015, 1, 1).plusDays(day);
    if (PfasLawTableTest.TABLE.maySell(PfasLawTableTest.HERE, on, PfasContent.UNKNOWN)
        instanceof SaleAnswer.Barred) {
      assertThat(
              PfasLawTableTest.TABLE.maySell(
                  PfasLawTableTest.HERE, on.plusDays(more), PfasContent.UNKNOWN))
          .isInstanceOf(SaleAnswer.Barred.class);
    }
  }

  @Property
  void whatIsNotKnownIsNeverFreerThanWhatContainsIt(@ForAll @IntRange(max = 9000) int day) {
    LocalDate on = LocalDate.of(2015, 1, 1).plusDays(day);
    assertThat(PfasLawTableTest.TABLE.maySell(PfasLawTableTest.HERE, on, PfasContent.UNKNOWN))
        .isEqualTo(PfasLawTableTest.TABLE.maySell(PfasLawTableTest.HERE, on, PfasContent.ADDED));
  }

  @Property
  void aLessExactDateOfSaleIsNeverKeptShorter(@ForAll @IntRange(max = 9000) int day) {
    LocalDate on = LocalDate.of(2020, 1, 1).plusDays(day);
    LocalDate exact = through(on.toString());
    assertThat(through(on.toString().substring(0, 7))).isAfterOrEqualTo(exact);
    assertThat(through(on.toString().substring(0, 4))).isAfterOrEqualTo(exact);
  }

  private static LocalDate through(String sold) {
    KeepAnswer answer =
        PfasLawTableTest.TABLE.keepThrough(
            PfasLawTableTest.sold(PfasLawTableTest.HERE, sold), SaleParty.SELLER);
    return ((KeepAnswer.Through) answer).through();
  }
}
