package org.ensemblerules.tables;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.ensemblerules.defect.DefectKind;
import org.ensemblerules.effect.Check;
import org.ensemblerules.effect.CleaningKind;
import org.ensemblerules.effect.HandlingDuty;
import org.ensemblerules.gear.LayerKind;
import org.ensemblerules.gear.Part;
import org.ensemblerules.gear.Site;
import org.ensemblerules.source.Checked;
import org.ensemblerules.source.FaultCode;
import org.ensemblerules.tables.message.JsonFault;
import org.ensemblerules.words.GearCodeSet;
import org.ensemblerules.words.Term;
import org.ensemblerules.words.Words;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class ShippedWordsTest {
  private static final Words ENGLISH = ShippedWords.english();

  @ParameterizedTest
  @EnumSource(GearCodeSet.class)
  void eachCodeHasWordsThatReadLikeWords(GearCodeSet set) {
    Set<String> labels = new HashSet<>();
    for (Enum<?> code : set.codes()) {
      Term term = ENGLISH.term(code);
      assertThat(term.label()).doesNotContain("_").doesNotEndWith(".").doesNotMatch("[A-Z]{2,}");
      assertThat(labels.add(term.label())).as(set + " says it twice: " + term.label()).isTrue();
      assertThat(term.sentence()).matches("[A-Z].*\\.").doesNotContain("_", "{", "  ");
      term.step().ifPresent(step -> assertThat(step).matches("[a-z].*[^.]"));
    }
  }

  @Test
  void whatSomebodyDoesHasAStep() {
    Stream.of(Check.values(), CleaningKind.values(), HandlingDuty.values())
        .flatMap(Stream::of)
        .forEach(code -> assertThat(ENGLISH.step(code)).as(code.name()).isPresent());
  }

  @Test
  void aSetIsNamedAsTheVocabularyOfTheSchemasNamesIt() {
    JsonNode vocabulary = TableSchemas.text("vocabulary").get("$defs");
    int shared = 0;
    for (GearCodeSet set : GearCodeSet.values()) {
      JsonNode names = vocabulary.path(set.jsonName()).path("enum");
      if (!names.isMissingNode()) {
        shared++;
        assertThat(texts(names)).isEqualTo(set.codes().stream().map(Enum::name).toList());
      }
    }
    assertThat(shared).isGreaterThan(30);
  }

  @Test
  void theSchemaAsksForEachCodeOfEachSet() {
    JsonNode words = TableSchemas.text("words").at("/$defs/words");
    assertThat(texts(words.get("required")))
        .isEqualTo(Stream.of(GearCodeSet.values()).map(GearCodeSet::jsonName).toList());
    for (GearCodeSet set : GearCodeSet.values()) {
      List<String> codes = set.codes().stream().map(Enum::name).toList();
      JsonNode terms = words.at("/properties/" + set.jsonName());
      assertThat(texts(terms.get("required"))).isEqualTo(codes);
      List<String> properties = new ArrayList<>();
      terms.get("properties").fieldNames().forEachRemaining(properties::add);
      assertThat(properties).isEqualTo(codes);
    }
  }

  @Test
  void theyAreReadAndWrittenAgain() {
    String written = WordsJson.write(ENGLISH);
    assertThat(TableSchemas.objections("words", written)).isEmpty();
    assertThat(WordsJson.write(WordsJson.read("again", written).orElseThrow())).isEqualTo(written);
  }

  @Test
  void aMissingWordIsNamedWithItsPlace() {
    String without =
        WordsJson.write(ENGLISH).replaceFirst("\"CHARRING\":\\{[^}]*}", "\"CHARRED\":{}");
    Checked<Words, JsonFault> read = WordsJson.read("other.json", without);
    assertThat(((Checked.Refused<Words, JsonFault>) read).faults())
        .anySatisfy(
            fault -> {
              assertThat(fault.code()).isEqualTo(FaultCode.MISSING);
              assertThat(fault.pointer()).isEqualTo("/words/defectKind");
              assertThat(fault.toString()).contains("CHARRING");
            })
        .anySatisfy(fault -> assertThat(fault.pointer()).contains("CHARRED"));
  }

  @Test
  void sitesAndTextsAreSpelledOut() {
    assertThat(ENGLISH.site(Site.of(Part.TRIM, LayerKind.OUTER_SHELL)))
        .isEqualTo("trim of the outer shell");
    assertThat(ENGLISH.site(Site.of(Part.WHOLE_ELEMENT, LayerKind.LINER_SYSTEM)))
        .isEqualTo("liner system");
    assertThat(ENGLISH.spelledOut("EDGES_LIFTING at LABEL@LINER_SYSTEM, asked by NFPA 1851"))
        .isEqualTo("lifting label edges at label of the liner system, asked by NFPA 1851");
    assertThat(ENGLISH.spelledOut("COAT@HOOD, as its wearer wrote"))
        .isEqualTo("COAT@HOOD, as its wearer wrote");
    // A key is no text, and one name may stand for two things.
    assertThat(ENGLISH.spelledOut("row a/COAT/STRUCTURAL/TEAR/short, ADVANCED inspection"))
        .isEqualTo("row a/COAT/STRUCTURAL/TEAR/short, advanced inspection");
    assertThat(ENGLISH.label(DefectKind.CBRN_AGENT)).isEqualTo("CBRN agent");
  }

  private static List<String> texts(JsonNode array) {
    List<String> texts = new ArrayList<>();
    array.forEach(node -> texts.add(node.textValue()));
    return texts;
  }
}
