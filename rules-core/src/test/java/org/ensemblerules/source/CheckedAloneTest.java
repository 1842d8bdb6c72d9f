package org.ensemblerules.source;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.ensemblerules.care.WashMeasure;
import org.ensemblerules.care.WashRecord;
import org.ensemblerules.defect.DefectKind;
import org.ensemblerules.defect.Extent;
import org.ensemblerules.defect.Finding;
import org.ensemblerules.defect.FindingId;
import org.ensemblerules.effect.Doer;
import org.ensemblerules.effect.EntityKind;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.GearModel;
import org.ensemblerules.gear.Label;
import org.ensemblerules.gear.LayerKind;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.gear.Part;
import org.ensemblerules.gear.Site;
import org.ensemblerules.gear.Use;
import org.ensemblerules.history.DecisionEvent;
import org.ensemblerules.history.EndEvent;
import org.ensemblerules.history.Event;
import org.ensemblerules.history.Moment;
import org.ensemblerules.history.UseEvent;
import org.ensemblerules.measure.Quantity;
import org.ensemblerules.measure.Unit;
import org.ensemblerules.record.PfasContent;
import org.ensemblerules.record.PfasNotice;
import org.ensemblerules.record.PlaceCode;
import org.ensemblerules.record.RecordDetail;
import org.ensemblerules.record.RecordItem;
import org.ensemblerules.record.RecordNote;
import org.ensemblerules.retirement.CustodyRecord;
import org.ensemblerules.retirement.Handover;
import org.ensemblerules.strength.Direction;
import org.ensemblerules.strength.Property;
import org.ensemblerules.strength.Specimen;
import org.ensemblerules.strength.TestMethod;
import org.ensemblerules.strength.TestReport;
import org.ensemblerules.strength.TestReportBuilder;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** A value is refused alone as it is within what it belongs to, in the same words. */
class CheckedAloneTest {
  private static final Moment WHEN = Moment.on(MarkedDate.unknown());

  /**
   * A text that can be checked alone.
   *
   * @param field what it is called in refusals
   * @param longest how many characters it may have
   */
  record Text(String field, int longest, UnaryOperator<String> alone, Consumer<String> within) {
    void refuses(String text) {
      InvalidValueException refused = refused(() -> assertThat(alone.apply(text)).isNull());
      assertThat(refused.field()).isEqualTo(field);
      assertThat(refused).hasMessage(refused(() -> within.accept(text)).getMessage());
    }

    @Override
    public String toString() {
      return field;
    }
  }

  static Stream<Text> texts() {
    Quantity read = Quantity.of("1", Unit.NEWTON);
    return Stream.of(
        new Text(
            "Specimen.id",
            40,
            Specimen::requireId,
            id -> Specimen.of(id, Direction.UNDIRECTED, read)),
        new Text(
            "Specimen.fault",
            200,
            Specimen::requireFault,
            fault -> Specimen.of("1", Direction.UNDIRECTED, read).withFault(fault)),
        new Text(
            "TestReport.laboratory",
            200,
            TestReport::requireLaboratory,
            name -> report().laboratory(name)),
        new Text(
            "Doer.name",
            200,
            Doer::requireName,
            name -> new Doer(name, EntityKind.MEMBER, List.of())),
        new Text("Finding.place", 300, Finding::requirePlace, CheckedAloneTest::finding),
        new Text(
            "RecordNote.text",
            500,
            RecordNote::requireText,
            text -> new RecordNote(RecordItem.REPAIRS, WHEN, RecordDetail.DESCRIPTION, text)),
        new Text("PfasNotice.reason", 500, PfasNotice::requireReason, CheckedAloneTest::notice),
        new Text(
            "Deed.by",
            200,
            name -> CustodyRecord.requireName("Deed.by", name),
            name -> new CustodyRecord.Deed(MarkedDate.unknown(), name)),
        new Text(
            "Handover.to",
            200,
            name -> CustodyRecord.requireName("Handover.to", name),
            name -> new Handover(WHEN, "A", name)),
        new Text(
            "CustodyRecord.custodian",
            200,
            name -> CustodyRecord.requireName("CustodyRecord.custodian", name),
            name -> CustodyRecord.builder(WHEN).custodian(name)),
        new Text(
            "GearModel.model",
            200,
            name -> GearModel.requireName("GearModel.model", name),
            name -> new GearModel("A", name)),
        new Text(
            "Label.identification",
            200,
            text -> Label.requireIdentification("Label.identification", text),
            text -> Label.builder().identification(text)),
        new Text(
            "LayerRetired.identification",
            200,
            text -> Label.requireIdentification("LayerRetired.identification", text),
            text ->
                new EndEvent.LayerRetired(WHEN, LayerKind.OUTER_SHELL, Optional.of(text), "worn")),
        new Text(
            "Issued.holder",
            200,
            name -> Event.requireName("Issued.holder", name),
            name -> new UseEvent.Issued(WHEN, name)),
        new Text(
            "AuthorityDecided.authority",
            200,
            name -> Event.requireName("AuthorityDecided.authority", name),
            name -> new DecisionEvent.AuthorityDecided(WHEN, name, "kept", "so found")),
        new Text(
            "TakenOut.why",
            300,
            words -> Event.requireWords("TakenOut.why", words),
            words -> new UseEvent.TakenOut(WHEN, words)));
  }

  private static Finding finding(String place) {
    return new Finding(
        new FindingId("f"),
        Site.of(Part.WHOLE_ELEMENT),
        place,
        DefectKind.SOILING,
        new Extent.NotMeasured(),
        MarkedDate.unknown());
  }

  private static PfasNotice notice(String reason) {
    return new PfasNotice(
        new PlaceCode("US-CA"),
        MarkedDate.unknown(),
        PfasContent.UNKNOWN,
        Optional.of(reason),
        MarkedDate.unknown());
  }

  private static TestReportBuilder report() {
    return TestReport.builder(
        ElementKind.COAT,
        Use.STRUCTURAL,
        Site.of(Part.WHOLE_ELEMENT),
        Property.BREAKING_STRENGTH,
        new TestMethod("ANY"));
  }

  @ParameterizedTest
  @MethodSource("texts")
  void aTextIsRefusedAloneAsWithin(Text text) {
    String longest = "A".repeat(text.longest());
    assertThat(text.alone().apply(longest)).isSameAs(longest);
    text.within().accept(longest);
    text.refuses(longest + "A");
    text.refuses(" ");
    text.refuses("A\nB");
  }

  @Test
  void onlyThePlaceOfAFindingMayBeEmpty() {
    assertThat(Finding.requirePlace("")).isEmpty();
    texts().filter(text -> !text.field().equals("Finding.place")).forEach(each -> each.refuses(""));
  }

  @Test
  void aTemperatureIsNotBelowAbsoluteZero() {
    Quantity zero = Quantity.of("0", Unit.KELVIN);
    Quantity below = Quantity.of("-0.1", Unit.KELVIN);
    Quantity length = Quantity.of("1", Unit.INCH);
    WashMeasure water = WashMeasure.WATER_TEMPERATURE;
    WashMeasure drying = WashMeasure.DRYING_TEMPERATURE;
    assertThat(WashRecord.requireTemperature(water, zero)).isSameAs(zero);
    for (Quantity impossible : List.of(below, length)) {
      assertThat(refused(() -> WashRecord.requireTemperature(water, impossible)))
          .hasMessageStartingWith("WashRecord.WATER_TEMPERATURE: ")
          .hasMessage(
              refused(() -> WashRecord.builder().waterTemperature(impossible)).getMessage());
      assertThat(refused(() -> WashRecord.requireTemperature(drying, impossible)))
          .hasMessageStartingWith("WashRecord.DRYING_TEMPERATURE: ")
          .hasMessage(
              refused(() -> WashRecord.builder().dryingTemperature(impossible)).getMessage());
    }
  }

  @Test
  void phIsFromZeroToFourteenAndNotTooFine() {
    for (String possible : List.of("0", "7.4", "14")) {
      BigDecimal value = new BigDecimal(possible);
      assertThat(WashRecord.requireDetergentPh(value)).isSameAs(value);
    }
    for (String impossible : List.of("-0.1", "14.1", "1e-30")) {
      BigDecimal value = new BigDecimal(impossible);
      assertThat(refused(() -> WashRecord.requireDetergentPh(value)))
          .hasMessageStartingWith("WashRecord.DETERGENT_PH: ")
          .hasMessage(refused(() -> WashRecord.builder().detergentPh(value)).getMessage());
    }
  }

  @Test
  void theStrengthOfAFabricIsAForceAboveZero() {
    Quantity force = Quantity.of("0.1", Unit.NEWTON);
    assertThat(TestReport.requireFabricStrength(force)).isSameAs(force);
    for (Quantity impossible :
        List.of(Quantity.of("0", Unit.NEWTON), Quantity.of("1", Unit.INCH))) {
      assertThat(refused(() -> TestReport.requireFabricStrength(impossible)))
          .hasMessageStartingWith("TestReport.fabricStrength: ")
          .hasMessage(refused(() -> report().fabricStrength(impossible)).getMessage());
    }
  }

  private static InvalidValueException refused(Runnable check) {
    return catchThrowableOfType(InvalidValueException.class, check::run);
  }
}
