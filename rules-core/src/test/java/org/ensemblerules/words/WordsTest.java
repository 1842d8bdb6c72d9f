package org.ensemblerules.words;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.ensemblerules.gear.Use;
import org.ensemblerules.source.InvalidValueException;
import org.ensemblerules.verdict.Service;
import org.junit.jupiter.api.Test;

/** Words of some sets, and of several put together. */
class WordsTest {
  private static Map<Enum<?>, Term> terms(CodeSet set) {
    Map<Enum<?>, Term> terms = new HashMap<>();
    set.codes()
        .forEach(
            code ->
                terms.put(code, new Term("is " + code.ordinal(), "It is one.", Optional.empty())));
    return terms;
  }

  private static Words of(String language, CodeSet set) {
    return Words.of(language, List.of(set), terms(set));
  }

  private final Words uses = of("en", GearCodeSet.USE);
  private final Words services = of("en", GearCodeSet.SERVICE);

  @Test
  void oneValueHasTheWordsOfBoth() {
    Words both = uses.and(services);
    assertThat(both.sets()).containsExactly(GearCodeSet.USE, GearCodeSet.SERVICE);
    assertThat(both.label(Use.PROXIMITY)).isEqualTo(uses.label(Use.PROXIMITY));
    assertThat(both.label(Service.OUT)).isEqualTo(services.label(Service.OUT));
    assertThat(both.spelledOut("PROXIMITY")).isEqualTo(uses.label(Use.PROXIMITY));
  }

  @Test
  void aSetIsNotAddedTwiceNorInAnotherLanguage() {
    assertThatThrownBy(() -> uses.and(uses))
        .isInstanceOf(InvalidValueException.class)
        .hasMessageContaining("STRUCTURAL");
    Words others = of("de", GearCodeSet.SERVICE);
    assertThatThrownBy(() -> uses.and(others))
        .isInstanceOf(InvalidValueException.class)
        .hasMessageContaining("de");
  }

  @Test
  void eachCodeOfASetHasATermAndNoOther() {
    Map<Enum<?>, Term> terms = terms(GearCodeSet.USE);
    terms.remove(Use.PROXIMITY);
    assertThatThrownBy(() -> Words.of("en", List.of(GearCodeSet.USE), terms))
        .isInstanceOf(InvalidValueException.class)
        .hasMessageContaining("no term of use PROXIMITY");
    terms.putAll(terms(GearCodeSet.USE));
    terms.putAll(terms(GearCodeSet.SERVICE));
    assertThatThrownBy(() -> Words.of("en", List.of(GearCodeSet.USE), terms))
        .isInstanceOf(InvalidValueException.class)
        .hasMessageContaining("OUT");
    assertThatThrownBy(() -> uses.label(Service.OUT)).isInstanceOf(InvalidValueException.class);
  }

  @Test
  void sentencesNeedTheWordsOfEveryCodeOfGear() {
    assertThatThrownBy(() -> new Sentences(uses.and(services)))
        .isInstanceOf(InvalidValueException.class)
        .hasMessageContaining("words for every code of gear");
  }
}
