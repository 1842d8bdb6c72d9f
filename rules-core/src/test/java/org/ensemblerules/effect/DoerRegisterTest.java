package org.ensemblerules.effect;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.util.List;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.source.InvalidValueException;
import org.ensemblerules.testkit.FitGear;
import org.ensemblerules.testkit.FrozenRules;
import org.ensemblerules.testkit.People;
import org.junit.jupiter.api.Test;

class DoerRegisterTest {
  private static final LocalDate DAY = LocalDate.of(2024, 6, 15);
  private static final Doer WEARER = new Doer("A. Sample", EntityKind.MEMBER, List.of());

  @Test
  void knowsEachByTheName() {
    DoerRegister register = DoerRegister.of(List.of(People.DEPARTMENT, WEARER, WEARER));
    assertThat(register.doers()).containsExactly(People.DEPARTMENT, WEARER);
    assertThat(register.doer("A. Sample")).isEqualTo(WEARER);
    assertThat(register.find("B. Sample")).isEmpty();
    assertThat(register.doer("B. Sample")).isEqualTo(Doer.unregistered("B. Sample"));
    assertThat(register).isEqualTo(DoerRegister.of(List.of(WEARER, People.DEPARTMENT)));
    assertThat(register).isNotEqualTo(DoerRegister.empty());
  }

  /** Whoever may look a coat over as its wearer, may not if nobody says who that is. */
  @Test
  void whoIsNotRegisteredMayDoNothing() {
    PermissionTable permissions = FrozenRules.tables().permissions();
    for (Task task : Task.values()) {
      assertThat(
              permissions.mayPerform(
                  Doer.unregistered("A. Sample"),
                  task,
                  FitGear.element(ElementKind.COAT).build(),
                  DAY))
          .isEqualTo(new Permission.NotRegistered("A. Sample"));
    }
    assertThat(
            permissions
                .mayPerform(
                    WEARER, Task.ROUTINE_INSPECTION, FitGear.element(ElementKind.COAT).build(), DAY)
                .granted())
        .isTrue();
  }

  @Test
  void twoRegistersThatDisagreeAreNotJoined() {
    Doer other = new Doer("A. Sample", EntityKind.ORGANIZATION, List.of());
    DoerRegister one = DoerRegister.of(List.of(WEARER));
    DoerRegister two = DoerRegister.of(List.of(other, People.DEPARTMENT));
    assertThat(one.disagreements(two)).containsExactly("A. Sample");
    assertThat(one.disagreements(one)).isEmpty();
    assertThat(one.with(DoerRegister.of(List.of(People.DEPARTMENT))).doers())
        .containsExactly(WEARER, People.DEPARTMENT);
    assertThatThrownBy(() -> one.with(two))
        .isInstanceOf(InvalidValueException.class)
        .hasMessage(
            "DoerRegister.doers: given \"A. Sample\", allowed: each name once, or again with the"
                + " same particulars");
  }

  @Test
  void onlyAMemberWithoutCredentialsIsNotRegistered() {
    assertThatThrownBy(() -> new Doer("X", EntityKind.ORGANIZATION, List.of(), false))
        .isInstanceOf(InvalidValueException.class)
        .hasMessageContaining("Doer.registered: given false");
    assertThatThrownBy(() -> DoerRegister.of(List.of(Doer.unregistered("X"))))
        .isInstanceOf(InvalidValueException.class)
        .hasMessageContaining("a doer who is registered");
  }
}
