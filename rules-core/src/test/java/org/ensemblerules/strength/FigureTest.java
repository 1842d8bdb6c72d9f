package org.ensemblerules.strength;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.Optional;
import org.ensemblerules.measure.Rational;
import org.ensemblerules.measure.Unit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What reports print of the numbers that a judgment used. */
class FigureTest {
  /** The printed number never crosses the limit that the value itself does not cross. */
  @ParameterizedTest
  @CsvSource({
    "98.7505198587831, 1, 100, x ~ 98.8 N",
    "99.97, 1, 100, x = 99.97 N",
    "99.9712, 1, 100, x ~ 99.97 N",
    "100.0000001, 1, 100, x = 100.0000001 N",
    "100, 1, 100, x = 100 N",
    "100.50, 1, 100, x = 100.5 N",
    "7, 3, 100, x = 7 N",
    "-0.04, 1, 0, x = -0.04 N",
    "44.4500, 1, 44.5, x ~ 44.4 N"
  })
  void printedToThePlacesOfTheLimitAndOneMore(
      BigDecimal value, int places, BigDecimal edge, String text) {
    Figure figure = Figure.of("x", Rational.of(value), Optional.of(Unit.NEWTON));
    Figure shown = figure.shownTo(places, Rational.of(edge));
    assertThat(shown).hasToString(text);
    assertThat(shown.value()).isEqualByComparingTo(value);
  }

  @Test
  void aNumberThatCannotBeWrittenOutIsMarked() {
    Rational third = Rational.of(1).dividedBy(Rational.of(3));
    Figure figure = Figure.of("x", third, Optional.empty());
    assertThat(figure).hasToString("x ~ 0.333333333333");
    assertThat(figure.shownTo(2, Rational.ZERO)).hasToString("x ~ 0.33");
  }
}
