package org.ensemblerules.gates;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.List;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.GenerationMode;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.lifecycle.AfterContainer;

/** That the factor is applied, in this module too: counted, not asked. */
class TriesFactorTest {
  private static int plain;
  private static int needing;
  private static int all;

  @Property(tries = 300, edgeCases = EdgeCasesMode.NONE)
  void plain(@ForAll int any) {
    plain++;
  }

  @Property(tries = 300, edgeCases = EdgeCasesMode.NONE)
  @FewestTries(200)
  void needing(@ForAll int any) {
    needing++;
  }

  @Property(tries = 300, generation = GenerationMode.EXHAUSTIVE)
  void all(@ForAll @IntRange(min = 1, max = 50) int each) {
    all++;
  }

  @AfterContainer
  static void triedAsOftenAsTheFactorSays() {
    String factor = System.getProperty(TriesFactor.FACTOR);
    assertThat(plain).isEqualTo(TriesFactor.scaled(300, factor, 10));
    assertThat(needing).isEqualTo(TriesFactor.scaled(300, factor, 200));
    assertThat(all).isEqualTo(50);
  }

  @Example
  void multiplies() {
    assertThat(TriesFactor.scaled(1000, null, 10)).isEqualTo(1000);
    assertThat(TriesFactor.scaled(1000, "", 10)).isEqualTo(1000);
    assertThat(TriesFactor.scaled(1000, "1", 10)).isEqualTo(1000);
    assertThat(TriesFactor.scaled(1000, "0.05", 10)).isEqualTo(50);
    assertThat(TriesFactor.scaled(1001, "0.05", 10)).isEqualTo(51);
    assertThat(TriesFactor.scaled(1000, "3", 10)).isEqualTo(3000);
  }

  @Example
  void keepsWhatIsNeeded() {
    assertThat(TriesFactor.scaled(1000, "0.001", 200)).isEqualTo(200);
    assertThat(TriesFactor.scaled(50, "0.001", 200)).isEqualTo(50);
    assertThat(TriesFactor.scaled(50, "2", 200)).isEqualTo(100);
  }

  @Example
  void refusesWhatIsNoFactor() {
    for (String factor : List.of("0", "-1", "half", " ")) {
      assertThatIllegalArgumentException()
          .isThrownBy(() -> TriesFactor.scaled(1000, factor, 10))
          .withMessage(
              "system property tests.tries.factor: \"%s\", allowed: a decimal above 0", factor);
    }
  }
}
