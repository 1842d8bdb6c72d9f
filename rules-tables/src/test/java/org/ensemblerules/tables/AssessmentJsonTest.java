package org.ensemblerules.tables;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.InputStream;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.ensemblerules.GearRules;
import org.ensemblerules.care.Exposure;
import org.ensemblerules.defect.Extent;
import org.ensemblerules.defect.Finding;
import org.ensemblerules.defect.FindingId;
import org.ensemblerules.effect.Credential;
import org.ensemblerules.effect.CredentialScope;
import org.ensemblerules.gear.Label;
import org.ensemblerules.gear.LayerKind;
import org.ensemblerules.gear.Legibility;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.gear.YesNoUnknown;
import org.ensemblerules.history.Event;
import org.ensemblerules.history.ExposureEvent;
import org.ensemblerules.history.LookEvent;
import org.ensemblerules.history.Moment;
import org.ensemblerules.history.Transfer;
import org.ensemblerules.history.UseEvent;
import org.ensemblerules.history.WorkEvent;
import org.ensemblerules.inspection.Equipment;
import org.ensemblerules.inspection.Inspection;
import org.ensemblerules.measure.Quantity;
import org.ensemblerules.measure.Unit;
import org.ensemblerules.retirement.AgeAnswer;
import org.ensemblerules.source.Checked;
import org.ensemblerules.source.FaultCode;
import org.ensemblerules.tables.message.JsonFault;
import org.ensemblerules.testkit.EventKinds;
import org.ensemblerules.testkit.InventedRules;
import org.ensemblerules.verdict.Assessment;
import org.ensemblerules.verdict.Service;
import org.ensemblerules.verdict.Verdict;
import org.junit.jupiter.api.Test;

/** What each field of an assessment means. */
class AssessmentJsonTest {
  private static final String COAT = "{\"id\":\"C-1\",\"kind\":\"COAT\",\"use\":\"STRUCTURAL\"}";
  private static final String LEAST_INSPECTION =
      "{\"kind\":\"ROUTINE\",\"occasion\":\"AFTER_USE\",\"on\":\"2025-03-01\","
          + "\"by\":{\"name\":\"Member 8\",\"kind\":\"MEMBER\"}}";

  private static Assessment everything() throws IOException {
    return AssessmentJson.read("everything.json", text()).orElseThrow();
  }

  private static String text() throws IOException {
    try (InputStream stream =
        AssessmentJsonTest.class.getResourceAsStream("assessments/sound/everything.json")) {
      return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
    }
  }

  @Test
  void labelsSayWhatIsWrittenAndNothingElse() throws IOException {
    Assessment assessment = everything();

    assertThat(assessment.element().label()).contains(Label.builder().build());
    assertThat(assessment.element().layerLabels())
        .containsOnlyKeys(LayerKind.OUTER_SHELL, LayerKind.LINER_SYSTEM)
        .containsEntry(
            LayerKind.OUTER_SHELL,
            Label.builder()
                .manufacturer("The maker")
                .model("Model A")
                .identification("Lot 7")
                .size("44 R")
                .manufactured(new MarkedDate.Month(YearMonth.of(2018, 3)))
                .claimedEdition("Edition 2018")
                .certificationMark(YesNoUnknown.YES)
                .legibility(Legibility.READABLE)
                .build())
        .containsEntry(
            LayerKind.LINER_SYSTEM,
            Label.builder()
                .manufactured(new MarkedDate.OfYear(2018))
                .legibility(Legibility.PARTLY_READABLE)
                .build());
    assertThat(assessment.element().inService())
        .isEqualTo(new MarkedDate.Month(YearMonth.of(2019, 5)));
    assertThat(assessment.element().cbrnOption()).isEqualTo(YesNoUnknown.NO);
  }

  @Test
  void eventsKeepTheirDatesTheirOrderAndWhatTheyAnswer() throws IOException {
    Assessment assessment = everything();

    assertThat(assessment.history().events()).hasSize(22);
    LookEvent.Inspected inspected = assessment.history().events(LookEvent.Inspected.class).get(0);
    assertThat(inspected.orderInDay()).isEqualTo(1);
    assertThat(inspected.inspection().atHand())
        .isEqualTo(Set.of(Equipment.GOOD_LIGHT, Equipment.RULER));
    assertThat(inspected.inspection().by().orElseThrow().credentials())
        .containsExactly(
            new Credential(
                CredentialScope.INSPECT, LocalDate.of(2019, 1, 1), LocalDate.of(2026, 12, 31)));
    LookEvent.Checked checked = assessment.history().events(LookEvent.Checked.class).get(0);
    assertThat(checked.when().orderInDay()).isEqualTo(2);
    assertThat(checked.answers()).isEqualTo(Set.of(new FindingId("F1")));
    assertThat(assessment.history().events(UseEvent.Returned.class).get(0).when().date())
        .isEqualTo(MarkedDate.unknown());
    assertThat(assessment.history().events(WorkEvent.Repaired.class).get(0).replaced()).isFalse();
    assertThat(assessment.history().events(ExposureEvent.Exposed.class))
        .containsExactly(
            new ExposureEvent.Exposed(
                new Moment(MarkedDate.parse("2021-06-02"), 1), Exposure.PRODUCTS_OF_COMBUSTION));
    assertThat(assessment.history().events(UseEvent.Moved.class))
        .containsExactly(
            new UseEvent.Moved(Moment.on(MarkedDate.parse("2021-07")), Transfer.LENT, "Station 2"));
    assertThat(assessment.history().events(WorkEvent.Modified.class))
        .containsExactly(
            new WorkEvent.Modified(
                Moment.on(MarkedDate.parse("2021-08-01")), "a pocket added", YesNoUnknown.YES));
    assertThat(assessment.history().events(UseEvent.TakenOut.class).get(0).why())
        .isEqualTo("sent for repair");
    assertThat(assessment.history().events(UseEvent.BackInService.class)).hasSize(1);
  }

  @Test
  void quantitiesKeepTheirDigits() throws IOException {
    Assessment assessment = everything();

    Finding onRecord = assessment.history().events(LookEvent.Found.class).get(0).finding();
    assertThat(onRecord.extent())
        .isEqualTo(new Extent.Length(new Quantity(new BigDecimal("0.50"), Unit.INCH)));
    assertThat(assessment.findings().get(2).extent())
        .isEqualTo(new Extent.Area(Quantity.of("150", Unit.SQUARE_MILLIMETER)));
  }

  @Test
  void whatIsLeftOutIsUnknown() throws IOException {
    Assessment assessment = everything();

    Inspection barely =
        AssessmentJson.read(
                "assessment",
                "{\"element\":"
                    + COAT
                    + ",\"history\":[{\"event\":\"INSPECTED\",\"inspection\":"
                    + LEAST_INSPECTION
                    + "}]}")
            .orElseThrow()
            .history()
            .events(LookEvent.Inspected.class)
            .get(0)
            .inspection();
    assertThat(barely.gearClean()).isEqualTo(YesNoUnknown.UNKNOWN);
    assertThat(barely.atHand()).isEmpty();
    assertThat(barely.outcomes()).isEmpty();
    assertThat(assessment.findings().get(1).place()).isEmpty();
    assertThat(assessment.findings().get(1).extent()).isEqualTo(new Extent.NotMeasured());

    Assessment least =
        AssessmentJson.read("assessment", "{\"element\":" + COAT + "}").orElseThrow();
    assertThat(least.element().cbrnOption()).isEqualTo(YesNoUnknown.UNKNOWN);
    assertThat(least.element().inService()).isEqualTo(MarkedDate.unknown());
    assertThat(AssessmentJson.write(least)).isEqualTo("{\"element\":" + COAT + "}");
  }

  @Test
  void isWrittenInTheOrderOfTheContract() throws IOException {
    assertThat(AssessmentJson.write(everything()))
        .startsWith(
            "{\"element\":{\"id\":\"C-1\",\"kind\":\"COAT\",\"use\":\"STRUCTURAL\",\"label\":{},"
                + "\"layers\":{\"OUTER_SHELL\":{\"manufacturer\":\"The maker\",")
        .contains(
            "{\"event\":\"CHECKED\",\"on\":\"2020-03-04\",\"orderInDay\":2,\"check\":\"SEAM_PULL\","
                + "\"result\":\"PASSED\",\"by\":{\"name\":\"Provider\","
                + "\"kind\":\"VERIFIED_INDEPENDENT_SERVICE_PROVIDER\"},\"answers\":[\"F1\"],"
                + "\"conditions\":{\"DISTANCE\":{\"value\":\"40\",\"unit\":\"ft\"},")
        .endsWith(
            "{\"id\":\"F5\",\"site\":\"SEAM_MAJOR_A@OUTER_SHELL\","
                + "\"defect\":\"SEVERAL_STITCH_GAPS\",\"extent\":{\"count\":3},"
                + "\"seen\":\"2025\"}]}");
  }

  @Test
  void theSoundFileIsValidAgainstTheSchema() throws IOException {
    assertThat(TableSchemas.objections("assessment", text())).isEmpty();
  }

  /** Guards against an event that has no name in JSON. */
  @Test
  void everyEventIsInTheSoundFile() throws IOException {
    assertThat(everything().history().events().stream().map(Event::getClass))
        .containsExactlyInAnyOrderElementsOf(EventKinds.all());
  }

  @Test
  void aLabelWithoutDateOfManufactureIsNoFault() {
    String helmet =
        "{\"id\":\"H-1\",\"kind\":\"COAT\",\"use\":\"STRUCTURAL\",\"label\":{\"size\":\"M\"}}";
    Assessment assessment =
        AssessmentJson.read("assessment", "{\"element\":" + helmet + "}").orElseThrow();

    Verdict verdict =
        GearRules.of(InventedRules.rules()).assess(assessment, LocalDate.of(2025, 6, 1));

    assertThat(verdict.service()).isEqualTo(Service.OUT);
    assertThat(verdict.ages())
        .anySatisfy(age -> assertThat(age.answer()).isInstanceOf(AgeAnswer.DateUnknown.class));
    assertThat(VerdictJson.write(verdict))
        .contains("\"manufactured\":\"UNKNOWN\",\"answer\":\"DATE_UNKNOWN\",\"limitYears\":10");
  }

  @Test
  void aByteOrderMarkIsPassedOver() {
    assertThat(AssessmentJson.read("assessment", "\uFEFF{\"element\":" + COAT + "}"))
        .isInstanceOf(Checked.Sound.class);
  }

  @Test
  void aTextIsReadUpToItsLimitOnly() {
    String spaces = " ".repeat(16 * 1024 * 1024 - COAT.length() - 12);

    assertThat(AssessmentJson.read("assessment", "{\"element\":" + COAT + "}" + spaces))
        .isInstanceOf(Checked.Sound.class);
    assertThat(AssessmentJson.read("assessment", "{\"element\":" + COAT + "} " + spaces))
        .isEqualTo(
            new Checked.Refused<>(
                List.of(
                    new JsonFault(
                        FaultCode.UNREADABLE,
                        "assessment",
                        "",
                        "16777217 characters",
                        "at most 16777216 characters"))));
  }

  @Test
  void namesAreReadTheSameInEveryLanguage() {
    assertThat(Locale.getDefault().getLanguage()).as("see tests.jvm in the build").isEqualTo("tr");
    assertThat(AssessmentJson.read("assessment", "{\"element\":" + COAT + ",\"findings\":[]}"))
        .isInstanceOf(Checked.Sound.class);
  }

  @Test
  void nullIsMisuse() {
    assertThatThrownBy(() -> AssessmentJson.read("assessment", null)).hasMessage("json");
    assertThatThrownBy(() -> AssessmentJson.read(null, "{}")).hasMessage("sourceName");
    assertThatThrownBy(() -> AssessmentJson.write(null)).hasMessage("assessment");
    assertThatThrownBy(() -> VerdictJson.write(null)).hasMessage("verdict");
  }
}
