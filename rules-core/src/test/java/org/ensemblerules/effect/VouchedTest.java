package org.ensemblerules.effect;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.ensemblerules.gear.Element;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.source.InvalidValueException;
import org.ensemblerules.testkit.FitGear;
import org.ensemblerules.testkit.FrozenRules;
import org.junit.jupiter.api.Test;

class VouchedTest {
  private static final LocalDate FROM = LocalDate.of(2024, 1, 1);
  private static final LocalDate THROUGH = LocalDate.of(2024, 12, 31);
  private static final Vouched WORD = new Vouched("Chief C. Sample", LocalDate.of(2024, 2, 1));
  private static final Element COAT = FitGear.element(ElementKind.COAT).build();

  private static Credential vouched(LocalDate from, LocalDate through) {
    return new Credential(CredentialScope.INSPECT, from, through, Optional.of(WORD));
  }

  private static Permission inspects(MarkedDate on, Credential... credentials) {
    return FrozenRules.tables()
        .permissions()
        .mayPerform(
            new Doer("A. Sample", EntityKind.MEMBER, List.of(credentials)),
            Task.ADVANCED_INSPECTION,
            COAT,
            on);
  }

  private static Optional<Vouched> word(Permission permission) {
    assertThat(permission.granted()).isTrue();
    return ((Permission.Permitted) permission).word();
  }

  @Test
  void isTakenAsSaidAndNamed() {
    Permission permission =
        inspects(MarkedDate.of(LocalDate.of(2024, 6, 1)), vouched(FROM, THROUGH));
    assertThat(word(permission)).contains(WORD);
    assertThat(permission.text())
        .isEqualTo("may do it, by the word of Chief C. Sample, 2024-02-01");
  }

  @Test
  void whatIsOnRecordStandsBeforeIt() {
    Credential onRecord = new Credential(CredentialScope.INSPECT, FROM, THROUGH);
    MarkedDate day = MarkedDate.of(LocalDate.of(2024, 6, 1));
    assertThat(word(inspects(day, vouched(FROM, THROUGH), onRecord))).isEmpty();
    assertThat(word(inspects(day, onRecord))).isEmpty();
  }

  /**
   * A month that is covered in part by a training on record and in part by a word rests on both.
   */
  @Test
  void aMonthThatNeedsItInPartNamesIt() {
    LocalDate middle = LocalDate.of(2024, 6, 15);
    assertThat(
            word(
                inspects(
                    MarkedDate.parse("2024-06"),
                    new Credential(CredentialScope.INSPECT, FROM, middle),
                    vouched(middle.plusDays(1), THROUGH))))
        .contains(WORD);
  }

  @Test
  void endsWithItsLastDay() {
    assertThat(inspects(MarkedDate.of(THROUGH.plusDays(1)), vouched(FROM, THROUGH)))
        .isEqualTo(new Permission.ExpiredCredential(CredentialScope.INSPECT, THROUGH));
    assertThat(inspects(MarkedDate.of(THROUGH)).granted()).isFalse();
  }

  /**
   * Others are verified by somebody who is not asked here; the organization can't speak for them.
   */
  @Test
  void isOnlyForItsOwnPeople() {
    for (EntityKind kind : EntityKind.values()) {
      if (kind == EntityKind.MEMBER || kind == EntityKind.ORGANIZATION) {
        assertThat(new Doer("A", kind, List.of(vouched(FROM, THROUGH))).credentials()).hasSize(1);
      } else {
        assertThatThrownBy(() -> new Doer("A", kind, List.of(vouched(FROM, THROUGH))))
            .isInstanceOf(InvalidValueException.class)
            .hasMessageContaining("Doer.credentials: given " + '"' + kind + " vouched for");
      }
    }
  }

  @Test
  void isByANamedSpeaker() {
    assertThatThrownBy(() -> new Vouched(" ", FROM)).isInstanceOf(InvalidValueException.class);
    assertThatThrownBy(() -> new Vouched("A", LocalDate.of(1899, 12, 31)))
        .isInstanceOf(InvalidValueException.class)
        .hasMessageContaining("Vouched.on: given 1899-12-31");
  }
}
