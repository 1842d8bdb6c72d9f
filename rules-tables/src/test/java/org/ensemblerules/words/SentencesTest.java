package org.ensemblerules.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.ensemblerules.GearRules;
import org.ensemblerules.defect.DefectKind;
import org.ensemblerules.defect.Extent;
import org.ensemblerules.defect.Finding;
import org.ensemblerules.defect.FindingId;
import org.ensemblerules.effect.CredentialScope;
import org.ensemblerules.effect.Destination;
import org.ensemblerules.effect.EntityKind;
import org.ensemblerules.effect.GoesTo;
import org.ensemblerules.effect.PermittedDoer;
import org.ensemblerules.gear.Element;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.LayerKind;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.gear.Part;
import org.ensemblerules.gear.Site;
import org.ensemblerules.gear.Use;
import org.ensemblerules.measure.Quantity;
import org.ensemblerules.measure.Unit;
import org.ensemblerules.ruleset.RuleSet;
import org.ensemblerules.schedule.Due;
import org.ensemblerules.schedule.TaskKey;
import org.ensemblerules.source.Checked;
import org.ensemblerules.tables.ShippedRules;
import org.ensemblerules.tables.ShippedWords;
import org.ensemblerules.tables.VerdictJson;
import org.ensemblerules.tables.message.JsonFault;
import org.ensemblerules.testkit.ShippedCase;
import org.ensemblerules.testkit.ShippedGear;
import org.ensemblerules.verdict.Assessment;
import org.ensemblerules.verdict.Verdict;
import org.junit.jupiter.api.Test;

class SentencesTest {
  private static final RuleSet RULES = ShippedRules.standard().rules();
  private static final Sentences SENTENCES = new Sentences(ShippedWords.english());
  private static final ShippedCase COAT =
      ShippedCase.fit(RULES, new ShippedGear.Kind(ElementKind.COAT, Use.STRUCTURAL));

  private static Verdict with(DefectKind defect, Site site, Extent extent) {
    return COAT.with(
            new Finding(
                new FindingId("F1"), site, "", defect, extent, MarkedDate.of(ShippedGear.AS_OF)))
        .verdict();
  }

  @Test
  void whatIsFitTellsWhatComesNext() {
    assertThat(SENTENCES.of(COAT.verdict()))
        .matches("In service; next is [a-z ]+ by 20\\d\\d-\\d\\d-\\d\\d\\.");
  }

  @Test
  void whatIsOutTellsTheStepsInTheirOrder() {
    Verdict verdict =
        with(
            DefectKind.MELTING,
            Site.of(Part.TRIM, LayerKind.OUTER_SHELL),
            new Extent.NotMeasured());
    assertThat(SENTENCES.of(verdict)).startsWith("Out of service: ").endsWith(".");
    assertThat(verdict.reasons())
        .extracting(SENTENCES::of)
        .anySatisfy(text -> assertThat(text).startsWith("Melting at trim of the outer shell"));
  }

  @Test
  void whatIsRetiredSaysSo() {
    Verdict verdict =
        with(DefectKind.BEYOND_REPAIR, Site.of(Part.WHOLE_ELEMENT), new Extent.NotMeasured());
    assertThat(SENTENCES.of(verdict)).isEqualTo("Out of service for good: retire it.");
  }

  @Test
  void whatIsExplainedIsTheVerdictAndThenEachReasonForIt() {
    Assessment unwashed =
        Assessment.builder(
                Element.builder("C-1", ElementKind.COAT, Use.STRUCTURAL)
                    .inService("2020-09-01")
                    .build())
            .build();
    Verdict verdict = GearRules.of(RULES).assess(unwashed, LocalDate.of(2026, 3, 1));
    List<String> told = SENTENCES.explain(verdict);
    assertThat(told).hasSize(1 + verdict.reasons().size()).startsWith(SENTENCES.of(verdict));
    assertThat(told.subList(1, told.size()))
        .containsExactlyElementsOf(verdict.reasons().stream().map(SENTENCES::of).toList())
        .contains(
            "Advanced cleaning: none on record counts; 2 times in every 12 months, first by 12"
                + " months from its issue (2020-09-01); due by 2021-09-01; wash it.");
  }

  @Test
  void dueDaysAreToldFromTheDayAskedAbout() {
    LocalDate by = LocalDate.of(2026, 3, 1);
    Due due =
        new Due(
            new TaskKey("advanced-cleaning"),
            Optional.empty(),
            Optional.of(LayerKind.THERMAL_LINER),
            Optional.of(by),
            "twice a year",
            Optional.empty(),
            Optional.empty());
    assertThat(SENTENCES.of(due, by))
        .isEqualTo("Advanced cleaning of the thermal liner is due by 2026-03-01.");
    assertThat(SENTENCES.of(due, by.plusDays(1)))
        .isEqualTo("Advanced cleaning of the thermal liner was due by 2026-03-01, 1 day ago.");
    Due ever =
        new Due(
            due.task(),
            due.row(),
            Optional.empty(),
            Optional.empty(),
            "never done",
            Optional.empty(),
            Optional.empty());
    assertThat(SENTENCES.of(ever, by))
        .isEqualTo("Advanced cleaning is due now; nobody knows since when.");
  }

  @Test
  void placesAndDoersNameTheirTraining() {
    assertThat(
            SENTENCES.of(
                new GoesTo(
                    Destination.SERVICE_PROVIDER, Optional.of(CredentialScope.ADVANCED_REPAIR))))
        .isEqualTo("service provider verified for advanced repair");
    assertThat(
            SENTENCES.of(
                List.of(
                    new PermittedDoer(
                        EntityKind.ORGANIZATION, Optional.of(CredentialScope.INSPECT)),
                    new PermittedDoer(EntityKind.MANUFACTURER, Optional.empty()))))
        .isEqualTo("organization trained for inspection; manufacturer");
  }

  @Test
  void theJsonOfAVerdictBearsItsWordsAndIsReadWithoutThem() {
    Verdict verdict =
        with(
            DefectKind.TEAR,
            Site.of(Part.FABRIC, LayerKind.OUTER_SHELL),
            new Extent.Length(Quantity.of("2", Unit.INCH)));
    String json = VerdictJson.write(verdict, ShippedWords.english());

    assertThat(json).contains("\"words\":{\"language\":\"en\",\"verdict\":\"Out of service: ");
    Checked<Verdict, JsonFault> read = VerdictJson.read("verdict", json);
    assertThat(read.orElseThrow()).isEqualTo(verdict);
  }
}
