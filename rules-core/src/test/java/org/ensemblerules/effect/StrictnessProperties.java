package org.ensemblerules.effect;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.GenerationMode;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.Tag;
import org.ensemblerules.testkit.Effects;

/** The order of effects is a partial order, for every effect there is. */
class StrictnessProperties {
  private static final List<Effect> ALL = Effects.all();

  @Provide
  Arbitrary<Effect> effects() {
    return Arbitraries.of(ALL);
  }

  private static boolean less(Effect one, Effect other) {
    return one.against(other).isLess();
  }

  private static boolean covers(Effect one, Effect other) {
    return one.against(other).covers();
  }

  @Property(tries = 2_000, generation = GenerationMode.EXHAUSTIVE)
  void eachIsTheOtherSeenFromTheOtherSide(
      @ForAll("effects") Effect one, @ForAll("effects") Effect other) {
    Strictness strictness = one.against(other);
    assertThat(other.against(one)).isEqualTo(strictness.seenFromTheOther());
    assertThat(strictness == Strictness.SAME).isEqualTo(one.equals(other));
    assertThat(strictness.covers() && strictness.isLess()).isFalse();
    assertThat(covers(one, other) && covers(other, one)).isEqualTo(one.equals(other));
    assertThat(less(one, other) && less(other, one)).isFalse();
    assertThat(one.compareStrictness(other).isAtLeastAsStrict()).isEqualTo(strictness.covers());
  }

  @Property(tries = 40_000, generation = GenerationMode.EXHAUSTIVE)
  @Tag("slow")
  void itPassesOn(
      @ForAll("effects") Effect one,
      @ForAll("effects") Effect two,
      @ForAll("effects") Effect three) {
    if (covers(one, two) && covers(two, three)) {
      assertThat(covers(one, three)).isTrue();
    }
    if (less(one, two) && less(two, three)) {
      assertThat(less(one, three)).isTrue();
    }
  }

  @Property(tries = 2_000, generation = GenerationMode.EXHAUSTIVE)
  void moreOfTheElementIsNeverLess(@ForAll("effects") Effect one, @ForAll("effects") Effect other) {
    Effects.wider(one)
        .ifPresent(
            wider -> {
              assertThat(wider.against(one)).isEqualTo(Strictness.COVERING);
              if (covers(one, other)) {
                assertThat(covers(wider, other)).isTrue();
              }
              if (!less(one, other)) {
                assertThat(less(wider, other)).isFalse();
              }
            });
  }

  @Property(tries = 2_000, generation = GenerationMode.EXHAUSTIVE)
  void aNoteAsksForLeastAndRetiringTheElementForMost(@ForAll("effects") Effect each) {
    Effect note = new Effect.Note();
    Effect retire = new Effect.Retire(Scope.ELEMENT);
    assertThat(covers(each, note)).isTrue();
    assertThat(covers(retire, each)).isTrue();
    assertThat(less(note, each)).isEqualTo(!each.equals(note));
    assertThat(less(each, retire)).isEqualTo(!each.equals(retire));
  }
}
