package org.ensemblerules.issue;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.PropertyDefaults;
import net.jqwik.api.Provide;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.domains.DomainContext;
import org.ensemblerules.gear.Element;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.Label;
import org.ensemblerules.gear.LabelBuilder;
import org.ensemblerules.gear.Legibility;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.gear.YesNoUnknown;
import org.ensemblerules.testkit.Cases;
import org.ensemblerules.testkit.FitGear;
import org.ensemblerules.testkit.FrozenRules;
import org.ensemblerules.testkit.GearCase;
import org.ensemblerules.verdict.Service;

/** What holds of notices whatever they name and whatever labels say. */
@Domain(Cases.class)
@Domain(DomainContext.Global.class)
@PropertyDefaults(edgeCases = EdgeCasesMode.NONE)
class SafetyNoticeProperties {
  @Provide
  Arbitrary<SafetyNotice> notices() {
    Arbitrary<Set<String>> models = Arbitraries.of("Model A", "Model B").set().ofMaxSize(2);
    Arbitrary<Set<String>> lots = Arbitraries.of("Lot 1", "Lot 2").set().ofMaxSize(2);
    return Combinators.combine(
            Arbitraries.of(SafetyNotice.Asks.class),
            Arbitraries.of(FitGear.MAKER_NAME, "Another maker"),
            models,
            lots,
            Arbitraries.of("2019", "2020-03", "UNKNOWN"),
            Arbitraries.of("2020", "2020-03-01", "UNKNOWN"))
        .as(
            (asks, maker, named, some, from, through) ->
                new SafetyNotice(
                    "N-1",
                    asks,
                    Set.of(),
                    maker,
                    named,
                    some,
                    MarkedDate.parse(from),
                    MarkedDate.parse(through)));
  }

  @Property(tries = 150)
  void aNoticeNeverMakesAnAnswerMilder(
      @ForAll GearCase given, @ForAll("notices") SafetyNotice notice) {
    KeptElement kept = new KeptElement(given.assessment(), Whereabouts.unknown());
    JudgedElement without = JudgedElement.of(FrozenRules.rules(), kept, List.of(), given.asOf());
    JudgedElement with = JudgedElement.of(FrozenRules.rules(), kept, List.of(notice), given.asOf());
    assertThat(with.verdict()).isEqualTo(without.verdict());
    if (without.service() == Service.OUT) {
      assertThat(with.service()).isEqualTo(Service.OUT);
      assertThat(with.goesTo()).isEqualTo(without.goesTo());
    }
    assertThat(with.service() == Service.OUT)
        .isEqualTo(without.service() == Service.OUT || !with.notices().isEmpty());
    assertThat(with.goesTo().isPresent()).isEqualTo(with.service() == Service.OUT);
  }

  /** What is wiped off a label turns no yes and no perhaps into a no. */
  @Property
  void whatIsLeftOutOfALabelNeverTakesItOutOfANotice(
      @ForAll("notices") SafetyNotice notice,
      @ForAll boolean model,
      @ForAll boolean lot,
      @ForAll boolean date,
      @ForAll boolean legible) {
    LabelBuilder blurred =
        Label.builder()
            .manufacturer(FitGear.MAKER_NAME)
            .legibility(legible ? Legibility.READABLE : Legibility.PARTLY_READABLE);
    if (model) {
      blurred.model("Model A");
    }
    if (lot) {
      blurred.identification("Lot 1");
    }
    if (date) {
      blurred.manufactured(MarkedDate.of(FitGear.MADE));
    }
    YesNoUnknown told = touches(notice, FitGear.label().build());
    YesNoUnknown less = touches(notice, blurred.build());
    assertThat(less != YesNoUnknown.NO || told == YesNoUnknown.NO).isTrue();
  }

  private static YesNoUnknown touches(SafetyNotice notice, Label label) {
    Element helmet = FitGear.element(ElementKind.HELMET).label(label).build();
    return notice.touches(helmet, FrozenRules.tables().anatomy().labels(helmet));
  }
}
