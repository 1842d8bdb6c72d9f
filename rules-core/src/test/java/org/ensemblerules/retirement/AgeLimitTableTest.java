package org.ensemblerules.retirement;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.LayerKind;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.gear.Use;
import org.ensemblerules.source.Checked;
import org.ensemblerules.source.TableFault;
import org.ensemblerules.testkit.FrozenProvenance;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** By when age takes a layer out of service, or why that cannot be told. */
class AgeLimitTableTest {
  private static final LocalDate DAY = LocalDate.of(2024, 6, 15);
  private static final AgeLimitRow SHELL = row(LayerKind.OUTER_SHELL, new AgeLimit.Years(5));
  private static final AgeLimitRow LINER = row(LayerKind.LINER_SYSTEM, new AgeLimit.NoneSet());
  private static final AgeLimitRow WINTER = row(LayerKind.WINTER_LINER, new AgeLimit.NotSeen());
  private static final AgeLimitTable TABLE =
      AgeLimitTable.of(List.of(SHELL, LINER, WINTER)).orElseThrow();

  private static AgeLimitRow row(LayerKind layer, AgeLimit limit) {
    return new AgeLimitRow(
        FrozenProvenance.of("age", layer),
        ElementKind.COAT,
        Use.PROXIMITY,
        Optional.of(layer),
        limit);
  }

  private static AgeAnswer answer(LayerKind layer, String made) {
    return TABLE.answer(
        ElementKind.COAT, Use.PROXIMITY, Optional.of(layer), MarkedDate.parse(made));
  }

  @ParameterizedTest
  @CsvSource({
    "2019-06-16, 2024-06-16, false",
    "2019-06-15, 2024-06-15, true",
    "2019-06, 2024-06-01, true",
    "2019, 2024-01-01, true",
    "2020, 2025-01-01, false"
  })
  void aLimitInYears(String made, LocalDate firstDayOut, boolean out) {
    AgeAnswer answer = answer(LayerKind.OUTER_SHELL, made);
    assertThat(answer).isEqualTo(new AgeAnswer.LeavesOn(SHELL, firstDayOut));
    assertThat(answer.keepsOut(DAY)).isEqualTo(out);
    assertThat(answer.text()).isEqualTo("first day out " + firstDayOut);
  }

  @Test
  void withoutADateNothingIsShownToBeYoungEnough() {
    AgeAnswer answer = answer(LayerKind.OUTER_SHELL, "UNKNOWN");
    assertThat(answer).isEqualTo(new AgeAnswer.DateUnknown(SHELL));
    assertThat(answer.keepsOut(DAY)).isTrue();
    assertThat(answer.text()).isEqualTo("date of manufacture unknown");
  }

  @Test
  void whereNoLimitIsSetNoDateIsNeeded() {
    AgeAnswer answer = answer(LayerKind.LINER_SYSTEM, "UNKNOWN");
    assertThat(answer).isEqualTo(new AgeAnswer.NoLimitSet(LINER));
    assertThat(answer.keepsOut(DAY)).isFalse();
    assertThat(answer.text()).isEqualTo("no age limit set");
  }

  @Test
  void aLimitNotSeenIsNotNoLimit() {
    AgeAnswer answer = answer(LayerKind.WINTER_LINER, "2024");
    assertThat(answer).isEqualTo(new AgeAnswer.LimitNotSeen(WINTER));
    assertThat(answer.keepsOut(DAY)).isTrue();
    assertThat(answer.text()).isEqualTo("age limit not seen");
  }

  @Test
  void withoutARowNothingIsShown() {
    AgeAnswer answer = answer(LayerKind.THERMAL_LINER, "2024");
    assertThat(answer).isEqualTo(new AgeAnswer.NoRule());
    assertThat(answer.keepsOut(DAY)).isTrue();
    assertThat(answer.text()).isEqualTo("no rule covers its age");
  }

  @Test
  void aLayerTwiceIsAFault() {
    Checked<AgeLimitTable, TableFault> result = AgeLimitTable.of(List.of(SHELL, SHELL));
    assertThat(((Checked.Refused<AgeLimitTable, TableFault>) result).faults().get(0).toString())
        .startsWith("frozen/age/OUTER_SHELL, layers: found ")
        .endsWith("allowed: each element and layer once");
  }

  @Test
  void limitsSayWhatTheyAre() {
    assertThat(new AgeLimit.NoneSet()).hasToString("NONE_SET");
    assertThat(new AgeLimit.NotSeen()).hasToString("NOT_SEEN");
    assertThat(SHELL.canonical()).containsExactly("COAT", "PROXIMITY", "OUTER_SHELL", "5 years");
  }
}
