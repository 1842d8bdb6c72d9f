package org.ensemblerules.fieldcheck;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.ensemblerules.defect.DefectKind;
import org.ensemblerules.effect.Check;
import org.ensemblerules.measure.Quantity;
import org.ensemblerules.measure.Unit;
import org.ensemblerules.source.Checked;
import org.ensemblerules.source.InvalidValueException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CheckLimitTableTest {
  private static final CheckLimitTable TABLE = Rows.checkLimitTable();

  /** Restated as 2 in (50 mm); 2 in is 50.8 mm by the inch of 25.4 mm (40 CFR 1066.20(b)(3)). */
  @ParameterizedTest
  @CsvSource({
    "2, in, true, false",
    "50.8, mm, true, false",
    "5.08, cm, true, false",
    "50.7, mm, false, true",
    "50, mm, false, true",
    "49, mm, false, false",
    "1.75, in, false, false",
    "0, in, false, false"
  })
  void theOverlapIsComparedWithTheNumberPrintedFirst(
      String value, String unit, boolean enough, boolean secondWouldDiffer) {
    LimitAnswer answer = TABLE.overlap(Quantity.of(value, Unit.ofSymbol(unit).orElseThrow()));
    if (enough) {
      assertThat(answer).isInstanceOf(LimitAnswer.Meets.class);
    } else {
      assertThat(answer)
          .isInstanceOfSatisfying(
              LimitAnswer.Fails.class,
              fails -> {
                assertThat(fails.defect()).isEqualTo(DefectKind.OVERLAP_TOO_SMALL);
                assertThat(fails.comparison().secondUnitWouldDiffer()).isEqualTo(secondWouldDiffer);
              });
    }
  }

  @Test
  void withoutARowNothingIsShown() {
    assertThat(TABLE.judge(Check.SEAM_PULL, Quantity.of("2", Unit.INCH)))
        .isEqualTo(new LimitAnswer.NoRule());
    assertThat(CheckLimitTable.of(List.of()).orElseThrow().overlap(Quantity.of("9", Unit.INCH)))
        .isEqualTo(new LimitAnswer.NoRule());
  }

  @Test
  void impossibleValuesAreRefused() {
    assertThatThrownBy(() -> TABLE.overlap(Quantity.of("-1", Unit.INCH)))
        .isInstanceOf(InvalidValueException.class);
    assertThatThrownBy(() -> TABLE.overlap(Quantity.of("2", Unit.NEWTON)))
        .isInstanceOf(InvalidValueException.class);
  }

  @Test
  void aCheckNamedTwiceIsRefused() {
    CheckLimitRow row = TABLE.rows().get(0);
    assertThat(CheckLimitTable.of(List.of(row, row))).isInstanceOf(Checked.Refused.class);
  }
}
