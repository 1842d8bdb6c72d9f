package org.ensemblerules.fleet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.ensemblerules.gear.Element;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.LayerKind;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.gear.Use;
import org.ensemblerules.issue.JudgedElement;
import org.ensemblerules.issue.Whereabouts;
import org.ensemblerules.source.InvalidValueException;
import org.ensemblerules.testkit.FitGear;
import org.ensemblerules.testkit.GearCase;
import org.junit.jupiter.api.Test;

/** What must be bought for a coat of two layers, of which the liner was made a year later. */
class NeedTest {
  private static final Whereabouts MEMBER = Whereabouts.with("Member 7", "Station 1");
  private static final LocalDate FAR = LocalDate.of(2040, 1, 1);

  private static JudgedElement coat(String linerMade) {
    GearCase fit = FitGear.fit(ElementKind.COAT);
    Element coat =
        FitGear.element(ElementKind.COAT)
            .layer(
                LayerKind.LINER_SYSTEM,
                FitGear.label().size("L").manufactured(MarkedDate.parse(linerMade)).build())
            .build();
    return Fleets.judged(fit.with(coat), MEMBER);
  }

  private static Prices prices(boolean whole, LayerKind... layers) {
    Stream<UnitCost> of =
        Stream.of(layers)
            .map(
                layer ->
                    new UnitCost(
                        ElementKind.COAT, Use.STRUCTURAL, Optional.of(layer), BigDecimal.TEN));
    UnitCost all =
        new UnitCost(ElementKind.COAT, Use.STRUCTURAL, Optional.empty(), BigDecimal.valueOf(15));
    return Prices.of(
        Stream.concat(of, whole ? Stream.of(all) : Stream.empty()).toList(), BigDecimal.ZERO);
  }

  private static final Prices BOTH = prices(true, LayerKind.OUTER_SHELL, LayerKind.LINER_SYSTEM);

  private static String needs(JudgedElement judged, Prices prices, LocalDate through) {
    List<String> lines =
        Need.of(judged, prices, through).stream()
            .map(
                need ->
                    need.group().layer().map(Enum::name).orElse("whole")
                        + " "
                        + need.by().map(LocalDate::toString).orElse("undated")
                        + " "
                        + need.today().map(BigDecimal::toString).orElse("unpriced"))
            .toList();
    return String.join("; ", lines);
  }

  @Test
  void layersWithAPriceAreBoughtByThemselves() {
    assertThat(needs(coat("2021-03-01"), BOTH, FAR))
        .isEqualTo("OUTER_SHELL 2030-03-01 10; LINER_SYSTEM 2031-03-01 10");
    assertThat(needs(coat("2021-03-01"), BOTH, LocalDate.of(2030, 12, 31)))
        .isEqualTo("OUTER_SHELL 2030-03-01 10");
  }

  @Test
  void aWholeOneIsBoughtForLayersThatLeaveTogetherOrHaveNoPrice() {
    assertThat(needs(coat("2020-03-01"), BOTH, FAR)).isEqualTo("whole 2030-03-01 15");
    assertThat(needs(coat("2021-03-01"), prices(true, LayerKind.OUTER_SHELL), FAR))
        .isEqualTo("whole 2030-03-01 15");
    assertThat(needs(coat("2021-03-01"), prices(false), FAR))
        .isEqualTo("whole 2030-03-01 unpriced");
  }

  @Test
  void whatCannotBeToldIsUndatedAndNeverTakenForSoundOrForRetired() {
    assertThat(needs(coat("UNKNOWN"), BOTH, FAR))
        .isEqualTo("LINER_SYSTEM undated 10; OUTER_SHELL 2030-03-01 10");
    Forecast forecast = Stream.of(coat("UNKNOWN")).collect(Forecast.collector(Fleets.DAY, 10));
    assertThat(forecast.unknown()).hasSize(1);
    assertThat(forecast.in(2030)).isEqualTo(1);
  }

  @Test
  void noGearHasAForecastToo() {
    Forecast none = Stream.<JudgedElement>empty().collect(Forecast.collector(Fleets.DAY, 1));
    assertThat(none.months()).isEmpty();
    assertThatThrownBy(() -> Forecast.collector(Fleets.DAY, 0))
        .isInstanceOf(InvalidValueException.class)
        .hasMessage("Forecast.years: given 0, allowed: 1 to 50");
  }
}
