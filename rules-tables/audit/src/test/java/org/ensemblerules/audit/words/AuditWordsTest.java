package org.ensemblerules.audit.words;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaModifier;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.ensemblerules.audit.difference.FleetEffect;
import org.ensemblerules.gates.MainClasses;
import org.ensemblerules.tables.ShippedWords;
import org.ensemblerules.tables.TableSchemas;
import org.ensemblerules.tables.WordsJson;
import org.ensemblerules.words.Term;
import org.ensemblerules.words.Words;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class AuditWordsTest {
  private static final Words ENGLISH = AuditWords.english();

  /** A kind of flaw is said by the sentences of the flaw itself. */
  private static final Set<String> NOT_FOR_PEOPLE = Set.of("AuditCodeSet", "FlawKind");

  @Test
  void eachEnumerationThatPeopleMeetIsASet() {
    Set<String> sets =
        Arrays.stream(AuditCodeSet.values())
            .map(set -> set.codes().get(0).getDeclaringClass().getSimpleName())
            .collect(Collectors.toSet());
    Set<String> enums =
        MainClasses.all().stream()
            .filter(type -> type.isEnum() && type.isTopLevelClass())
            .filter(type -> type.getModifiers().contains(JavaModifier.PUBLIC))
            .map(JavaClass::getSimpleName)
            .filter(name -> !NOT_FOR_PEOPLE.contains(name))
            .collect(Collectors.toSet());
    assertThat(sets).isEqualTo(enums);
  }

  @ParameterizedTest
  @EnumSource(AuditCodeSet.class)
  void eachCodeHasWordsThatReadLikeWords(AuditCodeSet set) {
    Set<String> labels = new HashSet<>();
    for (Enum<?> code : set.codes()) {
      Term term = ENGLISH.term(code);
      assertThat(term.label()).doesNotContain("_").doesNotEndWith(".").doesNotMatch("[A-Z]{2,}");
      assertThat(labels.add(term.label())).as(set + " says it twice: " + term.label()).isTrue();
      assertThat(term.sentence()).matches("[A-Z].*\\.").doesNotContain("_", "{", "  ");
      assertThat(set.code(code.name())).hasValue(code);
    }
  }

  @Test
  void theWordsOfGearStandBesideThem() {
    assertThat(ENGLISH.language()).isEqualTo(ShippedWords.english().language());
    assertThat(ENGLISH.sets()).containsAll(ShippedWords.english().sets());
    assertThat(ENGLISH.spelledOut("HELMET, OUT_SOONER")).isEqualTo("helmet, out sooner");
  }

  @Test
  void theSchemaAsksForEachCodeOfEachSet() {
    Map<Enum<?>, Term> terms = new HashMap<>();
    for (AuditCodeSet set : AuditCodeSet.values()) {
      set.codes().forEach(code -> terms.put(code, ENGLISH.term(code)));
    }
    List<AuditCodeSet> sets = List.of(AuditCodeSet.values());
    String written = WordsJson.write(Words.of("en", sets, terms));
    assertThat(TableSchemas.objections("audit-words", written)).isEmpty();
    assertThat(WordsJson.write(WordsJson.read("again", written, sets).orElseThrow()))
        .isEqualTo(written);
    JsonNode words = TableSchemas.text("audit-words").at("/properties/words");
    assertThat(texts(words)).isEqualTo(sets.stream().map(AuditCodeSet::jsonName).toList());
    for (AuditCodeSet set : sets) {
      assertThat(texts(words.at("/properties/" + set.jsonName())))
          .isEqualTo(set.codes().stream().map(Enum::name).toList());
    }
    assertThat(TableSchemas.objections("audit-words", written.replace("OUT_SOONER", "SOONER")))
        .isNotEmpty();
    assertThat(WordsJson.read("again", written.replace("OUT_SOONER", "SOONER"), sets).toString())
        .contains(FleetEffect.OUT_SOONER.name());
  }

  private static List<String> texts(JsonNode object) {
    return object.path("required").valueStream().map(JsonNode::textValue).toList();
  }
}
