package org.ensemblerules.retirement;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.gear.YesNoUnknown;
import org.ensemblerules.history.Moment;
import org.ensemblerules.testkit.FrozenProvenance;
import org.junit.jupiter.api.Test;

/** What a record of custody lacks, on a frozen table that asks for every step. */
class CustodyTableTest {
  private static final LocalDate AS_OF = LocalDate.of(2026, 6, 30);
  private static final CustodyTable TABLE =
      CustodyTable.of(
              Arrays.stream(CustodyStep.values())
                  .map(step -> new CustodyStepRow(FrozenProvenance.of(step), step))
                  .toList())
          .orElseThrow();

  private static Moment on(String date) {
    return Moment.on(MarkedDate.parse(date));
  }

  private static CustodyRecord.Deed deed(String on) {
    return new CustodyRecord.Deed(MarkedDate.parse(on), "Examiner");
  }

  private static CustodyRecordBuilder whole() {
    return CustodyRecord.builder(on("2026-03-01"))
        .leftAsFound(YesNoUnknown.YES)
        .leftUncleaned(YesNoUnknown.YES)
        .storedProtected(YesNoUnknown.YES)
        .accessLimited(YesNoUnknown.YES)
        .custodian("Officer 1")
        .handover(new Handover(on("2026-03-01"), "Officer 1", "Evidence room"))
        .handover(new Handover(on("2026-04-02"), "Evidence room", "Laboratory"))
        .photographed(deed("2026-03-01"))
        .examined(deed("2026-04-05"))
        .released(deed("2026-06-01"));
  }

  private static List<String> missing(CustodyStep step, CustodyRecordBuilder custody) {
    CustodyAnswer answer = TABLE.check(custody.build(), AS_OF).get(step);
    return answer instanceof CustodyAnswer.Missing missing ? missing.what() : List.of();
  }

  @Test
  void aWholeRecordShowsEveryStep() {
    Map<CustodyStep, CustodyAnswer> answers = TABLE.check(whole().build(), AS_OF);
    assertThat(answers.keySet()).containsExactly(CustodyStep.values());
    assertThat(answers.values()).allMatch(CustodyAnswer.Shown.class::isInstance);
  }

  @Test
  void anEmptyRecordShowsNone() {
    Map<CustodyStep, CustodyAnswer> answers =
        TABLE.check(CustodyRecord.builder(on("UNKNOWN")).build(), AS_OF);
    assertThat(answers.get(CustodyStep.RECORDED_RELEASE))
        .isInstanceOf(CustodyAnswer.StillHeld.class);
    answers.forEach(
        (step, answer) -> {
          if (step != CustodyStep.RECORDED_RELEASE) {
            assertThat(answer).as("%s", step).isInstanceOf(CustodyAnswer.Missing.class);
          }
        });
  }

  @Test
  void noAndUnknownAreBothMissing() {
    assertThat(missing(CustodyStep.NOT_CLEANED, whole().leftUncleaned(YesNoUnknown.NO)))
        .containsExactly("it was not left uncleaned");
    assertThat(missing(CustodyStep.NOT_CLEANED, whole().leftUncleaned(YesNoUnknown.UNKNOWN)))
        .containsExactly("whether it was left uncleaned");
  }

  @Test
  void aGapInTheChainIsNamed() {
    assertThat(
            missing(
                CustodyStep.CHAIN_OF_CUSTODY,
                whole().handover(new Handover(on("2026-05-01"), "Evidence room", "Officer 2"))))
        .containsExactly("handed over 2026-05-01 by Evidence room to Officer 2: Laboratory had it");
  }

  @Test
  void aHandoverWithoutADateOrBeforeItWasTakenBreaksTheChain() {
    assertThat(
            missing(
                CustodyStep.CHAIN_OF_CUSTODY,
                CustodyRecord.builder(on("2026-03-01"))
                    .custodian("Officer 1")
                    .handover(new Handover(on("UNKNOWN"), "Officer 1", "Laboratory"))))
        .hasSize(1);
    assertThat(
            missing(
                CustodyStep.CHAIN_OF_CUSTODY,
                CustodyRecord.builder(on("2026-03-01"))
                    .custodian("Officer 1")
                    .handover(new Handover(on("2026-02-28"), "Officer 1", "Laboratory"))))
        .containsExactly(
            "handed over 2026-02-28 by Officer 1 to Laboratory: not certainly after 2026-03-01");
  }

  @Test
  void theOrderInWhichHandoversAreGivenDoesNotMatter() {
    CustodyRecordBuilder back =
        CustodyRecord.builder(on("2026-03-01"))
            .custodian("Officer 1")
            .handover(new Handover(on("2026-04-02"), "Evidence room", "Laboratory"))
            .handover(new Handover(on("2026-03-01"), "Officer 1", "Evidence room"));
    assertThat(missing(CustodyStep.CHAIN_OF_CUSTODY, back)).isEmpty();
  }

  @Test
  void whatComesLaterOrHasNoDateDoesNotCountYet() {
    assertThat(
            missing(
                CustodyStep.EXPERT_EXAMINATION,
                CustodyRecord.builder(on("2026-03-01")).examined(deed("UNKNOWN"))))
        .hasSize(1);
    assertThat(missing(CustodyStep.RECORDED_RELEASE, whole().released(deed("2026-07-01"))))
        .containsExactly("a release that certainly came by 2026-06-30");
    assertThat(missing(CustodyStep.RECORDED_RELEASE, whole().released(deed("2026")))).hasSize(1);
  }

  @Test
  void withoutRowsThereIsNoAnswer() {
    assertThat(CustodyTable.of(List.of()).orElseThrow().check(whole().build(), AS_OF)).isEmpty();
  }
}
