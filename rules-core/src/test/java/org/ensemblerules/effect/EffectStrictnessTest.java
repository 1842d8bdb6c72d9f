package org.ensemblerules.effect;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Which effects ask for at least as much as others. */
class EffectStrictnessTest {
  @Test
  void effectsAreOnlyPartlyInOrder() {
    Effect basic = new Effect.Repair(RepairClass.BASIC, Scope.PART);
    Effect advanced = new Effect.Repair(RepairClass.ADVANCED, Scope.PART);
    Effect look = new Effect.Evaluate(Check.EXPERT_EVALUATION, Scope.ELEMENT);
    Effect retire = new Effect.Retire(Scope.ELEMENT);
    Effect layer = new Effect.Retire(Scope.LAYER);
    assertThat(advanced.isAtLeastAsStrictAs(basic)).isTrue();
    assertThat(basic.isAtLeastAsStrictAs(advanced)).isFalse();
    assertThat(look.isAtLeastAsStrictAs(basic)).isFalse();
    assertThat(basic.isAtLeastAsStrictAs(look)).isFalse();
    assertThat(basic.isAtLeastAsStrictAs(new Effect.Note())).isTrue();
    assertThat(new Effect.Note().isAtLeastAsStrictAs(basic)).isFalse();
    assertThat(List.of(basic, advanced, look, layer)).allMatch(retire::isAtLeastAsStrictAs);
    assertThat(layer.isAtLeastAsStrictAs(look)).isFalse();
    assertThat(layer.isAtLeastAsStrictAs(advanced)).isTrue();
    assertThat(new Effect.ReplacePart(RepairClass.BASIC).isAtLeastAsStrictAs(basic)).isTrue();
    assertThat(List.of(basic, advanced, look, layer, retire))
        .allMatch(effect -> effect.isAtLeastAsStrictAs(effect));
  }
}
