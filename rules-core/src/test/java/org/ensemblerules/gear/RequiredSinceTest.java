package org.ensemblerules.gear;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Optional;
import org.ensemblerules.source.InvalidValueException;
import org.ensemblerules.testkit.FrozenRules;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Whether what a label says shows that a part must be there, that it need not, or neither. */
class RequiredSinceTest {
  private static final RequiredSince SINCE = new RequiredSince("Standard 4321", 2007);

  @ParameterizedTest
  @CsvSource({
    "'Standard 4321, 2000', true, false",
    "'4321-1997', true, false",
    "'4321 (2006 edition)', true, false",
    "'Standard 4321, 2007', false, true",
    "'4321:2018', false, true",
    "'4321, 2000 and 2018', false, false",
    "'4321', false, false",
    "'2000', false, false",
    "'Standard 1234, 2000', false, false",
    "'4321, 00', false, false",
    "'43210, 2000', false, false",
    "'by hand', false, false"
  })
  void aLabelShowsItOnlyByStandardAndYears(String claimed, boolean older, boolean met) {
    assertThat(SINCE.isAfter(Optional.of(claimed))).isEqualTo(older);
    assertThat(SINCE.isMetBy(Optional.of(claimed))).isEqualTo(met);
  }

  @Test
  void aLabelThatSaysNothingShowsNothing() {
    assertThat(SINCE.isAfter(Optional.empty())).isFalse();
    assertThat(SINCE.isMetBy(Optional.empty())).isFalse();
    assertThat(SINCE).hasToString("Standard 4321 of 2007");
  }

  @Test
  void whatNamesNoStandardOrNoYearIsRefused() {
    assertThatThrownBy(() -> new RequiredSince("some standard", 2007))
        .isInstanceOf(InvalidValueException.class)
        .hasMessageContaining("a standard with its number of four digits");
    assertThatThrownBy(() -> new RequiredSince("4321", 1899))
        .isInstanceOf(InvalidValueException.class)
        .hasMessageContaining("1900 to 2200");
  }

  @Test
  void whatEveryElementHasIsRequiredSinceNoEdition() {
    AnatomyRow required =
        FrozenRules.rules().tables().anatomy().rows().stream()
            .filter(row -> row.presence() == Presence.REQUIRED)
            .findFirst()
            .orElseThrow();
    assertThatThrownBy(
            () ->
                new AnatomyRow(
                    required.provenance(),
                    required.element(),
                    required.use(),
                    required.site(),
                    Presence.REQUIRED,
                    Optional.of(SINCE)))
        .isInstanceOf(InvalidValueException.class)
        .hasMessageContaining("only for a part that is OPTIONAL");
  }
}
