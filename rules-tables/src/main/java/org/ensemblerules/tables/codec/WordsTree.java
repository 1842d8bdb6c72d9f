package org.ensemblerules.tables.codec;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.ensemblerules.tables.json.JsonCursor;
import org.ensemblerules.tables.json.ObjectCursor;
import org.ensemblerules.words.CodeSet;
import org.ensemblerules.words.Term;
import org.ensemblerules.words.Words;

/** The JSON form of the words of a language. */
public final class WordsTree {
  private WordsTree() {}

  /** Reads the words; each code of each set must have its term, and nothing else may have one. */
  public static Optional<Words> read(JsonCursor at, List<CodeSet> sets) {
    ObjectCursor object = at.object();
    Optional<String> language = object.required("language", JsonCursor::text);
    Optional<Map<Enum<?>, Term>> terms = object.required("words", value -> sets(value, sets));
    return object.make(() -> Words.of(language.orElseThrow(), sets, terms.orElseThrow()));
  }

  private static Optional<Map<Enum<?>, Term>> sets(JsonCursor at, List<CodeSet> sets) {
    ObjectCursor object = at.object();
    Map<Enum<?>, Term> terms = new HashMap<>();
    for (CodeSet set : sets) {
      object.required(set.jsonName(), value -> set(value, set)).ifPresent(terms::putAll);
    }
    return object.make(() -> terms);
  }

  private static Optional<Map<Enum<?>, Term>> set(JsonCursor at, CodeSet set) {
    ObjectCursor object = at.object();
    Map<Enum<?>, Term> terms = new HashMap<>();
    for (Enum<?> code : set.codes()) {
      object.required(code.name(), WordsTree::term).ifPresent(term -> terms.put(code, term));
    }
    return object.make(() -> terms);
  }

  private static Optional<Term> term(JsonCursor at) {
    ObjectCursor object = at.object();
    Optional<String> label = object.required("label", JsonCursor::text);
    Optional<String> sentence = object.required("sentence", JsonCursor::text);
    Optional<String> step = object.optional("step", JsonCursor::text);
    return object.make(() -> new Term(label.orElseThrow(), sentence.orElseThrow(), step));
  }

  /** Writes the words. */
  public static JsonNode write(Words words) {
    return new Fields()
        .put("language", words.language())
        .put("words", terms(words, words.sets()))
        .node();
  }

  static JsonNode terms(Words words, List<? extends CodeSet> sets) {
    ObjectNode bySet = JsonNodeFactory.instance.objectNode();
    for (CodeSet set : sets) {
      Fields terms = new Fields();
      set.codes().forEach(code -> terms.put(code.name(), term(words.term(code))));
      bySet.set(set.jsonName(), terms.node());
    }
    return bySet;
  }

  private static JsonNode term(Term term) {
    return new Fields()
        .put("label", term.label())
        .put("sentence", term.sentence())
        .known("step", term.step())
        .node();
  }
}
