package org.ensemblerules.assess;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.reflect.RecordComponent;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.ensemblerules.effect.Credential;
import org.ensemblerules.effect.CredentialScope;
import org.ensemblerules.effect.Doer;
import org.ensemblerules.effect.EntityKind;
import org.ensemblerules.effect.Vouched;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.history.LookEvent;
import org.ensemblerules.inspection.Inspection;
import org.ensemblerules.inspection.InspectionKind;
import org.ensemblerules.testkit.EventKinds;
import org.ensemblerules.testkit.FitGear;
import org.ensemblerules.testkit.GearCase;
import org.ensemblerules.verdict.Caution;
import org.ensemblerules.verdict.Reason;
import org.ensemblerules.verdict.Service;
import org.ensemblerules.verdict.Verdict;
import org.junit.jupiter.api.Test;

/** What a verdict says of credentials that rest on the word of the organization. */
class VouchedVerdictsTest {
  private static Doer vouched(LocalDate on) {
    return new Doer(
        "A. Sample",
        EntityKind.MEMBER,
        Arrays.stream(CredentialScope.values())
            .map(
                scope ->
                    new Credential(
                        scope,
                        LocalDate.of(2020, 1, 1),
                        LocalDate.of(2030, 12, 31),
                        Optional.of(new Vouched("Chief C. Sample", on))))
            .toList());
  }

  /** A fit helmet whose last advanced inspection somebody made. */
  private static GearCase inspectedBy(Doer doer) {
    GearCase fit = FitGear.fit(ElementKind.HELMET);
    List<Inspection> made =
        List.of(
            FitGear.inspection(
                    InspectionKind.ADVANCED,
                    ElementKind.HELMET,
                    MarkedDate.of(FitGear.LAST_ADVANCED),
                    doer)
                .build());
    return fit.neverInspected().inspectedBy(made);
  }

  @Test
  void countsAndSaysOnWhoseWord() {
    LocalDate stated = LocalDate.of(2024, 2, 1);
    Verdict verdict = inspectedBy(vouched(stated)).verdict();
    assertThat(verdict.service()).isEqualTo(Service.IN);
    assertThat(verdict.cautions())
        .map(Caution::text)
        .containsOnlyOnce(
            "A. Sample is trained for ADVANCED_INSPECTION on the word of the organization alone:"
                + " Chief C. Sample, 2024-02-01.");
  }

  @Test
  void leftOutItDoesNotCount() {
    Verdict verdict = inspectedBy(new Doer("A. Sample", EntityKind.MEMBER, List.of())).verdict();
    assertThat(verdict.service()).isEqualTo(Service.OUT);
    assertThat(verdict.cautions()).noneMatch(each -> each.text().contains("word of"));
  }

  @Test
  void aWordOfDaysToComeContradictsTheRecord() {
    LocalDate tomorrow = FitGear.AS_OF.plusDays(1);
    Verdict verdict = inspectedBy(vouched(tomorrow)).verdict();
    assertThat(verdict.service()).isEqualTo(Service.OUT);
    assertThat(verdict.reasons())
        .map(Reason::seen)
        .contains(
            "doer A. Sample, vouched for: found Chief C. Sample, "
                + tomorrow
                + ", allowed: a date not after "
                + FitGear.AS_OF);
  }

  /** Whoever asks a history for its doers hears of each event that has one. */
  @Test
  void everyEventWithADoerSaysSo() throws NoSuchMethodException {
    List<Class<?>> silent = new ArrayList<>();
    for (Class<?> kind : EventKinds.all()) {
      boolean has =
          kind == LookEvent.Inspected.class
              || Arrays.stream(kind.getRecordComponents())
                  .map(RecordComponent::getType)
                  .anyMatch(Doer.class::equals);
      boolean says = kind.getMethod("doer").getDeclaringClass() == kind;
      if (has != says) {
        silent.add(kind);
      }
    }
    assertThat(silent).isEmpty();
  }
}
