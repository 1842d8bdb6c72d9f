package org.ensemblerules.record;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.source.Checked;
import org.ensemblerules.testkit.FrozenProvenance;
import org.junit.jupiter.api.Test;

/** What laws ask, on a frozen table. */
class PfasLawTableTest {
  static final PlaceCode HERE = new PlaceCode("XX-A1");
  private static final PlaceCode THERE = new PlaceCode("XX-B");
  private static final LocalDate FROM = LocalDate.of(2020, 1, 1);
  private static final LocalDate BEFORE = LocalDate.of(2025, 1, 1);
  private static final PfasDemand KEEP =
      new PfasDemand.KeepNotice(3, Set.of(SaleParty.SELLER, SaleParty.BUYER));

  private static PfasLawRow row(String key, Optional<LocalDate> from, PfasDemand demand) {
    Optional<LocalDate> before =
        demand instanceof PfasDemand.Notice ? Optional.of(BEFORE) : Optional.empty();
    return new PfasLawRow(FrozenProvenance.of(key), HERE, from, before, demand);
  }

  static final PfasLawTable TABLE =
      PfasLawTable.of(
              List.of(
                  row("notice", Optional.of(FROM), new PfasDemand.Notice()),
                  row("keep", Optional.of(FROM), KEEP),
                  row("label", Optional.empty(), new PfasDemand.FixedLabel()),
                  row("ban", Optional.of(BEFORE), new PfasDemand.SaleBan())))
          .orElseThrow();

  static PfasNotice sold(PlaceCode place, String on) {
    return new PfasNotice(
        place,
        MarkedDate.parse(on),
        PfasContent.ADDED,
        Optional.of("water repellent"),
        MarkedDate.unknown());
  }

  @Test
  void aNoticeIsAskedFromTheFirstDayToTheLast() {
    assertThat(TABLE.notice(HERE, FROM)).isInstanceOf(PfasAnswer.Asked.class);
    assertThat(TABLE.notice(HERE, BEFORE.minusDays(1))).isInstanceOf(PfasAnswer.Asked.class);
    assertThat(TABLE.notice(HERE, FROM.minusDays(1))).isInstanceOf(PfasAnswer.OnOtherDays.class);
    assertThat(TABLE.notice(HERE, BEFORE)).isInstanceOf(PfasAnswer.OnOtherDays.class);
    assertThat(TABLE.keeping(HERE, FROM)).isInstanceOf(PfasAnswer.Asked.class);
  }

  @Test
  void whatBeganOnNobodyKnowsWhichDayIsAskedOfEverySale() {
    assertThat(TABLE.fixedLabel(HERE, LocalDate.of(1999, 1, 1)))
        .isInstanceOf(PfasAnswer.Asked.class);
  }

  @Test
  void aPlaceWithoutARowIsNotKnown() {
    assertThat(TABLE.notice(THERE, FROM)).isEqualTo(new PfasAnswer.NotKnown(THERE));
    assertThat(TABLE.keeping(THERE, FROM)).isEqualTo(new PfasAnswer.NotKnown(THERE));
    assertThat(TABLE.fixedLabel(THERE, FROM)).isEqualTo(new PfasAnswer.NotKnown(THERE));
    for (PfasContent content : PfasContent.values()) {
      assertThat(TABLE.maySell(THERE, FROM, content)).isEqualTo(new SaleAnswer.NotKnown(THERE));
    }
    assertThat(TABLE.keepThrough(sold(THERE, "2021-01-01"), SaleParty.BUYER))
        .isInstanceOf(KeepAnswer.ForNow.class);
  }

  @Test
  void whatIsNotKnownToBeFreeOfPfasIsBarredAsWhatContainsIt() {
    assertThat(TABLE.maySell(HERE, BEFORE, PfasContent.ADDED))
        .isInstanceOf(SaleAnswer.Barred.class);
    assertThat(TABLE.maySell(HERE, BEFORE, PfasContent.UNKNOWN))
        .isInstanceOf(SaleAnswer.Barred.class);
    assertThat(TABLE.maySell(HERE, BEFORE, PfasContent.NONE_ADDED))
        .isInstanceOf(SaleAnswer.NotBarredBy.class);
    assertThat(TABLE.maySell(HERE, BEFORE.minusDays(1), PfasContent.ADDED))
        .isInstanceOf(SaleAnswer.NotBarredBy.class);
  }

  @Test
  void aNoticeIsKeptThreeYearsFromTheLatestDayOfTheSale() {
    assertThat(through("2024-02-29")).isEqualTo(LocalDate.of(2027, 2, 28));
    assertThat(through("2021-05-14")).isEqualTo(LocalDate.of(2024, 5, 14));
    assertThat(through("2021-05")).isEqualTo(LocalDate.of(2024, 5, 31));
    assertThat(through("2021")).isEqualTo(LocalDate.of(2024, 12, 31));
    assertThat(TABLE.keepThrough(sold(HERE, "UNKNOWN"), SaleParty.BUYER))
        .isEqualTo(new KeepAnswer.ForNow("not known when it was sold"));
    assertThat(TABLE.keepThrough(sold(HERE, "2019-12-31"), SaleParty.SELLER))
        .isInstanceOf(KeepAnswer.ForNow.class);
  }

  private static LocalDate through(String sold) {
    KeepAnswer answer = TABLE.keepThrough(sold(HERE, sold), SaleParty.BUYER);
    return ((KeepAnswer.Through) answer).through();
  }

  @Test
  void whatIsSaidTwiceIsRefused() {
    assertThat(
            PfasLawTable.of(
                List.of(row("a", Optional.of(FROM), KEEP), row("b", Optional.of(FROM), KEEP))))
        .isInstanceOf(Checked.Refused.class);
  }
}
