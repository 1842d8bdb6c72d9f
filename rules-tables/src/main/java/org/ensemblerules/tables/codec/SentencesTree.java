package org.ensemblerules.tables.codec;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import java.util.Optional;
import org.ensemblerules.tables.json.JsonCursor;
import org.ensemblerules.tables.json.ObjectCursor;
import org.ensemblerules.verdict.Verdict;
import org.ensemblerules.verdict.WayBack;
import org.ensemblerules.words.Sentences;
import org.ensemblerules.words.Words;

/** What a verdict says in words, list by list in the order of its own lists. */
final class SentencesTree {
  private SentencesTree() {}

  static JsonNode write(Verdict verdict, Words words) {
    Sentences sentences = new Sentences(words);
    List<String> steps =
        verdict.wayBack() instanceof WayBack.Steps way
            ? way.steps().stream().map(sentences::of).toList()
            : List.of();
    return new Fields()
        .put("language", words.language())
        .put("verdict", sentences.of(verdict))
        .known("goesTo", verdict.goesTo().map(sentences::of))
        .list("reasons", verdict.reasons().stream().map(sentences::of).toList())
        .list("steps", steps)
        .list("due", verdict.due().stream().map(due -> sentences.of(due, verdict.asOf())).toList())
        .node();
  }

  /** Looks at the form of words; what they say follows from the verdict, and they are not kept. */
  static Optional<List<String>> lookAt(JsonCursor at) {
    ObjectCursor object = at.object();
    object.required("language", JsonCursor::text);
    Optional<String> verdict = object.required("verdict", JsonCursor::text);
    object.optional("goesTo", JsonCursor::text);
    for (String lists : List.of("reasons", "steps", "due")) {
      object.required(lists, list -> list.list(JsonCursor::text));
    }
    return object.make(() -> List.of(verdict.orElseThrow()));
  }
}
